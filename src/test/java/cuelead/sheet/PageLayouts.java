package cuelead.sheet;

import static cuelead.sheet.OneDance.EIGHTS;
import static cuelead.sheet.OneDance.FOOT;
import static cuelead.sheet.OneDance.HEAD;
import static cuelead.sheet.OneDance.capital;
import static cuelead.sheet.OneDance.sections;

import cuelead.sheet.OneDance.Eight;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;

/** The one dance in layouts that differ in headings, lengths, header and pages; all common practice, no source. */
final class PageLayouts {
    private PageLayouts() {}

    static void addTo(Map<String, String> all) {
        lengths(all);
        headings(all);
        pages(all);
    }

    private static void lengths(Map<String, String> all) {
        all.put("lengths", sections(OneDance::numbered, g -> capital(g.figure()) + " (" + g.length() + ")\n"));
        all.put(
                "lengths with a unit",
                sections(OneDance::bare, g -> capital(g.figure()) + " - " + g.length() + " counts\n"));
        all.put("lengths in front", sections(OneDance::bare, g -> g.length() + " counts: " + g.figure() + "\n"));
        all.put(
                "lengths in a sentence",
                sections(
                                (e, n) -> n == 0 ? "First 8: " : "Next 8: ",
                                g -> g.figure() + " (" + g.length() + " counts), then ")
                        .replace(", then \n", ".\n"));
        all.put("a paragraph", paragraph());
        all.put("a paragraph with counts", counted());
        all.put("two columns", columns());
    }

    private static void headings(Map<String, String> all) {
        heading(all, "Section 1 of 4", (e, n) -> "Section " + (n + 1) + " of 4\n");
        heading(all, "Section 1 of 4 and words", (e, n) -> "Section " + (n + 1) + " of 4: " + e.heading() + "\n");
        heading(
                all,
                "PART 1 (counts 1-8)",
                (e, n) -> "PART " + (n + 1) + " (counts " + (8 * n + 1) + "-" + (8 * n + 8) + ")\n");
        heading(
                all,
                "Counts 1 to 8",
                (e, n) -> "Counts " + (8 * n + 1) + " to " + (8 * n + 8) + ": " + e.heading() + "\n");
        heading(
                all,
                "1st eight",
                (e, n) -> List.of("1st", "2nd", "3rd", "4th").get(n) + " eight: " + e.heading() + "\n");
        heading(
                all,
                "Second set of eight",
                (e, n) -> List.of("First", "Second", "Third", "Fourth").get(n) + " set of 8 - " + e.heading() + "\n");
        heading(all, "number and bracket", (e, n) -> (n + 1) + ") " + e.heading() + "\n");
        heading(all, "number and dot", (e, n) -> (n + 1) + ". " + e.heading() + "\n");
        heading(all, "sign of number", (e, n) -> "#" + (n + 1) + " " + e.heading() + "\n");
        heading(all, "dashes around", (e, n) -> "--- " + e.heading() + " ---\n");
        heading(all, "stars around", (e, n) -> "** " + e.heading() + " **\n");
        heading(all, "colon behind", (e, n) -> capital(e.heading().toLowerCase(Locale.ROOT)) + ":\n");
        heading(all, "range behind", (e, n) -> e.heading() + " (" + (8 * n + 1) + "-" + (8 * n + 8) + ")\n");
        heading(
                all,
                "range behind in square brackets",
                (e, n) -> e.heading() + " [" + (8 * n + 1) + " - " + (8 * n + 8) + "]\n");
        heading(all, "bare range", (e, n) -> (8 * n + 1) + "-" + (8 * n + 8) + "\n");
        heading(all, "range and words", (e, n) -> (8 * n + 1) + "-" + (8 * n + 8) + " " + e.heading() + "\n");
        heading(all, "letters", (e, n) -> "ABCD".charAt(n) + ". " + e.heading() + "\n");
        heading(all, "Sec.", (e, n) -> "Sec. " + (n + 1) + " - " + e.heading() + "\n");
        heading(all, "underlined", (e, n) -> e.heading() + "\n---------------\n");
        heading(all, "number words", (e, n) -> "Section " + capital(OneDance.word("" + (n + 1))) + "\n");
        heading(
                all,
                "clock in the heading",
                (e, n) -> "Section " + (n + 1) + ": " + e.heading() + " " + (n < 2 ? "(12:00)" : "(3:00)") + "\n");
    }

