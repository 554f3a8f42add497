package cuelead.sheet;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The name of the dance in the first line of a header. */
final class HeaderTitle {
    private HeaderTitle() {}

    /** Where facts stand behind the title: in brackets, or from "4-wall" or "32 counts" on; -1 where none do. */
    static int factsFrom(String title) {
        Matcher facts = TITLE_FACTS.matcher(title);
        int bracket = title.indexOf('(');
        int found = facts.find() && facts.start() > 0 ? facts.start() : -1;
        return found < 0 || (bracket >= 0 && bracket < found) ? bracket : found;
    }

    private static final Pattern TITLE_FACTS =
            Pattern.compile("\\b\\d{1,3}[- ]?(walls?|counts?|cts?|[cw](?=\\s*[/|,;.]))\\b", Pattern.CASE_INSENSITIVE);

    static String of(String text) {
        String title = text.strip();
        if (title.toLowerCase(Locale.ROOT).startsWith("title:")) {
            title = title.substring("title:".length()).strip();
        }
        Matcher quoted = QUOTED.matcher(title);
        if (quoted.find()) {
            return quoted.group(1).strip();
        }
        int bracket = factsFrom(title);
        String words = bracket > 0 ? title.substring(0, bracket) : title;
        return together(words.strip())
                .replaceAll("\\s+", " ")
                .replaceAll("( [-\u2013] an?|\\s+[-\u2013:,|/]+)$", "")
                .replaceAll("^[\\s~*_\u00ab\u00bb\u201c\u201d\"]+|[\\s~*_\u00ab\u00bb\u201c\u201d\"]+$", "");
    }

    /** "Teaching script - "Harvest Mouse"": what stands before it says only what sort of sheet it is. */
    private static final Pattern QUOTED = Pattern.compile(
            "^[^\"\u201c\u201d(]*\\b(?:script|sheet|steps|notes|dance|routine|walkthrough|tutorial)\\b[^\"\u201c\u201d(\\w]*"
                    + "[\"\u201c]\\s*([^\"\u201d]{2,60})[\"\u201d]",
            Pattern.CASE_INSENSITIVE);

    /** "M I L L   P O N D": letters set apart are words. */
    private static String together(String words) {
        boolean apart = words.matches("\\S( \\S)+(\\s{2,}\\S( \\S)*)*") && words.length() >= SHORTEST_APART;
        return apart ? words.replaceAll("(?<=\\S) (?=\\S)", "") : words;
    }

    private static final int SHORTEST_APART = 7;
}
