package cuelead.sheet;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a chat or a mail program puts before every line: "[18:02] Deb: ", "26/11/2026, 18:02 - Deb: ", "> ". */
final class ChatStamps {
    private static final String NAME = "(?:[\\p{L}][\\p{L}. '-]{0,24}:\\s+)?";
    private static final String TIME = "\\d{1,2}[:.]\\d\\d(?:[:.]\\d\\d)?(?:\\s?[ap]\\.?m\\.?)?";
    private static final String DATE = "(?:\\d{1,4}[./-]\\d{1,2}[./-]\\d{1,4},?\\s+)?";
    private static final List<Pattern> KINDS = List.of(
            Pattern.compile("^\\s*[\\[(]" + DATE + TIME + "[\\])]\\s*(?:-\\s+)?" + NAME, Pattern.CASE_INSENSITIVE),
            Pattern.compile("^\\s*" + DATE + TIME + "\\s+-\\s+" + NAME, Pattern.CASE_INSENSITIVE),
            Pattern.compile(
                    "^\\s*[\\p{L}][\\p{L} ]{0,24}[\\[(]" + DATE + TIME + "[\\])]:?\\s+", Pattern.CASE_INSENSITIVE),
            Pattern.compile("^\\s*>+\\s*"));
    /** Lines that begin so, as it is no accident. */
    private static final int FEWEST = 4;

    private ChatStamps() {}

    /** The same lines without them, where most lines have one. */
    static List<SheetLine> left(List<SheetLine> lines) {
        long written = lines.stream().filter(line -> !line.isBlank()).count();
        for (Pattern kind : KINDS) {
            long stamped = lines.stream()
                    .filter(line -> kind.matcher(line.text()).find())
                    .count();
            if (stamped >= FEWEST && stamped * 2 > written) {
                return lines.stream().map(line -> left(line, kind)).toList();
            }
        }
        return lines;
    }

    private static SheetLine left(SheetLine line, Pattern kind) {
        Matcher stamp = kind.matcher(line.text());
        return stamp.find() ? line.with(0, stamp.end(), "") : line;
    }
}
