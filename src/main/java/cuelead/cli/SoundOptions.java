package cuelead.cli;

import cuelead.practice.Delays;
import cuelead.report.Refused;
import cuelead.steer.DeviceChoice;
import cuelead.steer.SoundDevices;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which devices sound, and how late they are. */
final class SoundOptions {
    private static final double MILLIS_A_SECOND = 1_000;

    @Spec(Spec.Target.MIXEE)
    private CommandLine.Model.CommandSpec command;

    @Mixin
    private DeviceOptions main;

    @Option(
            names = "--ear",
            paramLabel = "NAME",
            description = "A second device, your earphone, for calls and click alone; the music goes on sounding"
                    + " from the first.")
    private Optional<String> ear;

    @Option(
            names = "--ear-delay",
            paramLabel = "MS",
            converter = Values.DelayMillis.class,
            description = "How many milliseconds later that second device sounds (0 to 2000), so that both are heard"
                    + " together; \"cuelead align\" finds it.")
    private Optional<Double> earDelayMillis;

    boolean hasEar() {
        return ear.isPresent();
    }

    /** @throws Refused when a device is not there */
    DeviceChoice choose(SoundDevices devices) throws Refused {
        return DeviceChoice.of(main.name(), ear, devices);
    }

    Delays delays() {
        if (earDelayMillis.isPresent() && !hasEar()) {
            throw new CommandLine.ParameterException(
                    command.commandLine(), "--ear-delay is for the device of --ear, which is missing.");
        }
        return new Delays(main.delaySeconds(), earDelayMillis.orElse(0.0) / MILLIS_A_SECOND);
    }
}
