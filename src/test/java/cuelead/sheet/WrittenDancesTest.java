package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.dance.FigureRow;
import cuelead.dance.Figures;
import cuelead.dance.Foot;
import cuelead.dance.Step;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of reading, over dances put together from actions that follow each other on free feet. */
class WrittenDancesTest {
    private static final List<String> STEPS = List.of(
            "step R forward",
            "step R back",
            "step R to side",
            "step R beside L",
            "step R in place",
            "cross R over L",
            "step R behind L",
            "rock R forward",
            "rock R to side",
            "turn 1/4 R step R forward",
            "turn 1/2 L step R back",
            "stomp R beside L",
            "walk R forward",
            "sway R to R");
    private static final List<String> TOUCHES = List.of(
            "touch R beside L",
            "point R to side",
            "kick R forward",
            "touch R heel forward",
            "touch R toe back",
            "scuff R forward",
            "hitch R",
            "hook R",
            "hold");

    /** Prose of so many counts; each word is for the foot that is free there. */
    @Provide
    Arbitrary<List<String>> lines() {
        return Arbitraries.of(STEPS.size() + TOUCHES.size())
                .list()
                .ofSize(1)
                .flatMap(ignored -> Arbitraries.integers()
                        .between(0, STEPS.size() + TOUCHES.size() - 1)
                        .list()
                        .ofSize(16))
                .map(WrittenDancesTest::prose);
    }

    private static List<String> prose(List<Integer> choices) {
        List<String> prose = new ArrayList<>();
        boolean right = true;
        for (int choice : choices) {
            boolean step = choice < STEPS.size();
            String words = step ? STEPS.get(choice) : TOUCHES.get(choice - STEPS.size());
            prose.add(right ? words : mirrored(words));
            right = step != right;
        }
        return prose;
    }

    private static String mirrored(String words) {
        return words.replace("R", "#").replace("L", "R").replace("#", "L");
    }

    private static Dance dance(String lines) {
        return SheetReader.read("sheet.txt", "TIDE MARK\nStart with weight on left\n" + lines)
                .dance()
                .orElseThrow();
    }

