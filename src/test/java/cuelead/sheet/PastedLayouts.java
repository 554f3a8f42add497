package cuelead.sheet;

import static cuelead.sheet.OneDance.sections;

import cuelead.sheet.OneDance.Eight;
import cuelead.sheet.OneDance.Group;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** The one dance as it comes out of other programs: tables pasted as text, dictations, pages broken anywhere (common practice, no source). */
final class PastedLayouts {
    private static final List<String> ORDINALS = List.of("first", "second", "third", "last");
    private static final int PAGE_WIDTH = 64;

    private PastedLayouts() {}

    static void addTo(Map<String, String> all) {
        tables(all);
        dictated(all);
        said(all);
        broken(all);
    }

    private static void tables(Map<String, String> all) {
        table(
                all,
                "magazine",
                "COUNTS  FOOTWORK  CALLING  DIRECTION",
                g -> cells(g.counts(), 8, g.steps(), 70, g.figure(), 34, "On the spot"));
        table(
                all,
                "steps last",
                "Counts  Call  What to do",
                g -> cells(g.counts(), 10, g.figure(), 36, g.steps(), 70, ""));
        table(all, "two columns of words", "", g -> cells(g.counts(), 8, g.figure(), 36, g.steps(), 72, "forward"));
        table(all, "wrapped cells", "", PastedLayouts::wrapped);
        table(all, "tabs", "", g -> String.join("\t", g.counts(), g.steps(), g.figure(), "On the spot"));
        table(all, "tabs, steps last", "", g -> String.join("\t", g.counts(), g.figure(), g.steps()));
    }

    private static void table(Map<String, String> all, String name, String head, Function<Group, String> row) {
        all.put(
                "pasted: table, " + name,
                sections(
                        (e, n) -> (n == 0 ? head + "\n" : "") + "Section " + (n + 1) + "  " + e.heading() + "\n",
                        g -> row.apply(g) + "\n"));
    }

    private static String cells(String one, int first, String two, int second, String three, int third, String four) {
        return pad(one, first) + pad(two, second) + pad(three, third) + four;
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(2, width - text.length()));
    }

    /** The steps on two lines, the other cells on the first. */
    private static String wrapped(Group group) {
        int half = group.steps().indexOf(", ") + 1;
        String first =
                cells(group.counts(), 8, group.steps().substring(0, half), 56, group.figure(), 34, "On the spot");
        return first + "\n" + " ".repeat(8) + group.steps().substring(half + 1);
    }

    private static void dictated(Map<String, String> all) {
        Function<Group, String> words = g -> g.listed(" ", " and ", OneDance::word) + " " + unstopped(g.steps()) + " ";
        Function<Group, String> digits = g -> g.listed(" ", " & ", digit -> digit) + " " + unstopped(g.steps()) + " ";
        all.put("pasted: dictated, first eight", sections((e, n) -> "\n" + ORDINALS.get(n) + " eight ", words));
        all.put(
                "pasted: dictated, then the next set",
                sections((e, n) -> "\nthen the " + ORDINALS.get(n) + " set ", words));
        all.put("pasted: dictated, digits", sections((e, n) -> "\n" + ORDINALS.get(n) + " section ", digits));
        all.put("pasted: dictated, no heads", sections((e, n) -> "\n", words));
        all.put("pasted: dictated in one", OneDance.HEAD + "\n" + inOne(words) + "\n" + OneDance.FOOT);
    }

    private static String inOne(Function<Group, String> words) {
        StringBuilder all = new StringBuilder("ok so here we go ");
        for (int i = 0; i < OneDance.EIGHTS.size(); i++) {
            all.append(ORDINALS.get(i)).append(" eight ");
            OneDance.EIGHTS.get(i).groups().forEach(group -> all.append(words.apply(group)));
        }
        return all.append("and that's it").toString();
    }

    private static String unstopped(String steps) {
        return steps.toLowerCase(Locale.ROOT)
                .replace(",", "")
                .replaceAll("\\br\\b", "right")
                .replaceAll("\\bl\\b", "left");
    }

    private static void said(Map<String, String> all) {
        said(all, "a sentence", ". Nice and easy does it, my lovelies.");
        said(all, "a shout", "! Strut it like you own the hall!");
        said(all, "so that", ", so that you keep up with your neighbours.");
        said(all, "a dash", " - don't rush these, folks");
        said(all, "two sentences", ". That's where everybody gets lost. Keep smiling anyway!");
        said(all, "now you", ". Now you can wave to grandma.");
    }

    private static void said(Map<String, String> all, String name, String behind) {
        all.put(
                "pasted: said behind, " + name,
                sections(OneDance::numbered, g -> g.counts() + " " + g.steps() + behind + "\n"));
    }

    private static void broken(Map<String, String> all) {
        all.put(
                "pasted: broken page",
                sections((e, n) -> "", g -> "").replace(OneDance.FOOT, "") + "\n" + page() + OneDance.FOOT);
    }

    /** "Counts 1 to 4: ...", counted through the dance, broken wherever the page ends; a paragraph an eight. */
    private static String page() {
        StringBuilder page = new StringBuilder();
        int eight = 0;
        for (Eight each : OneDance.EIGHTS) {
            StringBuilder paragraph = new StringBuilder();
            for (Group group : each.groups()) {
                String counts = group.counted(eight).counts().replace("-", " to ");
                paragraph
                        .append("Counts ")
                        .append(counts)
                        .append(": ")
                        .append(group.steps()
                                .toLowerCase(Locale.ROOT)
                                .replaceAll("\\br\\b", "right")
                                .replaceAll("\\bl\\b", "left"))
                        .append(". ");
            }
            page.append(wrap(paragraph.toString())).append("\n\n");
            eight++;
        }
        return page.toString();
    }

    private static String wrap(String text) {
        StringBuilder wrapped = new StringBuilder();
        int column = 0;
        for (String word : text.strip().split(" ", -1)) {
            boolean breaks = column + word.length() > PAGE_WIDTH;
            wrapped.append(wrapped.isEmpty() ? "" : breaks ? "\n" : " ").append(word);
            column = breaks ? word.length() : column + word.length() + 1;
        }
        return wrapped.toString();
    }
}
