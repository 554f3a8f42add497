package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.cli.Bench.Outcome;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WalkthroughCommandTest {
    @TempDir
    private Path temp;

    private Path lesson;

    @BeforeEach
    void aShortLesson() throws Exception {
        lesson = temp.resolve("short.txt");
        Files.writeString(lesson, "section 2, walk, once, clicks\nsection 1, 120 bpm, once, clicks\n");
    }

    private Outcome run(String... more) {
        return run(Bench.withoutDevice(temp), more);
    }

    private static Outcome run(Bench bench, String... more) {
        String[] arguments = new String[more.length + 2];
        arguments[0] = "walkthrough";
        arguments[1] = Bench.DEMO_SHEET;
        System.arraycopy(more, 0, arguments, 2, more.length);
        return bench.run(arguments);
    }

    @Test
    void theLessonIsPrintedWithItsMinutes() {
        Outcome outcome = run("--print");
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertTrue(outcome.out().contains("section 1, walk, 3 times, clicks"), outcome.out());
        assertTrue(
                outcome.out().lines().anyMatch(line -> line.startsWith("All of it takes 17 minutes")), outcome.out());
    }

    @Test
    void aSavedLessonIsPrintedAsTheOneThatWasSaved() throws Exception {
        Path saved = temp.resolve("saved.txt");
        assertEquals(0, run("--save", saved.toString()).exitCode());
        assertEquals(
                run("--print").out(),
                run("--print", "--lesson", saved.toString()).out());
        String edited = Files.readString(saved).replace("section 1, walk, 3 times", "section 1, 70 %, once");
        Files.writeString(saved, edited);
        String printed = run("--print", "--lesson", saved.toString()).out();
        assertTrue(printed.contains("section 1, 70 %, once, clicks"), printed);
    }

    @Test
    void aFileThatIsThereIsNotWrittenOver() throws Exception {
        String before = Files.readString(lesson);
        Outcome outcome = run("--save", lesson.toString());
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("is there already"), outcome.err());
        assertEquals(before, Files.readString(lesson));
    }

    @Test
    void stemsWithoutATrackAreRefused() {
        Outcome outcome = run("--stems", temp.resolve("parts").toString());
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("-o"), outcome.err());
    }

    @Test
    void mistakesInALessonAreToldWithTheirPlaceAndNothingIsPlayed() throws Exception {
        Files.writeString(lesson, "section 1, walk\nsection 7, walk, once\nsection 2, wlak\n");
        Outcome outcome =
                run("--lesson", lesson.toString(), "-o", temp.resolve("out.wav").toString());
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("short.txt:2:1: "), outcome.err());
        assertTrue(outcome.err().contains("short.txt:3:12: "), outcome.err());
        assertTrue(outcome.err().contains("2 mistakes"), outcome.err());
        assertFalse(Files.exists(temp.resolve("out.wav")));
    }

    @Test
    void aTrackForHomeHasItsPartsBesideIt() throws Exception {
        Path track = temp.resolve("home.wav");
        Path stems = temp.resolve("parts");
        Outcome outcome =
                run("--lesson", lesson.toString(), "--pass", "2", "-o", track.toString(), "--stems", stems.toString());
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertTrue(Files.size(track) > 44_100 * 4 * 12);
        List<String> plan = Files.readAllLines(stems.resolve("plan.csv"));
        assertTrue(plan.get(1).startsWith("section one,"), plan.get(1));
    }

    @Test
    void aPassThatIsNotThereIsRefusedWithThoseThatAre() {
        Outcome outcome = run("--lesson", lesson.toString(), "--pass", "3", "--print");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("1 to 2"), outcome.err());
    }

    @Test
    void passesKeepTheirNumbersWhenSomeAreWanted() {
        List<String> lines = run("--pass", "2-3,5", "--print").out().lines().toList();
        assertTrue(lines.get(4).startsWith("    2    0:00"), lines.toString());
        assertTrue(lines.get(5).startsWith("    3 "), lines.toString());
        assertTrue(lines.get(6).startsWith("    5 "), lines.toString());
        assertTrue(lines.get(8).startsWith("This takes "), lines.toString());
    }

    @Test
    void whatIsNoNumberOfAPassIsRefusedInPlainWords() {
        for (String wrong : List.of("two", "4-2", "1,,2", "", "1-")) {
            Outcome outcome = run("--pass", wrong, "--print");
            assertEquals(2, outcome.exitCode());
            assertTrue(outcome.err().contains("write 4, or 2-4, or 2,5"), outcome.err());
        }
    }

    @Test
    void aMissingLessonIsRefused() {
        Outcome outcome = run("--lesson", temp.resolve("none.txt").toString(), "--print");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("none.txt") && outcome.err().contains("--save"), outcome.err());
    }

    @Test
    void onADeviceEachPassIsToldAndItsCalls() {
        Bench bench = Bench.withDevice(temp);
        Outcome outcome = run(bench, "--lesson", lesson.toString(), "--rate", "22050");
        assertEquals(0, outcome.exitCode(), outcome.err());
        List<String> lines = outcome.out().lines().toList();
        assertTrue(lines.get(0).startsWith("Pass 1 of 2: section 2, walk (68 beats a minute)"), outcome.out());
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("Pass 2 of 2: section 1, 120 bpm")), outcome.out());
        assertTrue(lines.stream().anyMatch(line -> line.endsWith("section two")), outcome.out());
        assertTrue(bench.opened.stream().allMatch(FakeSpeakers::isClosed));
    }
}