    private static String inEights(List<String> prose, String head, String line) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < prose.size(); i += 2) {
            text.append(i % 8 == 0 ? head.formatted(i + 1, i + 8, i / 8 + 1) : "");
            text.append(line.formatted(i % 8 + 1, i % 8 + 2, prose.get(i), prose.get(i + 1)));
        }
        return text.toString();
    }

    @Property(tries = 200)
    void whatIsWrittenReadsBack(@ForAll("lines") List<String> prose) {
        Dance dance = dance(inEights(prose, "[%d-%d] EIGHT %d\n", "%d-%d %s, %s\n"));
        String written = SheetWriter.write(dance);
        Dance again = SheetReader.read("sheet.txt", written).dance().orElseThrow();
        assertEquals(SheetDump.rows(dance), SheetDump.rows(again), written);
    }

    /** Counts before, behind, between, above, or in columns: the same dance. */
    @Property(tries = 100)
    void anyStyleOfCountsIsTheSameDance(@ForAll("lines") List<String> prose) {
        List<String> rows = SheetDump.rows(dance(inEights(prose, "[%d-%d] EIGHT %d\n", "%d-%d %s, %s\n")));
        List<String> styles = List.of(
                inEights(prose, "Section %3$d\n", "%3$s, %4$s  (%1$d-%2$d)\n"),
                inEights(prose, "S%3$d: EIGHT\n", "%1$d,%2$d: %3$s; %4$s\n"),
                inEights(prose, "\nPart %3$d\n", "(%1$d) %3$s (%2$d) %4$s\n"),
                inEights(prose, "\nSection %3$d\n", "%3$s (%1$d), %4$s (%2$d)\n"),
                inEights(prose, "[%d-%d]\n", "Counts %1$d-%2$d:\n%3$s, %4$s\n"),
                inEights(prose, "[%d-%d]\n", "%1$d\t%3$s\n%2$d\t%4$s\n"));
        for (String style : styles) {
            assertEquals(rows, SheetDump.rows(dance(style)), style);
        }
    }

    @Property(tries = 100)
    void caseAndSpacesAndPunctuationChangeNothing(@ForAll("lines") List<String> prose) {
        String text = inEights(prose, "[%d-%d] EIGHT %d\n", "%d-%d %s, %s\n");
        List<String> rows = SheetDump.rows(dance(text));
        assertEquals(rows, SheetDump.rows(dance(text.toUpperCase(Locale.ROOT))));
        assertEquals(rows, SheetDump.rows(dance(text.toLowerCase(Locale.ROOT))));
        assertEquals(rows, SheetDump.rows(dance(text.replace(" ", "\u00a0 ").replace(",", " ;"))));
        assertEquals(rows, SheetDump.rows(dance(text.replace("-", " \u2013 ").replace("1/4", "\u00bc"))));
    }

    /** A second eight that mirrors the first, and a third that mirrors the second, is the first again. */
    @Property(tries = 100)
    void mirroredTwiceIsTheSame(@ForAll("lines") List<String> prose) {
        String once = inEights(prose.subList(0, 8), "[%d-%d] EIGHT %d\n", "%d-%d %s, %s\n");
        Dance dance = dance(once + "[9-16] AGAIN\n1-8 Mirror section 1\n[17-24] AGAIN\n1-8 Mirror section 2\n");
        assertEquals(danced(dance, 0), danced(dance, 2));
        List<String> turned =
                danced(dance, 0).stream().map(row -> mirroredRow(row)).toList();
        assertEquals(turned, danced(dance, 1));
    }

    private static List<String> danced(Dance dance, int section) {
        return dance.parts().get(0).sections().get(section).steps().stream()
                .map(WrittenDancesTest::row)
                .toList();
    }

    private static String row(Step step) {
        return step.count().label() + " " + step.foot().map(Foot::letter).orElse("-") + " " + step.action() + " "
                + step.turn().degrees();
    }

    private static String mirroredRow(String row) {
        String[] cells = row.split(" ");
        String foot = cells[1].equals("-") ? "-" : mirrored(cells[1]);
        return cells[0] + " " + foot + " " + cells[2] + " " + -Integer.parseInt(cells[3]);
    }

    /** Every figure of the table, read by its name for either foot, is the table's pattern. */
    @Property(tries = 20)
    void figuresAreReadByTheirNames(@ForAll Foot lead) {
        List<String> wrong = new ArrayList<>();
        for (FigureRow row : Figures.standard().rows()) {
            boolean named = row.kind() == FigureRow.Kind.FIGURE
                    && row.figure().pattern().size() > 1;
            boolean feet =
                    row.figure().pattern().stream().allMatch(beat -> beat.foot().isPresent());
            if (named && feet) {
                read(row, lead, wrong);
            }
        }
        assertEquals(
                List.of(),
                wrong.stream().filter(name -> !UNNAMED.contains(name)).toList());
    }

    /** Their names are a list of the actions that they consist of, or belong to another figure as well. */
    private static final List<String> UNNAMED =
            List.of("out_out_in_in", "rock_recover", "sway", "cross_unwind", "unwind_behind");

    private static void read(FigureRow row, Foot lead, List<String> wrong) {
        String expected = (lead == row.figure().lead()
                        ? row.figure()
                        : row.figure().mirrored())
                .pattern().stream()
                        .map(beat -> beat.foot().orElseThrow().letter() + " " + beat.action())
                        .collect(Collectors.joining(", "));
        Footing footing = new Footing(Weight.on(lead.other()));
        List<Phrase> phrases = LineFit.phrases(row.figure().name());
        if (phrases.size() != 1 || phrases.get(0).figure().isEmpty()) {
            wrong.add(row.figure().id());
            return;
        }
        String read = new MoveMaker(new Problems(""), 0, footing)
                .moves(phrases.get(0), Fitting.usual(phrases.get(0))).stream()
                        .map(move -> move.foot().map(Foot::letter).orElse("-") + " " + move.action())
                        .collect(Collectors.joining(", "));
        if (!expected.equals(read)) {
            wrong.add(row.figure().id());
        }
    }
}
