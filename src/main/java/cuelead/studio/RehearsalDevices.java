package cuelead.studio;

import cuelead.output.DeviceName;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.steer.DeviceChoice;
import cuelead.steer.MicrophoneChoice;
import cuelead.steer.SoundDevices;
import cuelead.steer.SpeakerPair;
import cuelead.time.SampleRate;
import java.util.Optional;

/**
 * The microphone and the headphones of a rehearsal.
 *
 * @param all          what there is
 * @param microphone   a part of its name; empty = the usual one
 * @param headphones   likewise
 * @param delaySeconds how much later than this computer knows the headphones sound
 */
public record RehearsalDevices(
        SoundDevices all, Optional<String> microphone, Optional<String> headphones, double delaySeconds) {
    private static final String USUAL = "usual";

    Microphone openMicrophone(SampleRate rate) throws Refused {
        return MicrophoneChoice.open(microphone, all, rate);
    }

    SpeakerPair openSpeakers(SampleRate rate) throws Refused {
        return choice().open(all, rate);
    }

    private DeviceChoice choice() throws Refused {
        return DeviceChoice.of(headphones, Optional.empty(), all);
    }

    /** The microphone's name as it is kept. */
    String microphoneTold() throws Refused {
        Optional<DeviceName> named = microphone.isPresent()
                ? Optional.of(DeviceName.meantBy(microphone.get(), all.microphones(), DeviceName.Kind.MICROPHONE))
                : all.usualMicrophone();
        return named.map(DeviceName::told).orElse(USUAL);
    }

    /** The sound device's name as it is kept. */
    String headphonesTold() throws Refused {
        return choice().main().or(all::usual).map(DeviceName::told).orElse(USUAL);
    }
}
