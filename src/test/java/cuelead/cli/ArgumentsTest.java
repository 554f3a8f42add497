package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.cli.Bench.Outcome;
import cuelead.practice.CallsGo;
import cuelead.practice.DipWish;
import cuelead.sound.Dipping;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What is understood and what is not, before any file is opened. */
class ArgumentsTest {
    @TempDir
    static Path temp;

    private final Bench bench = Bench.withoutDevice(temp);

    @Test
    void aSlipIsAnsweredWithWhatMayHaveBeenMeant() {
        Outcome outcome = bench.run("rendr");
        assertEquals(2, outcome.exitCode());
        assertTrue(outcome.err().contains("Did you mean \"cuelead render\"?"), outcome.err());
        outcome = bench.run("plan", Bench.DEMO_SHEET, "--cals", "figures");
        assertEquals(2, outcome.exitCode());
        assertTrue(outcome.err().contains("Did you mean \"--calls\"?"), outcome.err());
        assertEquals("", outcome.out());
    }

    @ParameterizedTest
    @CsvSource({
        "plya, cuelead play",
        "pley, cuelead play",
        "rednr, cuelead render",
        "Play, cuelead play",
        "chek, cuelead check",
        "my-sheet.txt, cuelead play my-sheet.txt"
    })
    void theNearestCommandIsMeant(String slip, String meant) {
        String err = bench.run(slip).err();
        assertTrue(err.contains("Did you mean \"" + meant + "\"?"), err);
    }

    @Test
    void whatIsNearNothingGetsNoGuess() {
        assertFalse(bench.run("xylophone").err().contains("mean"));
        assertTrue(bench.run("plan", "x.txt", "--leed=4").err().contains("\"--lead\"?"));
        assertEquals(List.of("--form", "--from"), Meant.nearest("--frm", List.of("--from", "--form", "--to")));
    }

    @Test
    void aDelayIsMilliseconds() {
        assertEquals(180, new Values.DelayMillis().convert("180"));
        assertEquals(2, bench.run("play", Bench.DEMO_SHEET, "--delay", "-1").exitCode());
        assertEquals(2, bench.run("play", Bench.DEMO_SHEET, "--delay", "1:00").exitCode());
    }

    @ParameterizedTest
    @CsvSource({
        "play, --ear-delay=50, '--ear-delay is for the device of --ear, which is missing.'",
        "play, --ear=phone --side=left, '--side and --ear cannot go together: choose one of them.'",
        "align, --delay=20, 'Name the second device with --ear (\"cuelead devices\" lists them).'"
    })
    void devicesThatDoNotFitTogetherAreRefused(String command, String options, String sentence) {
        List<String> arguments = new ArrayList<>(List.of(options.split(" ")));
        arguments.add(0, command);
        if (command.equals("play")) {
            arguments.add(Bench.DEMO_SHEET);
        }
        Outcome outcome = bench.run(arguments.toArray(String[]::new));
        assertEquals(2, outcome.exitCode());
        assertTrue(outcome.err().startsWith(sentence), outcome.err());
    }

    @ParameterizedTest
    @CsvSource({
        "all, 10, WHOLE",
        "band, 10, SPEECH_BAND",
        "6, 6, WHOLE",
        "'band,14', 14, SPEECH_BAND",
        "0 Band, 0, SPEECH_BAND"
    })
    void aDipIsAllOrABandByADepth(String text, double db, Dipping.Range range) {
        DipWish dip = new Values.Dip().convert(text);
        assertEquals(new Dipping(db, range), dip.on(CallsGo.WITH_THE_MUSIC));
        assertEquals(text.matches(".*\\d.*") ? db : 0, dip.on(CallsGo.LEFT).db());
    }

    @Test
    void timesAreReadAsTheyArePrinted() {
        Values.SongTime time = new Values.SongTime();
        assertEquals(62.5, time.convert("62.5"));
        assertEquals(62, time.convert("1:02"));
        assertEquals(62.5, time.convert("1:02.5"));
        assertEquals(62.5, time.convert("01:02.5"));
        assertEquals(5400, time.convert("90:00"));
        assertEquals(3723.25, time.convert("1:02:03.25"));
        for (String wrong : List.of("1:2", "1:60", "1:75:00", "1:02:3", ":30", "1:", "-1:00", "1:00:00:00", "1,5")) {
            assertThrows(CommandLine.TypeConversionException.class, () -> time.convert(wrong), wrong);
        }
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
                "--side=up",
                "--dip=deep",
                "--dip=25",
                "--dip=band,",
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
        assertTrue(outcome.err().startsWith("--to 0:10.0 is not after --from 0:20.0."), outcome.err());
    }

    @Test
    void everyCommandExplainsItselfWithExamples() {
        for (String command : List.of("play", "render", "plan", "check", "say", "beats", "devices", "align")) {
            Outcome outcome = bench.run(command, "--help");
            assertEquals(0, outcome.exitCode());
            assertTrue(outcome.out().contains("Examples:") && outcome.out().contains("cuelead " + command));
            assertTrue(outcome.out().lines().allMatch(line -> line.length() <= 80), command);
        }
        assertEquals(0, bench.run("--version").exitCode());
    }
}
