package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.cli.Bench.Outcome;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is understood and what is not, before any file is opened. */
class ArgumentsTest {
    @TempDir
    static Path temp;

    private final Bench bench = Bench.withoutDevice(temp);

    @Test
    void aSlipIsAnsweredWithWhatMayHaveBeenMeant() {
        Outcome outcome = bench.run("rendr");
        assertEquals(2, outcome.exitCode());
        assertTrue(outcome.err().contains("Did you mean: cuelead render?"), outcome.err());
        outcome = bench.run("plan", Bench.DEMO_SHEET, "--cals", "figures");
        assertEquals(2, outcome.exitCode());
        assertTrue(outcome.err().contains("--calls"), outcome.err());
        assertEquals("", outcome.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--lead=0",
                "--lead=17",
                "--lead=NaN",
                "--lead=-1",
                "--tempo=0",
                "--tempo=5000",
                "--tempo=fast",
                "--rate=100",
                "--rate=44100.5",
                "--from=-1",
                "--from=Infinity",
                "--to=0",
                "--calls=loud",
                "--nonsense"
            })
    void nonsenseIsRefusedInASentence(String option) {
        Outcome outcome = bench.run("plan", Bench.DEMO_SHEET, option);
        assertEquals(2, outcome.exitCode());
        assertEquals("", outcome.out());
        List<String> lines = outcome.err().lines().toList();
        assertEquals(2, lines.size(), outcome.err());
        assertTrue(lines.get(0).endsWith("."), outcome.err());
    }

    @Test
    void anEndBeforeTheBeginningIsRefused() {
        Outcome outcome = bench.run("plan", Bench.DEMO_SHEET, "--from", "20", "--to", "10");
        assertEquals(2, outcome.exitCode());
        assertTrue(outcome.err().startsWith("--to 10.0 is not after --from 20.0."), outcome.err());
    }

    @Test
    void everyCommandExplainsItselfWithExamples() {
        for (String command : List.of("play", "render", "plan", "check", "say", "beats")) {
            Outcome outcome = bench.run(command, "--help");
            assertEquals(0, outcome.exitCode());
            assertTrue(outcome.out().contains("Examples:") && outcome.out().contains("cuelead " + command));
            assertTrue(outcome.out().lines().allMatch(line -> line.length() <= 80), command);
        }
        assertEquals(0, bench.run("--version").exitCode());
    }
}
