package cuelead.english;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Numbers as a caller says them, and as a sheet spells them. */
public final class NumberWords {
    private static final List<String> SMALL = List.of(
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    private static final List<String> TENS =
            List.of("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");
    private static final List<String> ORDINALS = List.of(
            "first",
            "second",
            "third",
            "fourth",
            "fifth",
            "sixth",
            "seventh",
            "eighth",
            "ninth",
            "tenth",
            "eleventh",
            "twelfth");
    private static final int LONGEST_NUMBER = 4;

    private NumberWords() {}

    /** "32" is "thirty two"; numbers of more than four digits are said digit by digit. */
    public static String cardinal(String digits) {
        if (digits.length() <= LONGEST_NUMBER) {
            return cardinal(Integer.parseInt(digits));
        }
        StringBuilder spelled = new StringBuilder();
        for (int i = 0; i < digits.length(); i++) {
            spelled.append(SMALL.get(digits.charAt(i) - '0')).append(' ');
        }
        return spelled.toString().strip();
    }

    /**
     * "120" is "one hundred twenty".
     *
     * @param number 0 to 9999
     */
    public static String cardinal(int number) {
        if (number < 0 || number > 9999) {
            throw new IllegalArgumentException("outside 0 to 9999: " + number);
        }
        if (number < SMALL.size()) {
            return SMALL.get(number);
        }
        if (number < 100) {
            return with(TENS.get(number / 10), number % 10);
        }
        if (number < 1000) {
            return with(SMALL.get(number / 100) + " hundred", number % 100);
        }
        return with(SMALL.get(number / 1000) + " thousand", number % 1000);
    }

    /** "one", "two" ... up to this number, in their order. */
    public static List<String> fromOneTo(int highest) {
        return IntStream.rangeClosed(1, highest).mapToObj(NumberWords::cardinal).toList();
    }

    /** "seven" is 7, "thirty" is 30, "sixteen" is 16; empty for any other word, and for "zero", which counts nothing. */
    public static OptionalInt value(String word) {
        int tens = word.isEmpty() ? 0 : Math.max(0, TENS.indexOf(word)) * 10;
        int value = tens + Math.max(0, SMALL.indexOf(word));
        return value == 0 ? OptionalInt.empty() : OptionalInt.of(value);
    }

    /** "2" is "second"; beyond "twelfth" the plain number is clearer when called. */
    public static String ordinal(String digits) {
        int number = digits.length() <= LONGEST_NUMBER ? Integer.parseInt(digits) : 0;
        return number >= 1 && number <= ORDINALS.size() ? ORDINALS.get(number - 1) : cardinal(digits);
    }

    /** "3:00" is "three o'clock", "10:30" is "ten thirty". */
    public static String clock(int hour, int minute) {
        if (minute == 0) {
            return cardinal(hour) + " o'clock";
        }
        return cardinal(hour) + (minute < 10 ? " oh " : " ") + cardinal(minute);
    }

    /** A part of a turn: "quarter", "three quarter", "three eighths". */
    public static String fraction(String over, String under) {
        String part =
                switch (under) {
                    case "2" -> "half";
                    case "4" -> "quarter";
                    default -> ordinal(under);
                };
        if (over.equals("1")) {
            return part;
        }
        boolean plural = !under.equals("2") && !under.equals("4");
        return cardinal(over) + " " + part + (plural ? "s" : "");
    }

    private static String with(String head, int rest) {
        return rest == 0 ? head : head + " " + cardinal(rest);
    }
}
