package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.report.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Damaged sheets: reading never throws and never hangs, and what it reports points into the text. */
class SheetFuzzTest {
    private static final String HEAD = "Tar and Feather\n32 counts, 4 walls\n[1-8] Vine\n";
    private static final List<String> ODD = List.of(
            "\"",
            "\u201c",
            "(",
            ")",
            "[",
            "&",
            "1&",
            "9",
            "[1-8]",
            "999",
            "1/4",
            "1/99",
            "12:00",
            "0",
            "-",
            ":",
            "TAG",
            "Restart",
            "wall",
            "Sequence: A B Z",
            "Part A",
            "x64",
            "\ud83d\udc83",
            "\u0301",
            "\u0660",
            "vine",
            "\t");

    @Property(tries = 400, seed = "20261125")
    void linesAndTokensDeletedDoubledAndSwapped(
            @ForAll("demoSheets") String sheet, @ForAll long seed, @ForAll("editCounts") int edits) {
        Random random = new Random(seed);
        String damaged = sheet;
        for (int i = 0; i < edits; i++) {
            damaged = random.nextBoolean() ? lineEdit(damaged, random) : tokenEdit(damaged, random);
        }
        assertReads(damaged);
    }

    @Property(tries = 200, seed = "20261125")
    void strangeCharactersAnywhere(
            @ForAll("demoSheets") String sheet, @ForAll("strange") String odd, @ForAll long seed) {
        int at = new Random(seed).nextInt(sheet.length() + 1);
        assertReads(sheet.substring(0, at) + odd + sheet.substring(at));
    }

    @Property(tries = 200, seed = "20261125")
    void anyText(@ForAll String text) {
        assertReads(text);
        assertReads(HEAD + "1-8 " + text);
    }

    /** Twenty thousand characters in one section's lines: a reader that backtracks would need minutes. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "(",
                "\"",
                ",",
                "&",
                "1",
                "a",
                "\u00e9",
                " ",
                "zz, ",
                "step R, ",
                "vine R ",
                "kick ball ",
                "R ",
                "1/4 ",
                "turn ",
                "to ",
                "64 claps, ",
                "x2 ",
                "(3:00) ",
                "1-64-128 "
            })
    void longLinesTakeLinearTime(String piece) {
        String line = "1-8 " + piece.repeat(1900 / piece.length()) + "\n";
        assertReads(HEAD + line.repeat(10));
        assertReads(piece.repeat(200_000));
    }

    static void assertReads(String text) {
        assertTimeoutPreemptively(
                Duration.ofSeconds(20),
                () -> assertReadsAtOnce(text),
                text.lines().limit(60).toList().toString());
    }

    private static void assertReadsAtOnce(String text) {
        ReadSheet read = SheetReader.read("damaged.txt", text);
        List<Problem> problems = new ArrayList<>(read.problems());
        read.dance().ifPresent(dance -> problems.addAll(DanceCheck.check(dance, "damaged.txt")));
        assertTrue(read.dance().isPresent() || read.hasErrors(), "neither a dance nor an error");
        String[] lines = text.split("\r\n|\r|\n", -1);
        for (Problem problem : problems) {
            assertPointsIntoText(problem, lines);
        }
        read.dance().ifPresent(dance -> assertOrdered(dance, lines.length));
    }

    /** Line 0 is the whole text, column 0 the whole line. */
    private static void assertPointsIntoText(Problem problem, String[] lines) {
        assertTrue(problem.line() >= 0 && problem.line() <= lines.length, problem.message());
        int longest = problem.line() == 0 ? 0 : lines[problem.line() - 1].length() + 1;
        assertTrue(problem.column() >= 0 && problem.column() <= longest, problem.message());
        assertTrue(problem.sentence().endsWith("."), problem.message());
        assertTrue(problem.sentence().length() < 300, problem.message());
    }

    private static void assertOrdered(Dance dance, int lines) {
        List<Section> sections = Stream.concat(
                        dance.parts().stream(), dance.tags().stream().map(tag -> tag.part()))
                .map(Part::sections)
                .flatMap(List::stream)
                .toList();
        for (Section section : sections) {
            List<Step> steps = section.steps();
            List<Step> sorted = new ArrayList<>(steps);
            Collections.sort(sorted, (one, other) -> one.count().compareTo(other.count()));
            assertEquals(sorted, steps, section.name());
            assertTrue(section.length() >= 1 && section.line() <= lines, section.name());
        }
    }

    private static String lineEdit(String text, Random random) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        edit(lines, random);
        return String.join("\n", lines);
    }

    private static String tokenEdit(String text, Random random) {
        List<String> tokens =
                new ArrayList<>(Arrays.asList(text.split("(?<= )|(?= )|(?<=\n)|(?=\n)|(?<=,)|(?=,)", -1)));
        if (random.nextInt(4) == 0) {
            tokens.add(random.nextInt(tokens.size() + 1), ODD.get(random.nextInt(ODD.size())));
        } else {
            edit(tokens, random);
        }
        return String.join("", tokens);
    }

    private static void edit(List<String> pieces, Random random) {
        int one = random.nextInt(pieces.size());
        switch (random.nextInt(3)) {
            case 0 -> {
                if (pieces.size() > 1) {
                    pieces.remove(one);
                }
            }
            case 1 -> pieces.add(random.nextInt(pieces.size()), pieces.get(one));
            default -> Collections.swap(pieces, one, random.nextInt(pieces.size()));
        }
    }

    @Provide
    Arbitrary<String> demoSheets() {
        return Arbitraries.of("lamp-on-the-quay", "slack-water-waltz", "rope-walk-ramble")
                .map(SheetFuzzTest::demo);
    }

    @Provide
    Arbitrary<Integer> editCounts() {
        return Arbitraries.of(1, 2, 3, 5, 10, 40);
    }

    @Provide
    Arbitrary<String> strange() {
        return Arbitraries.strings().all().ofMinLength(1).ofMaxLength(20);
    }

    private static String demo(String name) {
        try {
            return Files.readString(Path.of("cues", name + ".txt"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
