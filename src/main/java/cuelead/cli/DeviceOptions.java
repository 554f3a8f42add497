package cuelead.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/** The device that sounds, and how late it is: the same for all commands that play. */
final class DeviceOptions {
    private static final double MILLIS_A_SECOND = 1_000;

    @Option(
            names = "--device",
            paramLabel = "NAME",
            description = "The sound device: its name, or a part of it that no other has (\"cuelead devices\" lists"
                    + " them). Usual is the computer's usual one.")
    private Optional<String> name;

    @Option(
            names = "--delay",
            paramLabel = "MS",
            converter = Values.DelayMillis.class,
            defaultValue = "0",
            description = "For wireless speakers or headphones: how many milliseconds later than this computer they"
                    + " sound (0 to 2000). What is shown waits for them.")
    private Double delayMillis;

    /** A name, or a part of one; empty = the usual one. */
    Optional<String> name() {
        return name;
    }

    double delaySeconds() {
        return delayMillis / MILLIS_A_SECOND;
    }
}
