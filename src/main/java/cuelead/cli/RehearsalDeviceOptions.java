package cuelead.cli;

import cuelead.steer.SoundDevices;
import cuelead.studio.RehearsalDevices;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which microphone and headphones a rehearsal uses. */
final class RehearsalDeviceOptions {
    @Option(
            names = "--microphone",
            paramLabel = "NAME",
            description = "The microphone: its name, or a part of it that no other has (\"cuelead devices\" lists"
                    + " them). Usual is the computer's usual one.")
    private Optional<String> microphone;

    @Mixin
    private DeviceOptions headphones;

    RehearsalDevices of(SoundDevices all) {
        return new RehearsalDevices(all, microphone, headphones.name(), headphones.delaySeconds());
    }
}
