package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Credits that share their line with facts: "by Jory Penwarden - 40 counts - 4 walls", "A 32 count dance by R. Tickell.
 * Music: ...". What is said of the music or of who made the dance reaches to the next fact.
 */
final class CreditsWithin {
    private static final Pattern BEGIN = Pattern.compile(
            "\\b(?:(?:(?:choreo(?:graph\\w*)?|devised|written|invented|created|composed|arranged|taught|made(?: up)?"
                    + "|put together)\\s+)?by\\b|choreo(?:graph\\w*)?\\s*:|(?:music|song|track|artist)\\s*:)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern END = Pattern.compile(
            "\\s[-\u2013\u2014]{1,2}\\s|\\s[/|\u2022\u00b7]|[|;)]|(?<=\\p{L}{3})\\.(?:\\s|$)|\\s{3,}|\\t|$");

    /** ""Ten Pennies" by": the band, not who made the dance. */
    private static final Pattern BEHIND_TITLE = Pattern.compile("[\"\u201d]\\s*$");

    private static final Pattern LEADING = Pattern.compile("^[\\s/|;,.)\u2013\u2014-]+");

    private CreditsWithin() {}

    /** In the order of the line. */
    static List<String> in(String text) {
        List<String> credits = new ArrayList<>();
        Matcher begin = BEGIN.matcher(text);
        int from = 0;
        while (begin.find(from)) {
            boolean isOfSong =
                    BEHIND_TITLE.matcher(text.substring(from, begin.start())).find();
            int start = isOfSong ? from : begin.start();
            from = end(text, begin.end());
            String credit = withoutFacts(text.substring(start, from));
            if (credit.length() > begin.end() - begin.start()) {
                credits.add(credit);
            }
        }
        return credits;
    }

    /** A bracket that is opened in a credit is closed in it. */
    private static int end(String text, int from) {
        Matcher end = END.matcher(text);
        int at = from;
        while (end.find(at)) {
            boolean isClosed =
                    end.group().equals(")") && text.substring(from, end.start()).contains("(");
            if (!isClosed) {
                return end.start();
            }
            at = end.end();
        }
        return text.length();
    }

    /** Up to the first comma that a fact stands behind; a bracket that is left open is closed. */
    private static String withoutFacts(String credit) {
        int end = credit.length();
        for (int comma = credit.indexOf(','); comma >= 0; comma = credit.indexOf(',', comma + 1)) {
            int next = credit.indexOf(',', comma + 1);
            String piece = credit.substring(comma + 1, next < 0 ? credit.length() : next);
            if (HeaderFacts.isFact(new SheetLine(1, piece))) {
                end = comma;
                break;
            }
        }
        String words =
                LEADING.matcher(credit.substring(0, end)).replaceFirst("").strip();
        return words.lastIndexOf('(') > words.lastIndexOf(')') ? words + ")" : words;
    }
}
