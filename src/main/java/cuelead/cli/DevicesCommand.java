package cuelead.cli;

import cuelead.output.DeviceName;
import cuelead.report.Refused;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Lists the sound devices. */
@Command(
        name = "devices",
        header = "List the sound devices and microphones.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Lists the sound devices by their names, for --device and --ear of \"play\", and then the microphones, for"
                    + " --device of \"record\".",
            "The * stands before the usual one, which is taken where none is named."
        },
        footer = {"", "Examples:", "  cuelead devices"})
final class DevicesCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    DevicesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Refused {
        List<DeviceName> names = surroundings.devices().names();
        if (names.isEmpty()) {
            throw new Refused("There is no sound device; connect one.");
        }
        list(names, surroundings.devices().usual());
        List<DeviceName> microphones = surroundings.devices().microphones();
        surroundings.out().println(microphones.isEmpty() ? "No microphone." : "Microphones:");
        list(microphones, surroundings.devices().usualMicrophone());
        return Failures.DONE;
    }

    private void list(List<DeviceName> names, Optional<DeviceName> usual) {
        for (DeviceName name : names) {
            String mark = usual.equals(Optional.of(name)) ? "* " : "  ";
            surroundings.out().println(mark + name.told());
        }
    }
}
