package cuelead.lesson;

import cuelead.english.NumberWords;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A number in digits, or in words up to ninety nine. */
final class SpelledNumber {
    private static final List<String> WORDS = NumberWords.fromOneTo(99);

    /** Finds one; the longest words first, so that "twenty one" is not "twenty". */
    static final String PATTERN = "(?:\\d{1,4}(?:\\.\\d{1,20})?|"
            + WORDS.stream()
                    .sorted(Comparator.comparing(String::length).reversed())
                    .map(word -> word.replace(" ", "[\\s-]+"))
                    .collect(Collectors.joining("|"))
            + ")";

    private SpelledNumber() {}

    /** @param text which {@link #PATTERN} has found */
    static BigDecimal value(String text) {
        return new BigDecimal(inDigits(text));
    }

    /** A number in words as digits; any other text as it is. */
    static String inDigits(String text) {
        int spelled = WORDS.indexOf(text.toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", " "));
        return spelled < 0 ? text : Integer.toString(spelled + 1);
    }
}
