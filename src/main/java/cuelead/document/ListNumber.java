package cuelead.document;

import java.util.Locale;
import java.util.regex.Pattern;

/** The number of an item of a list. */
final class ListNumber {
    private static final Pattern OWN = Pattern.compile("^\\s*[\\d\\[(&#*].*", Pattern.DOTALL);
    private static final int LETTERS = 26;
    private static final int[] ROMAN_VALUES = {50, 40, 10, 9, 5, 4, 1};
    private static final String[] ROMAN = {"l", "xl", "x", "ix", "v", "iv", "i"};

    private ListNumber() {}

    /** Whether an item begins with a count or a mark, so that the list's number says nothing of the dance. */
    static boolean hasOwn(String item) {
        return OWN.matcher(item).matches();
    }

    /** @param format as Word and HTML name it, such as {@code lowerLetter} or {@code A}; digits for any other */
    static String written(int number, String format) {
        return switch (format == null ? "" : format) {
            case "lowerLetter", "a" -> letter(number);
            case "upperLetter", "A" -> letter(number).toUpperCase(Locale.ROOT);
            case "lowerRoman", "i" -> roman(number);
            case "upperRoman", "I" -> roman(number).toUpperCase(Locale.ROOT);
            default -> Integer.toString(number);
        };
    }

    private static String letter(int number) {
        return Character.toString('a' + Math.floorMod(number - 1, LETTERS));
    }

    private static String roman(int number) {
        StringBuilder written = new StringBuilder();
        int rest = number;
        for (int i = 0; i < ROMAN.length; i++) {
            while (rest >= ROMAN_VALUES[i]) {
                written.append(ROMAN[i]);
                rest -= ROMAN_VALUES[i];
            }
        }
        return written.toString();
    }
}
