package cuelead.sheet;

import static cuelead.sheet.OneDance.capital;
import static cuelead.sheet.OneDance.sections;

import cuelead.sheet.OneDance.Eight;
import cuelead.sheet.OneDance.Group;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;

/** The one dance as people write it in letters, mails, chats and blogs (common practice, no source). */
final class LetterLayouts {
    private static final List<String> ORDINALS = List.of("First", "Second", "Third", "Fourth");

    private LetterLayouts() {}

    static void addTo(Map<String, String> all) {
        listed(all);
        opened(all);
        inOneSentence(all);
        chats(all);
        signs(all);
    }

    private static void line(Map<String, String> all, String name, Function<Group, String> line) {
        all.put("letter: " + name, sections(OneDance::numbered, g -> line.apply(g) + "\n"));
    }

    /** "5, 6 and 7" */
    private static String list(Group group, Function<String, String> number) {
        if (group.isSplit()) {
            return number.apply("" + group.first()) + " and " + number.apply("" + group.last());
        }
        StringBuilder list = new StringBuilder();
        for (int count = group.first(); count <= group.last(); count++) {
            list.append(count == group.first() ? "" : count == group.last() ? " and " : ", ")
                    .append(number.apply("" + count));
        }
        return list.toString();
    }

    private static String digits(Group group) {
        return list(group, digit -> digit);
    }

    private static void listed(Map<String, String> all) {
        line(all, "counts 1 and 2", g -> "Counts " + digits(g) + ", " + g.steps());
        line(all, "counts 1 and 2 with a colon", g -> "Counts " + digits(g) + ": " + g.steps());
        line(all, "beats 1 and 2", g -> "Beats " + digits(g) + " - " + g.steps());
        line(all, "1 and 2", g -> digits(g) + " " + g.steps());
        line(all, "1 and 2 with a colon", g -> digits(g) + ": " + g.steps());
        line(all, "counts one and two", g -> "Counts " + list(g, OneDance::word) + ", " + g.steps());
        line(all, "on one and two", g -> "On " + list(g, OneDance::word) + " " + g.steps());
        line(all, "brackets with and", g -> g.steps() + " (counts " + digits(g) + ")");
    }

    private static void opened(Map<String, String> all) {
        line(all, "on", g -> "On " + digits(g) + " " + g.steps());
        line(all, "then on", g -> "Then on " + digits(g) + " " + g.steps());
        line(all, "and on counts", g -> "And on counts " + digits(g) + ", " + g.steps());
        line(all, "next, counts", g -> "Next, counts " + digits(g) + ": " + g.steps());
        line(all, "steps", g -> "Steps " + digits(g) + ": " + g.steps());
        line(all, "for counts", g -> "For counts " + g.counts() + ", " + g.steps());
        line(all, "then for", g -> "Then for " + digits(g) + ", " + g.steps());
        line(all, "on counts and a range", g -> "On counts " + g.counts() + " you " + g.steps());
    }

    private static void inOneSentence(Map<String, String> all) {
        paragraph(all, "on counts", g -> "On counts " + digits(g) + " " + g.steps() + ". ");
        paragraph(all, "on", g -> "On " + g.counts() + " " + g.steps() + ". ");
        paragraph(all, "counts with a colon", g -> "Counts " + g.counts() + ": " + g.steps() + ". ");
        paragraph(all, "then on counts", g -> "Then on counts " + g.counts() + " " + g.steps() + ". ");
        paragraph(all, "counts in words", g -> "On counts " + list(g, OneDance::word) + " " + g.steps() + ". ");
    }

    /** A section on one line, its number in words. */
    private static void paragraph(Map<String, String> all, String name, Function<Group, String> sentence) {
        BiFunction<Eight, Integer, String> section =
                (e, n) -> "Section " + OneDance.word("" + (n + 1)) + ": " + sentences(e, sentence) + "\n";
        all.put("letter: section one, " + name, sections(section, g -> ""));
        BiFunction<Eight, Integer, String> eight =
                (e, n) -> ORDINALS.get(n) + " eight: " + sentences(e, sentence) + "\n";
        all.put("letter: first eight, " + name, sections(eight, g -> ""));
    }

    private static String sentences(Eight eight, Function<Group, String> sentence) {
        StringBuilder sentences = new StringBuilder();
        eight.groups().forEach(group -> sentences.append(sentence.apply(group)));
        return sentences.toString();
    }

    private static void chats(Map<String, String> all) {
        String plain = sections(OneDance::numbered, g -> g.counts() + " " + g.steps() + "\n");
        all.put("chat: time in brackets", stamped(plain, "[18:02] Quill: "));
        all.put("chat: date and time", stamped(plain, "26/11/2026, 18:02 - Quill Underhay: "));
        all.put("chat: date in brackets", stamped(plain, "[26.11.2026, 18:02:41] Quill: "));
        all.put("chat: name before the time", stamped(plain, "Quill (18:02): "));
        all.put("chat: half a day", stamped(plain, "[6:02 pm] Quill: "));
        all.put("chat: quoted mail", stamped(plain, "> "));
    }

    private static String stamped(String sheet, String stamp) {
        return sheet.replaceAll("(?m)^(?=.)", stamp.replace("$", ""));
    }

    private static void signs(Map<String, String> all) {
        line(all, "bold", g -> "- **" + g.counts() + "** " + g.steps());
        line(all, "bold with a colon", g -> "* **" + g.counts() + ":** " + g.steps());
        line(all, "underlined", g -> "__" + g.counts() + "__ " + g.steps());
        line(all, "all bold", g -> "**" + g.counts() + " " + g.steps() + "**");
        line(all, "a hand", g -> "\ud83d\udc49 " + g.counts() + " " + g.steps());
        line(all, "a star and shoes", g -> "\u2b50 " + g.counts() + " " + g.steps() + " \ud83d\udc62");
        line(all, "keys", g -> g.counts().replaceAll("(\\d)", "$1\ufe0f\u20e3") + " " + g.steps());
        line(all, "an arrow", g -> g.counts() + " \u27a1\ufe0f " + g.steps());
        line(all, "circles", g -> circled(g.counts()) + " " + g.steps());
        heading(all, "heading signs", (e, n) -> "## Section " + (n + 1) + ": " + e.heading() + "\n");
        heading(all, "bold heading", (e, n) -> "**" + e.heading() + "**\n");
        heading(all, "pictures around", (e, n) -> "\u2728 Section " + (n + 1) + " \u2728\n");
        heading(all, "capital heading", (e, n) -> capital(e.heading().toLowerCase(Locale.ROOT)) + " \ud83d\udd7a\n");
    }

    private static void heading(Map<String, String> all, String name, BiFunction<Eight, Integer, String> heading) {
        all.put("letter: " + name, sections(heading, g -> g.counts() + " " + g.steps() + "\n"));
    }

    private static String circled(String counts) {
        StringBuilder circled = new StringBuilder();
        for (int i = 0; i < counts.length(); i++) {
            char c = counts.charAt(i);
            circled.append(c >= '1' && c <= '9' ? (char) ('\u2460' + c - '1') : c);
        }
        return circled.toString();
    }
}
