package cuelead.window.floor;

import cuelead.output.DeviceName;
import cuelead.output.SilentSpeakers;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.steer.SpeakerSource;
import cuelead.time.SampleRate;
import java.util.Optional;

/**
 * The speakers of this computer; where the usual device cannot be opened, a dance goes on in silence and can be seen. Systems
 * list a usual device also where there is none.
 */
final class HeardOrSilent implements SpeakerSource {
    static final String NOTHING_HEARD =
            "No sound device could be opened, so nothing is heard; connect one and begin again, or save a track on the page Tracks.";

    private final SpeakerSource devices;
    private volatile boolean isSilent;

    HeardOrSilent(SpeakerSource devices) {
        this.devices = devices;
    }

    /** Whether what was opened last is heard by nobody. */
    boolean isSilent() {
        return isSilent;
    }

    @Override
    public Speakers open(Optional<DeviceName> name, SampleRate rate) throws Refused {
        try {
            isSilent = false;
            return devices.open(name, rate);
        } catch (Refused none) {
            if (name.isPresent()) {
                throw none;
            }
            isSilent = true;
            return SilentSpeakers.open(rate);
        }
    }
}
