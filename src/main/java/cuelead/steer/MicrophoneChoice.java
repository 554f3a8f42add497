package cuelead.steer;

import cuelead.output.DeviceName;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.time.SampleRate;
import java.util.Optional;

/** The microphone that a user means. */
public final class MicrophoneChoice {
    private MicrophoneChoice() {}

    /**
     * Opens it; it listens from then on.
     *
     * @param part of its name; empty = the usual one
     * @throws Refused when it is not there or cannot be used
     */
    public static Microphone open(Optional<String> part, SoundDevices devices, SampleRate rate) throws Refused {
        return part.isEmpty()
                ? devices.openMicrophone(Optional.empty(), rate)
                : devices.openMicrophone(
                        Optional.of(DeviceName.meantBy(part.get(), devices.microphones(), DeviceName.Kind.MICROPHONE)),
                        rate);
    }
}
