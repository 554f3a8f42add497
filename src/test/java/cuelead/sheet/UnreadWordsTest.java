package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Count;
import cuelead.dance.Dance;
import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What was not understood is not made a hold when a sheet is written anew: the author's words stand there, marked. */
class UnreadWordsTest {
    private static final String STRANGE = "wobble the knob";

    private static ReadSheet read(String text) {
        return SheetReader.read("sheet.txt", text);
    }

    private static String written(ReadSheet read) {
        return SheetWriter.write(read.dance().orElseThrow(), read.notes());
    }

    private static String sheet(String lines) {
        return "TIDE MARK\n\n[1-8] DRIFT\n1-2 Walk R, walk L\n" + lines.replace(" / ", "\n") + "\n7-8 Walk R, walk L\n";
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3-4 Step R to side, wobble the knob / 5-6 Step L to side, hold"
                        + "| 3-4  step R to side, [not understood: wobble the knob]",
                "3-6 Step R to side, wobble the knob, step L beside R" + "| 4-5  [not understood: wobble the knob]",
                "3&4 Wobble R to knob (3), step L beside R (&), step R to side (4) / 5-6 Rock L back, recover R"
                        + "| 3&4  [not understood: Wobble R to knob], step L beside R, step R to side",
                "3-4 Step R, step L, step R, step L, step R / 5-6 Step L to side, hold"
                        + "| 3-4  [not understood: Step R, step L, step R, step L, step R]",
                "3-4 Turn 1/4 stepping R forward, hold / 5-6 Step L to side, hold"
                        + "| 3-4  [not understood: Turn 1/4 stepping R forward, hold]",
                "3-6 Step R (3), lock L behind R (4), step R (5)"
                        + "| 3-6  [not understood: Step R (3), lock L behind R (4), step R (5)]",
                "3-4 / 5-6 Step L to side, hold | 3-4  [not understood]",
                "Step R and gargle L / 5-6 Step L to side, hold | [not understood: Step R and gargle L]",
                "3-4 Walk R, walk L / 5-6 Walk R, walk L / 3-4 Rock R back, recover L"
                        + "| [not understood: 3-4 Rock R back, recover L]"
            })
    void theAuthorsWordsStandThere(String lines, String line) {
        ReadSheet read = read(sheet(lines));
        String written = written(read);
        assertTrue(written.contains("\n" + line + "\n"), written);
        assertStays(read, written);
    }

    /** A mark takes its counts and stays, whatever the words in it would mean. */
    @ParameterizedTest
    @CsvSource({"step R forward", "1/2 turn L", "3-4 hold; then (6:00) restart", "easy option: vine R", "tag"})
    void noWordInAMarkIsRead(String words) {
        String text = sheet("3-4 step R to side, [not understood: " + words + "]\n5-6 step L to side, hold");
        ReadSheet read = read(text);
        assertEquals(List.of(new Unread(0, Count.on(4), 1, words)), read.notes().unread());
        assertEquals(8, read.dance().orElseThrow().counts());
        Problem told = read.problems().get(0);
        assertEquals("The words in these brackets are marked as not understood.", told.sentence());
        assertEquals(5, told.line());
        assertEquals(21, told.column());
        assertTrue(read.hasErrors(), "it is a mistake until somebody has mended it");
        assertStays(read, written(read));
    }

    /** Behind words that may turn nobody knows where the dancers face, so no clock is made up. */
    @Test
    void noFacingIsMadeUpBehindUnknownTurns() {
        String turn = "\n5-6 Step L forward, turn 1/4 R step R forward";
        assertTrue(written(read(sheet("3-4 Walk R, walk L" + turn))).contains("(3:00)"));
        String written = written(read(sheet("3-4 Walk R, gargle 1/2 turn knob" + turn)));
        assertFalse(written.contains("(3:00)"), written);
    }

    /** A wrong clock time is told, and not mended behind the author's back. */
    @Test
    void theSheetsOwnClocksStay() {
        String written = written(read(sheet("3-4 Walk R, turn 1/4 L step L forward (3:00)\n5-6 Walk R, walk L")));
        assertTrue(written.contains("turn 1/4 L step L forward (3:00)\n"), written);
        assertTrue(
                SheetFixtures.messages(written).stream().anyMatch(message -> message.contains("The sheet says 3:00")),
                written);
    }

    @Test
    void aSheetThatIsUnderstoodHasNoMarks() {
        assertEquals(List.of(), read(SheetFixtures.SHEET).notes().unread());
        assertFalse(written(read(SheetFixtures.SHEET)).contains("not understood"));
    }

    private static void assertStays(ReadSheet read, String written) {
        ReadSheet again = read(written);
        assertEquals(read.notes(), again.notes(), written);
        assertEquals(withoutOptions(written), withoutOptions(written(again)));
    }

    /** Where counts are missing, an easy option may fit others. */
    private static String withoutOptions(String written) {
        return written.replaceAll("(?m)^\\(Easy option .*\n", "");
    }

    static Stream<String> sheets() {
        return SheetWriterTest.sheets();
    }

    /** In the middle of each third line of counts of a sheet that was written anew stands what nobody understands. */
    @ParameterizedTest
    @MethodSource("sheets")
    void strangeWordsInAWrittenSheet(String name) {
        ReadSheet right = read(SampleSheetsTest.text(name + ".txt"));
        String damaged = damaged(written(right));
        ReadSheet read = read(damaged);
        String written = written(read);
        long told = read.problems().stream()
                .filter(problem -> problem.kind().equals("unread")
                        && problem.sentence().startsWith("This action is not understood at \"wobble\""))
                .count();
        assertEquals(told, written.split("\\[not understood: " + STRANGE + "]", -1).length - 1, written);
        assertStays(read, written);
        assertEquals(rows(read), rows(read(written)), written);
        assertEquals(kinds(read), kinds(read(written)), written);
    }

    /** The same in the author's own layout, where it may cost more than itself. */
    @ParameterizedTest
    @MethodSource("sheets")
    void strangeWordsInAnyLayout(String name) {
        ReadSheet read = read(damaged(SampleSheetsTest.text(name + ".txt")));
        if (read.dance().isPresent()) {
            assertStays(read, written(read));
        }
    }

    static Stream<String> wrong() {
        return StyleSheetsTest.broken().map(name -> "styles/" + name + ".errors");
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void sheetsWithMistakes(String name) {
        ReadSheet read = read(SampleSheetsTest.text(name + ".txt"));
        assertStays(read, written(read));
    }

    private static String damaged(String text) {
        List<String> lines = new ArrayList<>();
        int counted = 0;
        for (String line : text.split("\n", -1)) {
            int comma = line.indexOf(", ");
            boolean isCounted = comma > 0 && CountGroup.read(line).isPresent();
            counted += isCounted ? 1 : 0;
            int end = line.indexOf(", ", comma + 2);
            lines.add(
                    isCounted && counted % 3 == 0
                            ? line.substring(0, comma + 2) + STRANGE + (end < 0 ? "" : line.substring(end))
                            : line);
        }
        return String.join("\n", lines);
    }

    private static List<String> rows(ReadSheet read) {
        return SheetDump.rows(read.dance().orElseThrow()).stream()
                .map(row -> row.replace("\tP\t", "\tF\t"))
                .toList();
    }

    private static List<String> kinds(ReadSheet read) {
        Dance dance = read.dance().orElseThrow();
        return cuelead.dance.DanceCheck.check(dance, "sheet.txt").stream()
                .map(Problem::kind)
                .toList();
    }
}
