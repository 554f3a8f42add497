package cuelead.sheet;

import cuelead.sheet.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Numbers that a header spells out: "thirty-two counts and four walls". */
final class NumberWords {
    private static final Map<String, Integer> UNITS = Map.of(
            "one", 1, "two", 2, "three", 3, "four", 4, "five", 5, "six", 6, "seven", 7, "eight", 8, "nine", 9, "ten",
            10);
    private static final Map<String, Integer> LONGER = Map.of(
            "twelve", 12, "sixteen", 16, "twenty", 20, "thirty", 30, "forty", 40, "fifty", 50, "sixty", 60, "seventy",
            70, "eighty", 80, "ninety", 90);

    private NumberWords() {}

    /** The same tokens, numbers in words as numbers in figures. */
    static List<Token> asNumbers(List<Token> tokens) {
        List<Token> numbers = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            int tens = token.is(Kind.WORD) ? LONGER.getOrDefault(token.text(), 0) : 0;
            int unit = token.is(Kind.WORD) ? UNITS.getOrDefault(token.text(), 0) : 0;
            boolean both = tens >= 20
                    && i + 1 < tokens.size()
                    && UNITS.containsKey(tokens.get(i + 1).text());
            if (both) {
                i++;
                unit = UNITS.get(tokens.get(i).text());
            }
            numbers.add(tens + unit == 0 ? token : new Token(Kind.NUMBER, String.valueOf(tens + unit), token.column()));
        }
        return numbers;
    }
}
