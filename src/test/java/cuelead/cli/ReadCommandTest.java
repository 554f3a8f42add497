package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet shown as it was understood, for people and for programs. */
class ReadCommandTest {
    private static final String WRONG = """
            STEAM OVER THE KETTLE
            Count: 8   Wall: 1   Level: Beginner
            Start with weight on left.

            [1-8] SIDE, TOGETHER, SIDE, TOUCH
            1-2 Step right to right side, step left beside right
            3-4 Step right to right side, touch left beside right
            5-6 Step right forward, step left beside right (3:00)
            7-8 Stomp right beside left, stomp left beside right
            """;

    @TempDir
    private Path folder;

    @Test
    void everyCountHasFootTurnFacingWeightAndCall() {
        Bench.Outcome read = Bench.withoutDevice(folder).run("read", Bench.DEMO_SHEET);
        assertEquals(0, read.exitCode(), read.err());
        assertTrue(
                read.out().contains("  2     left   step back              1/4 R   3:00    left    turn"), read.out());
        assertTrue(read.out().contains("32 counts, 4 walls, begins with the right foot"), read.out());
    }

    /** A local name is read by every command that is given the file; a line in it that is none is told. */
    @Test
    void figuresOfOnesOwn() throws IOException {
        Path sheet = folder.resolve("kettle.txt");
        Files.writeString(sheet, WRONG.replace("Step right to right side, touch left beside right", "Lid lift R"));
        Path own = folder.resolve("own.txt");
        Files.writeString(own, "lid lift = step R to side, touch L beside R\njust words\n");
        Bench bench = Bench.withoutDevice(folder);
        assertTrue(bench.run("read", sheet.toString()).err().contains("lid"), "not known without the file");
        Bench.Outcome read = bench.run("read", sheet.toString(), "--figures", own.toString());
        assertTrue(read.out().contains("  3     right  step side"), read.out());
        assertTrue(read.err().contains("own.txt:2:1: error: This line is no figure of your own."), read.err());
        Bench.Outcome none = bench.run("check", sheet.toString(), "--figures", "none.txt");
        assertTrue(none.err().contains("none.txt cannot be read"), none.err());
    }

    @Test
    void aDanceIsPutOnPaper() throws IOException {
        Path calls = folder.resolve("calls.pdf");
        Path steps = folder.resolve("steps.pdf");
        Bench bench = Bench.withoutDevice(folder);
        Bench.Outcome read =
                bench.run("read", Bench.DEMO_SHEET, "--call-sheet", calls.toString(), "--step-sheet", steps.toString());
        assertEquals(0, read.exitCode(), read.err());
        assertTrue(read.err().contains("The call sheet is in " + calls + "."), read.err());
        for (Path pdf : List.of(calls, steps)) {
            assertTrue(Files.readString(pdf, StandardCharsets.ISO_8859_1).startsWith("%PDF-"), pdf.toString());
        }
        Bench.Outcome none = bench.run(
                "read",
                Bench.DEMO_SHEET,
                "--call-sheet",
                folder.resolve("none/a.pdf").toString());
        assertTrue(none.exitCode() != 0 && none.err().contains("none"), none.err());
    }

    @Test
    void rowsForProgramsHaveTheColumnsThatTheirHeadNames() {
        Bench.Outcome read = Bench.withoutDevice(folder).run("read", Bench.DEMO_SHEET, "--tsv");
        List<String> lines = read.out().lines().toList();
        assertTrue(lines.containsAll(List.of("#counts=32", "#walls=4", "#start_weight=L", "#net_turn_deg=90")));
        List<String> rows = lines.stream().filter(line -> !line.startsWith("#")).toList();
        List<String> columns = Arrays.asList(rows.get(0).split("\t", -1));
        assertTrue(columns.containsAll(List.of("section", "count_in_dance", "turn_deg", "weight_after", "figure")));
        for (String row : rows) {
            assertEquals(columns.size(), row.split("\t", -1).length, row);
        }
    }

    @Test
    void findingsForProgramsHaveLineKindTextAndSeverity() throws IOException {
        Path sheet = folder.resolve("steam.txt");
        Files.writeString(sheet, WRONG);
        Bench.Outcome check =
                Bench.withoutDevice(folder).run("check", sheet.toString(), Bench.PROJECT + "/none.mp3", "--tsv");
        List<String> lines = check.out().lines().toList();
        assertEquals("line\tkind\ttext\tseverity\tfile\tcolumn", lines.get(0));
        assertTrue(
                lines.stream().anyMatch(line -> line.startsWith("8\twrong_clock\tThe sheet says 3:00")), check.out());
        assertEquals(1, check.exitCode());
    }

