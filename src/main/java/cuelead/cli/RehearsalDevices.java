package cuelead.cli;

import cuelead.output.DeviceName;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.steer.DeviceChoice;
import cuelead.steer.SoundDevices;
import cuelead.steer.SpeakerPair;
import cuelead.time.SampleRate;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which microphone and sound device a rehearsal uses. */
final class RehearsalDevices {
    private static final String USUAL = "usual";

    @Option(
            names = "--microphone",
            paramLabel = "NAME",
            description = "The microphone: its name, or a part of it that no other has (\"cuelead devices\" lists"
                    + " them). Usual is the computer's usual one.")
    private Optional<String> microphone;

    @Mixin
    private DeviceOptions headphones;

    double delaySeconds() {
        return headphones.delaySeconds();
    }

    Microphone openMicrophone(SoundDevices devices, SampleRate rate) throws Refused {
        return devices.openMicrophone(microphoneName(devices), rate);
    }

    SpeakerPair openSpeakers(SoundDevices devices, SampleRate rate) throws Refused {
        return DeviceChoice.of(headphones.name(), Optional.empty(), devices).open(devices, rate);
    }

    private Optional<DeviceName> microphoneName(SoundDevices devices) throws Refused {
        return microphone.isPresent()
                ? Optional.of(DeviceName.meantBy(microphone.get(), devices.microphones(), DeviceName.Kind.MICROPHONE))
                : Optional.empty();
    }

    /** The microphone's name as it is kept. */
    String microphoneTold(SoundDevices devices) throws Refused {
        return microphoneName(devices)
                .or(devices::usualMicrophone)
                .map(DeviceName::told)
                .orElse(USUAL);
    }

    /** The sound device's name as it is kept. */
    String deviceTold(SoundDevices devices) throws Refused {
        return DeviceChoice.of(headphones.name(), Optional.empty(), devices)
                .main()
                .or(devices::usual)
                .map(DeviceName::told)
                .orElse(USUAL);
    }
}
