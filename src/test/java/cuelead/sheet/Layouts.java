package cuelead.sheet;

import static cuelead.sheet.OneDance.capital;
import static cuelead.sheet.OneDance.runningOn;
import static cuelead.sheet.OneDance.sections;

import cuelead.sheet.OneDance.Eight;
import cuelead.sheet.OneDance.Group;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;

/** The one dance in many layouts, all of common practice (no source). */
final class Layouts {
    private Layouts() {}

    static Map<String, String> all() {
        Map<String, String> all = new TreeMap<>();
        spoken(all);
        digits(all);
        rows(all);
        places(all);
        PageLayouts.addTo(all);
        CribLayouts.addTo(all);
        LetterLayouts.addTo(all);
        PastedLayouts.addTo(all);
        return all;
    }

    private static void spoken(Map<String, String> all) {
        BiFunction<Eight, Integer, String> ordinal =
                (e, n) -> List.of("FIRST", "SECOND", "THIRD", "FOURTH").get(n) + " EIGHT\n";
        all.put("words", sections(ordinal, g -> g.listed(", ", " & ", OneDance::word) + "\t" + g.steps() + "\n"));
        all.put(
                "words and one space",
                sections(OneDance::worded, g -> g.listed(", ", " and ", OneDance::word) + " " + g.steps() + "\n"));
        all.put(
                "words with a colon",
                sections(
                        OneDance::numbered,
                        g -> capital(g.listed(" ", " & ", OneDance::word)) + ": " + g.steps() + "\n"));
        all.put(
                "words as a range",
                sections(OneDance::numbered, g -> "Counts " + range(g, " to ") + " - " + g.steps() + "\n"));
        all.put(
                "words behind",
                sections(OneDance::numbered, g -> g.steps() + " (" + g.listed(", ", " & ", OneDance::word) + ")\n"));
        all.put(
                "words behind as a range",
                sections(OneDance::numbered, g -> g.steps() + " on " + range(g, " to ") + "\n"));
    }

    private static String range(Group group, String to) {
        return OneDance.word("" + group.first()) + (group.isSplit() ? " & " : to) + OneDance.word("" + group.last());
    }

    private static void digits(Map<String, String> all) {
        all.put(
                "digits together",
                sections(OneDance::numbered, g -> g.listed("", "&", s -> s) + "  " + g.steps() + "\n"));
        all.put(
                "digits together, no heading",
                sections(OneDance::bare, g -> g.listed("", "&", s -> s) + ": " + g.steps() + "\n"));
        all.put(
                "digits together behind",
                sections(OneDance::numbered, g -> g.steps() + " (" + g.listed("", "&", s -> s) + ")\n"));
        all.put("dots between", sections(OneDance::numbered, g -> g.listed(".", "&", s -> s) + " " + g.steps() + "\n"));
        all.put(
                "slashes between",
                sections(OneDance::numbered, g -> g.listed("/", "&", s -> s) + " " + g.steps() + "\n"));
        all.put(
                "dashes at the end",
                sections(OneDance::numbered, g -> g.listed(" - ", " & ", s -> s) + " - " + g.steps() + "\n"));
        all.put(
                "plus between",
                sections(OneDance::numbered, g -> g.listed(" + ", " & ", s -> s) + " " + g.steps() + "\n"));
        all.put(
                "plus between two, no heading",
                sections(OneDance::bare, g -> g.listed(" + ", "&", s -> s) + ": " + g.steps() + "\n"));
        all.put(
                "and between",
                sections(OneDance::numbered, g -> g.counts().replace("&", "and") + " " + g.steps() + "\n"));
        all.put(
                "from to",
                sections(OneDance::numbered, g -> "From " + g.counts().replace("-", " to ") + ": " + g.steps() + "\n"));
        all.put(
                "on counts",
                sections(
                        OneDance::worded,
                        g -> "On counts " + g.counts() + ", " + g.steps().toLowerCase(Locale.ROOT) + ".\n"));
        all.put(
                "cts.",
                sections(
                        (e, n) -> "SET " + (n + 1) + "  " + e.heading() + "\n",
                        g -> "cts. " + g.counts() + "  " + g.steps() + "\n"));
        all.put("arrows", sections(OneDance::numbered, g -> g.counts() + " -> " + g.steps() + "\n"));
        all.put("bullets", sections(OneDance::numbered, g -> "- " + g.counts() + ": " + g.steps() + "\n"));
        all.put("stars", sections(OneDance::numbered, g -> "* " + g.counts() + " " + g.steps() + "\n"));
        all.put("running on", runningOn(OneDance::bare, g -> g.counts() + " " + g.steps() + "\n"));
        all.put("running on in brackets", runningOn(OneDance::bare, g -> "(" + g.counts() + ") " + g.steps() + "\n"));
        all.put("running on behind", runningOn(OneDance::worded, g -> g.steps() + " (" + g.counts() + ")\n"));
        all.put(
                "running on without blank lines",
                runningOn(OneDance::bare, g -> g.counts() + ". " + g.steps() + "\n")
                        .replace("\n\n", "\n"));
    }

