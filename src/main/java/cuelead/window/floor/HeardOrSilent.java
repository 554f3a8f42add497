package cuelead.window.floor;

import cuelead.output.DeviceName;
import cuelead.output.SilentSpeakers;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.sound.Speakers;
import cuelead.steer.SoundDevices;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Optional;

/**
 * The devices of this computer; where the usual one cannot be opened, a dance goes on in silence and can be seen. Systems
 * list a usual device also where there is none.
 */
final class HeardOrSilent implements SoundDevices {
    static final String NOTHING_HEARD =
            "No sound device could be opened, so nothing is heard; connect one and begin again, or save a track on the page Tracks.";

    private final SoundDevices devices;
    private volatile boolean isSilent;

    HeardOrSilent(SoundDevices devices) {
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

    @Override
    public List<DeviceName> names() {
        return devices.names();
    }

    @Override
    public Optional<DeviceName> usual() {
        return devices.usual();
    }

    @Override
    public List<DeviceName> microphones() {
        return devices.microphones();
    }

    @Override
    public Optional<DeviceName> usualMicrophone() {
        return devices.usualMicrophone();
    }

    @Override
    public Microphone openMicrophone(Optional<DeviceName> name, SampleRate rate) throws Refused {
        return devices.openMicrophone(name, rate);
    }
}
