package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class SubcommandsTest {
    @TempDir
    private Path folder;

    @Test
    void eachIsMadeAloneUnderItsOwnName() {
        List<String> names = names();
        assertEquals(15, names.size());
        for (String name : names) {
            if (!name.equals("help")) {
                assertEquals(List.of(name), names(name, "--help"));
            }
        }
    }

    @Test
    void allAreThereWhereNoneIsMeant() {
        List<String> all = names();
        for (String first : List.of("help", "--help", "--debug", "pla", "")) {
            assertEquals(all, names(first, "play"), first);
        }
        assertTrue(all.contains("play"));
    }

    private Surroundings surroundings() {
        return Bench.withoutDevice(folder)
                .surroundings(
                        InputStream.nullInputStream(),
                        OutputStream.nullOutputStream(),
                        OutputStream.nullOutputStream());
    }

    private List<String> names(String... arguments) {
        return new Subcommands(surroundings())
                .neededBy(arguments).stream()
                        .map(command -> new CommandLine(command).getCommandName())
                        .toList();
    }
}
