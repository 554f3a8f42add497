package cuelead.plan;

/** Numbers as they are said. */
final class NumberWords {
    private static final String[] SMALL = {
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
        "nineteen"
    };
    private static final String[] TENS = {
        "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"
    };

    private NumberWords() {}

    /** @param number 0 or more; from 100 on in digits' groups, "one hundred twenty" */
    static String of(int number) {
        if (number < 0) {
            throw new IllegalArgumentException("below zero: " + number);
        }
        if (number < SMALL.length) {
            return SMALL[number];
        }
        if (number < 100) {
            String ones = number % 10 == 0 ? "" : " " + SMALL[number % 10];
            return TENS[number / 10] + ones;
        }
        String rest = number % 100 == 0 ? "" : " " + of(number % 100);
        return of(number / 100) + " hundred" + rest;
    }
}
