package cuelead.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Other words for the parts of a phrased dance and their order: "The dance goes A, A, B", "Seq.: A x2, B" become
 * "Sequence: ..."; "A-Part", "Phrase A", "First part (A)" become "Part A".
 */
final class PhrasedWords {
    private static final String TIMES = "(?:\\s*\\(?\\s*(?:x\\s?[2-6]|[2-6]\\s?x|(?i:twice))\\s*\\)?)";
    private static final String PART =
            "(?:(?:[2-6]\\s?x\\s?)?(?:[A-F]{1,4}[*'+-]?|(?i:tag\\s?\\d?|bridge|intro|ending))" + TIMES + "?)";
    private static final String JOINT = "(?:\\s*(?:[,;/&+>.-]|\\b(?i:and|then)\\b|\\s)\\s*)+";
    private static final String ORDER_AND_PARTS = "(?i:(?:the|this|running|dance|dancing|parts?|phrases?|song)\\s+)*"
            + "(?i:goes|sequence|seq|routine|order|structure|pattern|phrasing|format|plan|parts|in this order|is danced)\\b\\.?"
            + "(?i:\\s+(?:of|the|dance|parts|phrases|like|this|as|follows|is|in|order))*\\s*[:=.,-]*\\s*"
            + "(?=" + PART + "(?:" + JOINT + PART + "){2,}\\W*$)";
    private static final Pattern ORDER = Pattern.compile("^\\W*" + ORDER_AND_PARTS);
    /** The same behind other facts of a header. */
    private static final Pattern FURTHER_ORDER =
            Pattern.compile("(?:(?<=[.;,/-]\\s{1,9}|[.;,/])|(?<=\\s)(?=\\w+\\s*:))" + ORDER_AND_PARTS);

    private static final Pattern BEHIND =
            Pattern.compile("\\b([A-F])\\s*\\(?\\s*(?:x\\s?([2-6])|([2-6])\\s?x|(?i:(twice)))\\s*\\)?");
    private static final Pattern BEFORE = Pattern.compile("\\b([2-6])\\s?x\\s?([A-F])\\b");
    private static final Pattern HEAD =
            Pattern.compile("^\\W*(?:([A-F])[- ](?i:part)\\b|(?i:phrase|block|routine|group)\\s+([A-F])\\b"
                    + "|(?i:(?:first|second|third|fourth|1st|2nd|3rd|4th)\\s+part)\\s*[(:-]*\\s*([A-F])\\b\\)?)");

    private PhrasedWords() {}

    /** The same lines in the usual words. */
    static List<SheetLine> usual(List<SheetLine> lines) {
        Set<String> parts = new HashSet<>();
        lines.forEach(line -> parts.add(part(HEAD.matcher(line.text()))));
        parts.remove("");
        List<SheetLine> usual = new ArrayList<>();
        for (SheetLine line : lines) {
            Matcher head = HEAD.matcher(line.text());
            String part = parts.size() > 1 ? part(head) : "";
            if (part.isEmpty()) {
                parted(line).forEach(piece -> usual.add(ordered(piece)));
            } else {
                usual.add(line.with(0, head.end(), "Part " + part));
            }
        }
        return usual;
    }

    /** "Phrased, 2 walls. Sequence: A A B" is two lines. */
    private static List<SheetLine> parted(SheetLine line) {
        Matcher order = FURTHER_ORDER.matcher(line.text());
        return mayEndWithPart(line.text()) && order.find()
                ? List.of(
                        line.part(0, order.start()),
                        line.part(order.start(), line.text().length()))
                : List.of(line);
    }

    /** Whether the last word may be a part, or how often it is danced; most lines are not worth the whole pattern. */
    private static boolean mayEndWithPart(String text) {
        int end = text.length();
        while (end > 0 && !isWord(text.charAt(end - 1))) {
            end--;
        }
        int from = end;
        while (from > 0 && isWord(text.charAt(from - 1))) {
            from--;
        }
        String last = text.substring(from, end);
        return !last.isEmpty()
                && ("ABCDEF0123456789xX".indexOf(last.charAt(last.length() - 1)) >= 0
                        || NAMES.contains(last.toLowerCase(Locale.ROOT)));
    }

    private static final Set<String> NAMES = Set.of("tag", "bridge", "intro", "ending", "twice");

    /** As {@code \\w} has it. */
    private static boolean isWord(char c) {
        return c == '_' || Scanner.isDigit(c) || (c < 128 && Character.isLetter(c));
    }

    private static String part(Matcher head) {
        if (!head.find()) {
            return "";
        }
        for (int group = 1; group <= head.groupCount(); group++) {
            if (head.group(group) != null) {
                return head.group(group);
            }
        }
        return "";
    }

    private static SheetLine ordered(SheetLine line) {
        Matcher order = ORDER.matcher(line.text());
        boolean told = order.find();
        return told ? repeated(line.with(0, order.end(), "Sequence: ")) : line;
    }

    /** "A x2", "A (twice)", "2 x A": written out. */
    static SheetLine repeated(SheetLine line) {
        SheetLine written = line;
        Matcher behind = BEHIND.matcher(written.text());
        while (behind.find()) {
            String digits = behind.group(2) != null ? behind.group(2) : behind.group(3);
            int times = digits == null ? 2 : Integer.parseInt(digits);
            written = written.with(behind.start(), behind.end(), times(behind.group(1), times));
            behind = BEHIND.matcher(written.text());
        }
        Matcher before = BEFORE.matcher(written.text());
        while (before.find()) {
            String all = times(before.group(2), Integer.parseInt(before.group(1)));
            written = written.with(before.start(), before.end(), all);
            before = BEFORE.matcher(written.text());
        }
        return written;
    }

    private static String times(String part, int times) {
        return String.join(", ", Collections.nCopies(times, part));
    }
}
