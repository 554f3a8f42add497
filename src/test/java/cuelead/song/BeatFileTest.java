package cuelead.song;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BeatFileTest {
    private static final String NAME = "song.beats";

    @Property(tries = 200, seed = "20261125")
    void whatIsPrintedIsReadBack(@ForAll("grids") BeatGrid grid) {
        BeatFile.Reading reading = new BeatReader(NAME).read(BeatFile.print(grid, List.of(" made by hand", "")));
        assertEquals(List.of(), reading.problems());
        assertEquals(List.of(" made by hand", ""), reading.comments());
        assertEquals(grid, reading.beats().orElseThrow());
    }

    /** Times of whole microseconds, which is what a beat file keeps. */
    @Provide
    Arbitrary<BeatGrid> grids() {
        Arbitrary<Integer> gapsMicros = Arbitraries.integers().between(1, 3_000_000);
        Arbitrary<Integer> phrases = Arbitraries.integers().between(0, 64);
        return Combinators.combine(gapsMicros.list().ofMinSize(2).ofMaxSize(40), phrases)
                .as((gaps, phrase) -> {
                    double[] seconds = new double[gaps.size()];
                    int[] inBar = new int[gaps.size()];
                    int[] inPhrase = new int[gaps.size()];
                    long micros = 0;
                    for (int i = 0; i < seconds.length; i++) {
                        micros += gaps.get(i);
                        seconds[i] = micros / 1e6;
                        inBar[i] = 1 + i % 4;
                        inPhrase[i] = phrase == 0 ? 0 : 1 + (i + phrase) % 64;
                    }
                    return new BeatGrid(seconds, inBar, inPhrase);
                });
    }

    @Test
    void commentsEmptyLinesAndAMissingColumnAreAllowed() {
        String text = "\ufeff# our own tune\r\n\r\n 0.5\t1 # the first\r\n1.0  2\r\n1.5e0\t3\t7\r\n";
        BeatFile.Reading reading = new BeatReader(NAME).read(text);
        assertEquals(List.of(), reading.problems());
        assertEquals(List.of(" our own tune"), reading.comments());
        assertEquals(
                new BeatGrid(new double[] {0.5, 1, 1.5}, new int[] {1, 2, 3}, new int[] {0, 0, 7}),
                reading.beats().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = true,
            value = {
                "0.5 1;1,2 2   | song.beats:2:1: error: \"1,2\" is not a number of seconds. Write a point for the comma: 1.2.",
                "0.5 1;soon 2  | song.beats:2:1: error: \"soon\" is not a number of seconds. Write the seconds from the song's beginning, as in 7.46.",
                "0.5 1;0.7 x   | song.beats:2:5: error: \"x\" is not a beat in the bar. Write a whole number; 1 is the first.",
                "0.5 1;0.7 2 y | song.beats:2:7: error: \"y\" is not a count in the phrase. Write a whole number; 1 is the first.",
                "0.5 0;0.7 2   | song.beats:1:5: error: The beat in the bar cannot be 0. Count from 1, the first.",
                "0.5 1;0.7     | song.beats:2:1: error: A beat has two or three columns, and this line has 1. Write the seconds, a tab, and the beat in the bar, as in: 7.46<TAB>1.",
                "0.5 1;0.4 2   | song.beats:2:1: error: The beat at 0.4 s does not come after the one in line 1. Put the beats in the order of their times, each time once.",
                "0.5 1;0.5 2   | song.beats:2:1: error: The beat at 0.5 s does not come after the one in line 1. Put the beats in the order of their times, each time once.",
                "0.5 1         | song.beats: error: A beat file needs at least two beats, and this one has 1. Write one beat a line: its seconds, a tab, and its place in the bar."
            })
    void eachMistakeHasItsPlaceAndSentence(String lines, String message) {
        BeatFile.Reading reading = new BeatReader(NAME).read(lines.replace(';', '\n'));
        assertTrue(reading.beats().isEmpty());
        assertEquals(
                List.of(message),
                reading.problems().stream().map(Problem::message).toList());
    }

    @Test
    void allMistakesAreToldInOneGo() {
        BeatFile.Reading reading = new BeatReader(NAME).read("a 1\n0.5 b\n1.0 2\n0.9 3\n");
        assertEquals(
                List.of(1, 2, 4), reading.problems().stream().map(Problem::line).toList());
    }

    @Test
    void aFileOfAnotherKindIsToldOnce(@TempDir Path folder) throws Exception {
        Path file = Files.write(folder.resolve("song.beats"), Sounds.resource("stereo-22050.flac"));
        assertEquals(
                List.of(file + ": error: This is no text file, and beat files are text. "
                        + "If you wrote it yourself, save it again as plain text (UTF-8)."),
                BeatFile.read(file).problems().stream().map(Problem::message).toList());
    }

    @Test
    void aLongTextDoesNotFillTheScreen() {
        List<Problem> problems =
                new BeatReader(NAME).read("lorem ipsum\n".repeat(500)).problems();
        assertTrue(problems.size() < 40, problems.size() + " problems");
        assertEquals(
                "There are more mistakes after these.",
                problems.get(problems.size() - 1).sentence());
    }

    @Test
    void aMissingFileOrAFolderIsRefused(@TempDir Path folder) {
        Path gone = folder.resolve("gone.beats");
        assertEquals(
                gone + " is not there: look for a slip in its name, or give its whole path.",
                assertThrows(Refused.class, () -> BeatFile.read(gone)).getMessage());
        assertEquals(
                folder + " is a folder: name a beat file in it.",
                assertThrows(Refused.class, () -> BeatFile.read(folder)).getMessage());
    }

    @Test
    void writingReplacesWholeAndLeavesNothingBehind(@TempDir Path folder) throws Exception {
        Path file = folder.resolve(NAME);
        BeatGrid grid = new BeatGrid(new double[] {1, 2}, new int[] {1, 2}, new int[2]);
        BeatFile.write(file, new BeatGrid(new double[] {5, 6, 7}, new int[] {1, 2, 3}, new int[3]), List.of());
        BeatFile.write(file, grid, List.of(" corrected"));
        assertEquals("# corrected\n1.000000\t1\n2.000000\t2\n", Files.readString(file, UTF_8));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(file), left.toList());
        }
    }

    @Test
    void whereItCannotBeWrittenItIsRefused(@TempDir Path folder) {
        Path file = folder.resolve("no-such-folder").resolve(NAME);
        BeatGrid grid = new BeatGrid(new double[] {1, 2}, new int[] {1, 2}, new int[2]);
        assertEquals(
                "The beat file " + file
                        + " cannot be written: free some space on its disk, or choose a folder that you may write to.",
                assertThrows(Refused.class, () -> BeatFile.write(file, grid, List.of()))
                        .getMessage());
    }

    @Test
    void theBeatFileLiesBesideItsSong() {
        assertEquals(Path.of("songs", "a.b.beats"), BeatFile.beside(Path.of("songs", "a.b.mp3")));
        assertEquals(Path.of("tune.beats"), BeatFile.beside(Path.of("tune")));
    }
}
