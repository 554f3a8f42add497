package cuelead.sheet;

import cuelead.dance.Facing;
import cuelead.sheet.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A way that a sentence says the dancers face: "(6:00)", "facing the back", "on the 3 o'clock wall".
 *
 * @param facing the way
 * @param when   whether they begin a wall so, or face so at the place that the sentence is about
 * @param index  0-based index of its token
 * @param column 1-based column
 */
record SaidFacing(Facing facing, When when, int index, int column) {
    /** Which moment a facing is told of. */
    enum When {
        AT_WALL_START,
        HERE
    }

    private static final int REACH = 3;
    private static final Set<String> FACE = Set.of("face", "faces", "facing", "faced", "to", "at", "towards", "toward");
    private static final Set<String> SMALL = Set.of("the", "to", "your", "our", "now", "be", "at", "towards", "toward");
    private static final Set<String> BEGIN = Set.of(
            "start",
            "starts",
            "starting",
            "started",
            "begin",
            "begins",
            "beginning",
            "began",
            "commence",
            "commences",
            "commencing",
            "opens");
    private static final Set<String> AGAIN = Set.of("again", "over", "anew", "from", "dance");
    private static final Set<String> NOT_YET = Set.of("wall", "walls", "facing", "at", "on", "to", "the", "which");

    /** "Step forward (1) [9:00], side (2)": a facing behind counts belongs to what was danced on them. */
    static Optional<SaidFacing> before(SheetLine steps, int from) {
        boolean first =
                FIRST.matcher(steps.text()).region(from, steps.text().length()).lookingAt();
        return first ? in(steps.tokens()).stream().findFirst() : Optional.empty();
    }

    private static final Pattern FIRST = Pattern.compile("\\s*[\\[(]\\d{1,2}:\\d\\d[\\])]\\s*[,;.]");

    /** All that a sentence tells, in its order. */
    static List<SaidFacing> in(List<Token> tokens) {
        List<SaidFacing> said = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            Optional<Facing> facing = facing(tokens, i);
            if (facing.isPresent()) {
                When when = beginsWall(tokens, i) ? When.AT_WALL_START : When.HERE;
                said.add(new SaidFacing(facing.get(), when, i, tokens.get(i).column()));
            }
        }
        return said;
    }

    private static Optional<Facing> facing(List<Token> tokens, int at) {
        Token token = tokens.get(at);
        if (token.is(Kind.CLOCK)) {
            return Optional.of(Remark.facing(token.text()));
        }
        boolean front = token.isWord("front") || token.isWord("home");
        boolean wall = at + 1 < tokens.size() && tokens.get(at + 1).isWord("wall");
        if ((front || token.isWord("back")) && (wall || isFaced(tokens, at))) {
            return Optional.of(front ? Facing.FRONT : new Facing(180));
        }
        return Optional.empty();
    }

    /** "facing the front", "turn to the back": a word of facing with nothing but small words between. */
    private static boolean isFaced(List<Token> tokens, int at) {
        int before = at - 1;
        while (before >= 0 && isOneOf(tokens.get(before), SMALL) && !isOneOf(tokens.get(before), FACE)) {
            before--;
        }
        return before >= 0 && isOneOf(tokens.get(before), FACE);
    }

    /** "which starts facing 6:00", "starting at the back": not "start again facing 6:00". */
    private static boolean beginsWall(List<Token> tokens, int at) {
        for (int before = at - 1; before >= Math.max(0, at - REACH); before--) {
            Token token = tokens.get(before);
            if (isOneOf(token, BEGIN)) {
                return !isOneOf(tokens.get(before + 1), AGAIN);
            }
            if (!isOneOf(token, NOT_YET)) {
                return false;
            }
        }
        return false;
    }

    private static boolean isOneOf(Token token, Set<String> words) {
        return token.is(Kind.WORD) && words.contains(token.text());
    }
}