    /** How the voice says its words is told where it is heard, and not of a sheet alone. */
    @Test
    void poorWordsAreToldWhereAVoiceIsUsed() throws IOException {
        Path sheet = folder.resolve("steam.txt");
        Files.writeString(
                sheet,
                WRONG.replace(" (3:00)", "")
                        .replace("Step right to right side, touch left", "Kick right forward, touch right")
                        .replace("touch right beside right", "touch right beside left"));
        Bench bench = Bench.withoutDevice(folder);
        Bench.Outcome check = bench.run("check", sheet.toString());
        assertEquals(0, check.exitCode(), check.out());
        assertEquals("", check.out());
        Bench.Outcome plan = bench.run("plan", sheet.toString());
        assertTrue(plan.err().contains("The built-in voice says some words poorly: \"kick\""), plan.err());
    }

    /** Each with its findings; the worst decides. */
    @Test
    void severalSheetsAreCheckedOneAfterTheOther() throws IOException {
        String wrong = Files.writeString(folder.resolve("steam.txt"), WRONG).toString();
        String right = Files.writeString(
                        folder.resolve("still.txt"),
                        WRONG.replace(" (3:00)", "")
                                .replace("Step right forward, step left", "Step left forward, step right")
                                .replace(
                                        "Stomp right beside left, stomp left beside right",
                                        "Stomp left beside right, touch right beside left"))
                .toString();
        Bench bench = Bench.withoutDevice(folder);
        Bench.Outcome check = bench.run("check", right, wrong);
        assertEquals(1, check.exitCode(), check.err());
        assertTrue(check.out().contains(wrong + ":8:"), check.out());
        assertEquals(2, check.err().lines().count(), check.err());
        assertTrue(check.err().lines().allMatch(line -> line.contains(wrong) || line.contains(right)), check.err());
        Bench.Outcome missing = bench.run("check", "none.txt", right);
        assertEquals(1, missing.exitCode());
        assertTrue(missing.err().contains("none.txt") && missing.err().contains("Nothing is wrong"), missing.err());
        Bench.Outcome songs = bench.run("check", right, "one.mp3", "two.mp3");
        assertTrue(songs.err().contains("Name one song: \"one.mp3\" or \"two.mp3\"."), songs.err());
    }

    @Test
    void whatIsWrongIsToldBesideTheDance() throws IOException {
        Path sheet = folder.resolve("steam.txt");
        Files.writeString(sheet, WRONG);
        Bench.Outcome read = Bench.withoutDevice(folder).run("read", sheet.toString());
        assertEquals(1, read.exitCode());
        assertTrue(read.out().contains("stomp together"), read.out());
        assertTrue(read.err().contains("steam.txt:8"), read.err());
    }

    /** What is danced before a restart instead can be held beside the sheet. */
    @Test
    void stepsThatARestartChangesAreListed() throws IOException {
        Path sheet = folder.resolve("steam.txt");
        Files.writeString(
                sheet, WRONG + "Restart: on wall 2 dance to count 6, then touch R beside L, touch L and restart");
        Bench.Outcome read = Bench.withoutDevice(folder).run("read", sheet.toString());
        List<String> lines = read.out().lines().toList();
        int told = lines.indexOf("Wall 2 is broken off after count 8 and begins again, with other steps before that:");
        assertTrue(told > 0, read.out());
        assertTrue(lines.get(told + 1).startsWith("  7     right  touch together"), read.out());
        assertTrue(lines.get(told + 2).startsWith("  8     left   touch"), read.out());
    }

    @Test
    void aSheetWrittenAnewIsTheSameDance() throws IOException {
        Bench bench = Bench.withoutDevice(folder);
        Bench.Outcome written = bench.run("read", Bench.DEMO_SHEET, "--write");
        assertEquals(0, written.exitCode(), written.err());
        Path anew = Files.writeString(folder.resolve("anew.txt"), written.out());
        assertEquals(
                rows(bench.run("read", Bench.DEMO_SHEET, "--tsv")), rows(bench.run("read", anew.toString(), "--tsv")));
    }

    /** One sentence tells what must not be handed out unseen. */
    @Test
    void whatWasNotUnderstoodIsMarkedAndTold() throws IOException {
        Path sheet = folder.resolve("kettle.txt");
        Files.writeString(
                sheet,
                WRONG.replace("touch left beside right", "wobble the knob")
                        .replace("step left beside right (3:00)", "frobnicate left"));
        Bench.Outcome written = Bench.withoutDevice(folder).run("read", sheet.toString(), "--write");
        assertTrue(written.out().contains("3-4  step R to side, [not understood: wobble the knob]\n"), written.out());
        assertTrue(
                written.err()
                        .contains("2 places were not understood; the author's words stand there, marked"
                                + " \"[not understood: ...]\"."),
                written.err());
        assertEquals(1, written.exitCode());
    }

    private static List<String> rows(Bench.Outcome tsv) {
        return tsv.out().lines().filter(line -> !line.startsWith("#")).toList();
    }
}
