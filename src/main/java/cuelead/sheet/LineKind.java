package cuelead.sheet;

import java.util.List;
import java.util.Set;

/** What a line of the sheet is, told from how it begins. */
enum LineKind {
    TAG,
    RESTART,
    SEQUENCE,
    ENDING,
    REPEAT,
    NOTE,
    SECTION,
    COUNTS,
    OTHER;

    private static final Set<String> REPEATS = Set.of("repeat", "enjoy", "begin", "again", "start");
    private static final Set<String> NOTES =
            Set.of("note", "notes", "option", "options", "styling", "style", "easy", "easier", "alternative", "clock");

    static LineKind of(SheetLine line) {
        return line.told().orElseGet(() -> byItsWords(line));
    }

    private static LineKind byItsWords(SheetLine line) {
        List<String> words = firstWords(line);
        String first = words.isEmpty() ? "" : words.get(0);
        String second = words.size() > 1 ? words.get(1) : "";
        String word = first.equals("then") ? second : first;
        if (word.equals("tag") || word.equals("bridge") || word.equals("tags")) {
            return TAG;
        }
        if (SequenceReader.isSequence(line)) {
            return SEQUENCE;
        }
        if (SectionHead.read(line.text()).isPresent()) {
            return SECTION;
        }
        if (CountGroup.read(line.text()).isPresent()) {
            return COUNTS;
        }
        if (addsCounts(line)) {
            return TAG;
        }
        if (saysRestart(line)) {
            return RESTART;
        }
        if (word.equals("ending") || word.equals("finish") || word.equals("finale")) {
            return ENDING;
        }
        if (REPEATS.contains(word) && RepeatCall.read(line.text(), 0).isEmpty()) {
            return REPEAT;
        }
        return NOTES.contains(word) || isBracketed(line) ? NOTE : OTHER;
    }

    /**
     * "Restart on wall 3 ...", "*** Restart", "On wall 3 dance up to count 16, then restart", "Wall 4: stop after section
     * 2 and begin again".
     */
    private static boolean saysRestart(SheetLine line) {
        List<Token> tokens = line.tokens();
        boolean word = tokens.stream()
                .anyMatch(token -> token.is(Token.Kind.WORD) && token.text().startsWith("restart"));
        return word || (WallNote.namesWall(tokens) && beginsAnew(tokens));
    }

    /** "start over", "begin again", "go back to the top", "start the dance from the beginning". */
    private static boolean beginsAnew(List<Token> tokens) {
        boolean leaves = tokens.stream().anyMatch(token -> isOneOf(token, LEAVES));
        for (int i = 0; i + 1 < tokens.size(); i++) {
            int behind = i + 1;
            while (behind + 1 < tokens.size() && isOneOf(tokens.get(behind), Set.of("the", "dance", "back", "to"))) {
                behind++;
            }
            if (isOneOf(tokens.get(i), BEGINS) && isOneOf(tokens.get(behind), ANEW)) {
                return leaves;
            }
        }
        return false;
    }

    private static final Set<String> LEAVES =
            Set.of("after", "dance", "stop", "only", "do", "omit", "leave", "skip", "cut", "at", "up", "through");
    private static final Set<String> BEGINS = Set.of("start", "begin", "go", "return", "back", "starting", "beginning");
    private static final Set<String> ANEW = Set.of("again", "over", "anew", "from", "top", "beginning", "start");
    private static final Set<String> EXTRA = Set.of("add", "adding", "extra", "additional", "insert");

    /** "After wall 6 add: ...", "4 extra counts at the end of wall 2": a tag that is not called one. */
    private static boolean addsCounts(SheetLine line) {
        List<Token> tokens = line.tokens();
        return WallNote.namesWall(tokens)
                && tokens.stream().anyMatch(token -> isOneOf(token, EXTRA))
                && tokens.stream().anyMatch(token -> isOneOf(token, Set.of("end", "after", "finish", "following")));
    }

    private static boolean isOneOf(Token token, Set<String> words) {
        return token.is(Token.Kind.WORD) && words.contains(token.text());
    }

    private static boolean isBracketed(SheetLine line) {
        char first = line.text().charAt(line.firstColumn() - 1);
        if (first == '(') {
            String text = line.text().strip();
            int close = text.indexOf(')');
            return close < 0 || close >= text.length() - 2;
        }
        return first == '*' || first == '#';
    }

    private static List<String> firstWords(SheetLine line) {
        return line.tokens().stream()
                .filter(token -> !token.is(Token.Kind.MARK) && !token.is(Token.Kind.OPEN))
                .limit(2)
                .map(Token::text)
                .toList();
    }
}
