package cuelead.sheet;

import cuelead.english.NumberWords;
import cuelead.sheet.Token.Kind;
import java.util.ArrayList;
import java.util.List;

/** Numbers that a sheet spells out: "thirty-two counts and four walls". */
final class SpelledNumbers {
    private static final int TWENTY = 20;
    private static final int TEN = 10;

    private SpelledNumbers() {}

    /** The same tokens, numbers in words as numbers in figures. */
    static List<Token> asNumbers(List<Token> tokens) {
        List<Token> numbers = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            int value = value(tokens, i);
            int unit = value(tokens, i + 1);
            boolean both = value >= TWENTY && unit > 0 && unit < TEN;
            numbers.add(
                    value == 0
                            ? token
                            : new Token(Kind.NUMBER, String.valueOf(both ? value + unit : value), token.column()));
            i += both ? 1 : 0;
        }
        return numbers;
    }

    /** 0 where no word for a number stands. */
    private static int value(List<Token> tokens, int at) {
        boolean word = at < tokens.size() && tokens.get(at).is(Kind.WORD);
        return word ? NumberWords.value(tokens.get(at).text()).orElse(0) : 0;
    }
}
