package cuelead.sheet;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences behind the steps that offer another way to dance them: they are no steps themselves. */
final class Easier {
    private static final Set<String> OFFERS = Set.of(
            "if",
            "or",
            "easiest",
            "simple",
            "simpler",
            "non",
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
    static boolean isTold(String told) {
        String rest = withoutBrackets(told);
        int offer = begin(rest, 0);
        boolean offered = offer < rest.length() || !rest.equals(told);
        return offered && DanceLine.movesNoFoot(rest.substring(0, offer));
    }

    /** Without the brackets that hold nothing but an offer: "... still 3:00 (easy: walk R, L)". */
    private static String withoutBrackets(String told) {
        return BRACKETS.matcher(told)
                .replaceAll(found -> offers(found.group(1), 0) ? "" : Matcher.quoteReplacement(found.group()));
    }

    private static final Pattern BRACKETS = Pattern.compile("[(\\[{*]([^()\\[\\]{}*]*)[)\\]}*]");

    /** 0-based index where the first such sentence begins, from an index on; the length of the text without one. */
    static int begin(String text, int from) {
        Matcher ends = END.matcher(text).region(from, text.length());
        int start = from;
        boolean more = true;
        while (more) {
            if (offers(text, start)) {
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

    /** Whether a clause that begins with this word offers another way, or tells how the steps look. */
    static boolean begins(String word) {
        return OFFERS.contains(word);
    }

    private static boolean offers(String text, int from) {
        return Scanner.firstWord(text, from).filter(OFFERS::contains).isPresent();
    }
}
