package cuelead.sheet;

import java.util.List;
import java.util.Set;

/** Whether a line tells how the dance ends: "Ending: ...", "Last time through ...", "Your final wall starts ...", "To finish ...". */
final class EndingWords {
    private static final Set<String> NAMES = Set.of("ending", "finish", "finale");
    private static final Set<String> LAST = Set.of("last", "final");
    private static final Set<String> ROUND =
            Set.of("wall", "time", "round", "rotation", "repetition", "pass", "sequence", "run", "go");
    private static final Set<String> MUSIC = Set.of("dance", "music", "song", "track", "tune");
    private static final Set<String> STOPS = Set.of("ends", "finishes", "fades", "closes");
    /** Words; what comes later belongs to something else. */
    private static final int NEAR = 7;

    private EndingWords() {}

    static boolean isTold(SheetLine line, String first, String second) {
        if (NAMES.contains(first)) {
            return true;
        }
        boolean toEnd = first.equals("to") && Set.of("end", "finish", "close").contains(second);
        List<Token> words = line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD))
                .limit(NEAR)
                .toList();
        boolean titled = words.stream().limit(NEAR / 2).anyMatch(word -> NAMES.contains(word.text()))
                && line.text().indexOf(':') > 0;
        return toEnd || titled || isPair(words, LAST, ROUND) || isPair(words, MUSIC, STOPS);
    }

    /** One of these directly before one of those. */
    private static boolean isPair(List<Token> words, Set<String> these, Set<String> those) {
        for (int i = 0; i + 1 < words.size(); i++) {
            if (these.contains(words.get(i).text())
                    && those.contains(words.get(i + 1).text())) {
                return true;
            }
        }
        return false;
    }
}
