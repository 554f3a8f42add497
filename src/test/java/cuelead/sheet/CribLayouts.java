package cuelead.sheet;

import static cuelead.sheet.OneDance.EIGHTS;
import static cuelead.sheet.OneDance.FOOT;
import static cuelead.sheet.OneDance.HEAD;

import cuelead.sheet.OneDance.Group;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Collectors;

/** The one dance as cribs: figure names, a line an eight, with counts or lengths beside them; all common practice, no source. */
final class CribLayouts {
    private CribLayouts() {}

    static void addTo(Map<String, String> all) {
        counts(all);
        heads(all);
        lengths(all);
        joints(all);
    }

    private static void counts(Map<String, String> all) {
        all.put("crib: counts in brackets", crib(n -> n + ") ", ", ", CribLayouts::bracketed));
        all.put("crib: counts behind", crib(n -> n + ". ", ", ", g -> g.figure() + " " + g.counts()));
        all.put("crib: counts in front", crib(n -> n + ". ", ", ", g -> g.counts() + " " + g.figure()));
        all.put("crib: square brackets", crib(n -> n + ". ", "; ", g -> g.figure() + " [" + g.counts() + "]"));
        all.put("crib: no spaces", crib(n -> n + ")", ",", g -> g.figure() + "(" + g.counts() + ")"));
        all.put("crib: capitals", all.get("crib: counts in brackets").toUpperCase(Locale.ROOT));
        all.put("crib: counted on", eights((n, g) -> bracketed(g.counted(n - 1)), n -> n + ") ", ", "));
    }

    private static void heads(Map<String, String> all) {
        all.put("crib: S1", crib(n -> "S" + n + ": ", ", ", CribLayouts::bracketed));
        all.put("crib: Block 1", crib(n -> "Block " + n + " - ", ", ", CribLayouts::bracketed));
        all.put("crib: [1-8]", crib(n -> "[" + (8 * n - 7) + "-" + 8 * n + "] ", ", ", CribLayouts::bracketed));
        all.put("crib: #1", crib(n -> "#" + n + " ", ", ", CribLayouts::bracketed));
        all.put("crib: a)", crib(n -> "abcd".charAt(n - 1) + ") ", ", ", CribLayouts::bracketed));
        all.put("crib: 1 |", crib(n -> n + " | ", " | ", CribLayouts::bracketed));
    }

    private static void lengths(Map<String, String> all) {
        all.put("crib: (4)", crib(n -> n + ") ", ", ", g -> g.figure() + " (" + g.length() + ")"));
        all.put("crib: - 4 cts", crib(n -> n + ". ", ", ", g -> g.figure() + " - " + g.length() + " cts"));
        all.put("crib: = 4", crib(n -> n + ") ", "; ", g -> g.figure() + " = " + g.length()));
        all.put("crib: bare 4", crib(n -> n + " - ", ", ", g -> g.figure() + " " + g.length()));
        all.put("crib: for 4", crib(n -> n + ") ", ", then ", g -> g.figure() + " for " + g.length()));
        all.put("crib: S1 and lengths", crib(n -> "S" + n + ": ", ", ", g -> g.figure() + " (" + g.length() + ")"));
        all.put("crib: totals of a section", crib(n -> n + ") ", ", ", g -> g.figure() + " (" + g.last() + ")"));
        all.put(
                "crib: totals of the dance",
                eights((n, g) -> g.figure() + " (" + (8 * n - 8 + g.last()) + ")", n -> n + ") ", ", "));
    }

    private static void joints(Map<String, String> all) {
        all.put("crib: arrows", crib(n -> n + ") ", " -> ", CribLayouts::bracketed));
        all.put("crib: arrows and lengths", crib(n -> "", " > ", g -> g.figure() + " (" + g.length() + ")"));
        all.put("crib: strokes", crib(n -> n + ". ", " / ", CribLayouts::bracketed));
        all.put("crib: plus", crib(n -> n + ". ", " + ", CribLayouts::bracketed));
        all.put("crib: then", crib(n -> n + ". ", " then ", CribLayouts::bracketed));
    }

    private static String bracketed(Group group) {
        return group.figure() + " (" + group.counts() + ")";
    }

    private static String crib(IntFunction<String> head, String joint, Function<Group, String> figure) {
        return eights((n, g) -> figure.apply(g), head, joint);
    }

    private static String eights(BiFunction<Integer, Group, String> figure, IntFunction<String> head, String joint) {
        StringBuilder text = new StringBuilder(HEAD);
        for (int i = 0; i < EIGHTS.size(); i++) {
            int number = i + 1;
            text.append(head.apply(number))
                    .append(EIGHTS.get(i).groups().stream()
                            .map(group -> figure.apply(number, group))
                            .collect(Collectors.joining(joint)))
                    .append("\n");
        }
        return text.append(FOOT).toString();
    }
}