    private static void rows(Map<String, String> all) {
        all.put("one a line", sections(OneDance::numbered, g -> g.rows("", "   ", "\n")));
        all.put("one a line with a colon", sections(OneDance::worded, g -> g.rows("", ": ", "\n")));
        all.put("one a line, behind", sections(OneDance::worded, g -> steps(g, "   ")));
        all.put("bars", sections(OneDance::numbered, g -> g.rows("| ", " | ", " |\n")));
        all.put("brackets in a row", sections(OneDance::numbered, g -> g.rows("[", "] ", "  ") + "\n"));
        all.put("round brackets in a row", sections(OneDance::bare, g -> g.rows("(", ") ", " ") + "\n"));
        all.put("blank lines between", sections(OneDance::numbered, g -> g.counts() + " " + g.steps() + "\n\n"));
        all.put(
                "blank lines between, no headings",
                sections(OneDance::bare, g -> g.counts() + " " + g.steps() + "\n\n"));
        all.put(
                "all of a section in one line",
                sections(OneDance::numbered, g -> g.counts() + " " + g.steps() + "; ")
                        .replace("; \n", "\n"));
        all.put("counts above", sections(OneDance::numbered, g -> g.counts() + "\n" + g.steps() + "\n"));
        all.put("counts below", sections(OneDance::numbered, g -> g.steps() + "\n" + g.counts() + "\n"));
        all.put(
                "steps broken",
                sections(OneDance::numbered, g -> g.counts() + " " + g.steps().replaceFirst(", ", ",\n    ") + "\n"));
    }

    private static String steps(Group group, String gap) {
        StringBuilder lines = new StringBuilder();
        group.rows()
                .forEach(row ->
                        lines.append(row.get(1)).append(gap).append(row.get(0)).append("\n"));
        return lines.toString();
    }

    private static void places(Map<String, String> all) {
        all.put(
                "heading in front",
                sections((e, n) -> e.heading() + ": ", g -> g.steps() + " (" + g.counts() + "). ")
                        .replace(". \n", ".\n"));
        all.put(
                "heading and dash in front",
                sections((e, n) -> e.heading() + " - ", g -> g.steps() + " (" + g.counts() + "), ")
                        .replace(", \n", ".\n"));
        all.put(
                "heading and counts in front",
                sections((e, n) -> e.heading() + ": ", g -> g.counts() + " " + g.steps() + "; ")
                        .replace("; \n", "\n"));
        all.put(
                "number and counts in front",
                sections((e, n) -> "S" + (n + 1) + ": ", g -> g.counts() + " " + g.steps() + ". ")
                        .replace(". \n", "\n"));
        all.put("counts at the end", sections(OneDance::numbered, g -> g.steps() + "\t" + g.counts() + "\n"));
        all.put(
                "counts at the end after a comma",
                sections(OneDance::worded, g -> g.steps() + ", " + g.counts() + ".\n"));
        all.put(
                "counts at the end in square brackets",
                sections(OneDance::bare, g -> g.steps() + " [" + g.counts() + "]\n"));
        all.put(
                "small letters, counts at the end",
                sections(OneDance::bare, g -> (g.steps() + " (" + g.counts() + ")\n").toLowerCase(Locale.ROOT)));
        all.put(
                "small letters",
                sections(OneDance::bare, g -> (g.counts() + " " + g.steps() + "\n").toLowerCase(Locale.ROOT)));
        all.put(
                "capitals",
                sections(OneDance::numbered, g -> (g.counts() + " " + g.steps() + "\n").toUpperCase(Locale.ROOT)));
        all.put(
                "counts at the end, heading in front",
                sections((e, n) -> e.heading() + ": ", g -> g.steps() + "     " + g.listed(",", "&", s -> s) + "\n"));
    }
}
