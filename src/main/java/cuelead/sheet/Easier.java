package cuelead.sheet;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences behind the steps that offer another way to dance them: they are no steps themselves. */
final class Easier {
    private static final Set<String> OFFERS = Set.of(
            "if",
            "option",
            "options",
            "optional",
            "optionally",
            "alternatively",
            "alternative",
            "easy",
            "easier",
            "variation",
            "instead",
            "beginners",
            "styling",
            "tip",
            "note",
            "hint");

    private static final Set<String> NAMES =
            Set.of("option", "options", "optional", "alternative", "alternatively", "easier", "variation");
    private static final int FIRST_WORDS = 4;

    private static final Pattern END = Pattern.compile("[.!;]\\s+|\\s[-\u2013]\\s");

    private Easier() {}

    /** "(8), now at 6:00. If you don't like turning, do the rocking chair again": before the offer no foot is moved. */
    static boolean isTold(String rest) {
        int offer = begin(rest, 0);
        return offer < rest.length() && DanceLine.movesNoFoot(rest.substring(0, offer));
    }

    /** 0-based index where the first such sentence begins, from an index on; the length of the text without one. */
    static int begin(String text, int from) {
        Matcher ends = END.matcher(text).region(from, text.length());
        int start = from;
        boolean more = true;
        while (more) {
            if (offers(text.substring(start))) {
                return start;
            }
            more = ends.find();
            start = more ? ends.end() : start;
        }
        return text.length();
    }

    /** "Easy option: walk", "¹ volta: easy option - walk R, L, R", "Non-turning alternative for the pivots: rock R". */
    static boolean isOffer(SheetLine line) {
        return line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD))
                .limit(FIRST_WORDS)
                .anyMatch(token -> NAMES.contains(token.text()));
    }

    private static boolean offers(String sentence) {
        return Scanner.tokens(sentence).stream()
                .filter(token -> token.is(Token.Kind.WORD))
                .limit(1)
                .anyMatch(token -> OFFERS.contains(token.text()));
    }
}
