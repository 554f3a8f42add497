package cuelead.sheet;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Degrees as parts of a turn, or as the diagonal: "turn 90 degrees L", "step R 45 fwd", "heel out at 45°". */
final class Degrees {
    private static final Map<String, String> PARTS =
            Map.of("45", "1/8", "90", "1/4", "135", "3/8", "180", "1/2", "270", "3/4", "360", "full");
    private static final String SIGN = "\\s*(?:\u00b0|\u00ba|deg(?:ree)?s?\\b\\.?)";
    /** Without its sign a number is one behind "turn", and 45 also behind a word, before a way to go or the end of what is danced. */
    private static final Pattern TOLD = Pattern.compile(
            "(turn(?:ing|s)?\\s+(?:[rl]\\s+|right\\s+|left\\s+)?)?((?:(?:at|on|to)\\s+)?(?:an?\\s+)?)\\b(?:"
                    + "(45|90|135|180|270|360)" + SIGN
                    + "|(?<=\\bturn(?:ing|s)?\\s(?:(?:r|l|right|left)\\s)?)(90|135|180|270|360)"
                    + "(?=\\s+(?:r|l|right|left|to|over|step(?:ping)?)\\b|\\s*[,;.)]|\\s*$)"
                    + "|(?<=[a-z] )(45)(?=\\s+(?:fwd|forward|back|r|l|right|left|angle)\\b|\\s*[,;)]|\\s*$))"
                    + "(?:\\s+angle)?",
            Pattern.CASE_INSENSITIVE);

    private static final Set<String> NUMBERS = PARTS.keySet();

    private Degrees() {}

    /** The same lines in parts of a turn. */
    static List<SheetLine> asParts(List<SheetLine> lines) {
        return lines.stream().map(Degrees::asParts).toList();
    }

    private static SheetLine asParts(SheetLine line) {
        SheetLine told = line;
        Matcher degrees = TOLD.matcher(line.text());
        int from = 0;
        while (mayTell(told.text()) && degrees.find(from)) {
            String number = Stream.of(degrees.group(3), degrees.group(4), degrees.group(5))
                    .filter(Objects::nonNull)
                    .findFirst()
                    .orElseThrow();
            boolean turn = degrees.group(1) != null || !number.equals("45");
            String words = turn ? PARTS.get(number) : "diag";
            int begin = turn ? degrees.start(2) + degrees.group(2).length() : degrees.start();
            from = begin + words.length();
            told = told.with(begin, degrees.end(), words);
            degrees = TOLD.matcher(told.text());
        }
        return told;
    }

    private static boolean mayTell(String text) {
        return NUMBERS.stream().anyMatch(text::contains);
    }
}