    private static void heading(Map<String, String> all, String name, BiFunction<Eight, Integer, String> heading) {
        all.put("headings: " + name, sections(heading, g -> g.counts() + " " + g.steps() + "\n"));
    }

    private static void pages(Map<String, String> all) {
        String plain = sections(OneDance::numbered, g -> g.counts() + " " + g.steps() + "\n");
        all.put(
                "values below",
                plain.replace(
                        HEAD,
                        "Nettle Row\nCount:\n32\nWall:\n4\nLevel:\nBeginner\nChoreographer:\nQuill Underhay\nIntro:\n16 counts\nWeight on L\n\n"));
        all.put(
                "values in columns",
                plain.replace(
                        HEAD,
                        "Nettle Row\nCount: 32    Wall: 4    Level: Beginner\nChoreographed by Quill Underhay (November 2026)\nStart after 16 counts, weight on L\n\n"));
        all.put(
                "a page break",
                plain.replace(
                        "Section 3",
                        "Quill Underhay - quill@example.org - 0123 456789\nPage 1 of 2\n\nNettle Row (continued)\n\nSection 3"));
        all.put(
                "a foot",
                plain
                        + "\n\nQuill Underhay, Barley Hall Dancers, 12 Mill Lane, Underhay\nAll rights reserved. This sheet may be copied unchanged.\nLast update: 3 November 2026\n");
        all.put(
                "notes between",
                plain.replace("Section 2", "Note: keep the steps small here.\n\nSection 2")
                        .replace("Section 4", "Smile, this is the hard bit!\n\nSection 4"));
        all.put(
                "a greeting",
                plain.replace(HEAD, HEAD + "Hello everybody! Here is my new dance. Hope you like it.\n\n"));
        all.put("counts in a column apart", apart());
    }

    /** As a table of two columns comes out of a page: all counts, then all steps. */
    private static String apart() {
        StringBuilder text = new StringBuilder(HEAD);
        for (int i = 0; i < EIGHTS.size(); i++) {
            text.append("Section ").append(i + 1).append("\n");
            EIGHTS.get(i).groups().forEach(group -> text.append(group.counts()).append("\n"));
            EIGHTS.get(i).groups().forEach(group -> text.append(group.steps()).append("\n"));
            text.append("\n");
        }
        return text.append(FOOT).toString();
    }

    /** As in a letter: broken anywhere. */
    private static String paragraph() {
        StringBuilder prose = new StringBuilder();
        EIGHTS.stream()
                .flatMap(eight -> eight.groups().stream())
                .forEach(group -> prose.append(prose.isEmpty() ? "Start with " : "Then ")
                        .append(group.figure())
                        .append(" (")
                        .append(group.length())
                        .append(" counts). "));
        return HEAD + prose.toString().replaceAll("(.{60}\\S*) ", "$1\n") + "\n" + FOOT;
    }

    /** A paragraph for each eight. */
    private static String counted() {
        StringBuilder prose = new StringBuilder();
        for (Eight eight : EIGHTS) {
            StringBuilder paragraph = new StringBuilder();
            eight.groups()
                    .forEach(group -> paragraph
                            .append(capital(group.figure()))
                            .append(" for counts ")
                            .append(group.counts().replace("-", " to "))
                            .append(". "));
            prose.append(paragraph.toString().replaceAll("(.{60}\\S*) ", "$1\n"))
                    .append("\n\n");
        }
        return HEAD + prose + FOOT;
    }

    private static String columns() {
        StringBuilder text = new StringBuilder(HEAD);
        for (int row = 0; row < 2; row++) {
            Eight left = EIGHTS.get(row);
            Eight right = EIGHTS.get(row + 2);
            text.append(String.format(
                    "%-75s%s%n", "S" + (row + 1) + ": " + left.heading(), "S" + (row + 3) + ": " + right.heading()));
            for (int i = 0; i < 4; i++) {
                text.append(String.format("%-75s%s%n", side(left, i), side(right, i)));
            }
            text.append("\n");
        }
        return text.append(FOOT).toString();
    }

    private static String side(Eight eight, int index) {
        return index < eight.groups().size()
                ? eight.groups().get(index).counts() + "  "
                        + eight.groups().get(index).steps()
                : "";
    }
}
