package cuelead.sheet;

import cuelead.dance.EndingClaim;
import cuelead.dance.Facing;
import cuelead.dance.Turn;
import cuelead.sheet.Term.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Reads where a line about the ending says that the dancers face: as the last wall begins ("on the 3 o'clock wall"), where
 * they stop, and behind the turn that finishes. Where it is not told how far they turn between two facings, or the steps
 * are changed, nothing is claimed.
 */
final class EndingReader {
    private static final Set<String> CHANGES = Set.of("replace", "instead", "change", "omit", "substitute", "modify");
    private static final Set<String> TURNING = Set.of("pivot", "spin", "unwind", "monterey", "paddle", "spiral");
    private static final int REACH = 3;

    private final SheetLine line;
    private final List<Token> tokens;
    private final WallNote note;
    private final OptionalInt place;

    private EndingReader(SheetLine line, List<Integer> starts) {
        this.line = line;
        tokens = line.tokens();
        note = WallNote.read(tokens);
        place = note.place(starts);
    }

    /** What it claims, in its order; {@code starts}: counts before section 1, 2, 3 ... */
    static List<EndingClaim> claims(SheetLine line, List<Integer> starts) {
        boolean changed =
                line.tokens().stream().anyMatch(token -> token.is(Token.Kind.WORD) && CHANGES.contains(token.text()));
        return changed ? List.of() : new EndingReader(line, starts).claims();
    }

    private List<EndingClaim> claims() {
        List<EndingClaim> claims = new ArrayList<>();
        Optional<Facing> from = Optional.empty();
        boolean danced = false;
        int read = 0;
        for (SaidFacing said : SaidFacing.in(tokens)) {
            Optional<Turn> turn = turn(tokens.subList(read, said.index()));
            boolean begins = !danced && from.isEmpty() && beginsWall(said);
            if (!begins && turn.isPresent()) {
                claim(said, from, danced, turn.get()).ifPresent(claims::add);
            }
            danced |= !begins;
            from = Optional.of(said.facing());
            read = said.index() + 1;
        }
        return claims;
    }

    /** Behind a facing only turns are told; before the first one the wall is danced up to its last count. */
    private Optional<EndingClaim> claim(SaidFacing said, Optional<Facing> from, boolean danced, Turn turn) {
        Facing stated = said.facing();
        int at = said.index();
        if (from.isPresent()) {
            OptionalInt counts = danced ? OptionalInt.of(0) : place;
            boolean told = counts.isPresent() && !(danced && turn.isNone());
            return told
                    ? Optional.of(new EndingClaim(stated, from, OptionalInt.empty(), counts, turn, line.number()))
                    : Optional.empty();
        }
        OptionalInt wall = note.firstWall();
        boolean told = place.isPresent() ? wall.isPresent() : turn.isNone() && !stopsWithin(at);
        return told
                ? Optional.of(new EndingClaim(stated, Optional.empty(), wall, place, turn, line.number()))
                : Optional.empty();
    }

    /** "You are at the front after the pivots": somewhere within the wall. */
    private boolean stopsWithin(int behind) {
        return tokens.stream().skip(behind).anyMatch(token -> token.is(Token.Kind.WORD) && UNTIL.contains(token.text()))
                || !DanceLine.movesNothing(words(tokens.subList(0, behind)));
    }

    private static String words(List<Token> tokens) {
        return String.join(" ", tokens.stream().map(Token::text).toList());
    }

    private static final Set<String> UNTIL = Set.of("after", "until", "till", "during", "halfway");

    /** "which starts at 6:00", "on the 3 o'clock wall", "when you begin at the back". */
    private boolean beginsWall(SaidFacing said) {
        boolean wall =
                said.index() + 1 < tokens.size() && tokens.get(said.index() + 1).isWord("wall");
        return said.when() == SaidFacing.When.AT_WALL_START || wall;
    }

    /** The sum of the turns that are told; empty where one has no amount or no side. */
    private static Optional<Turn> turn(List<Token> between) {
        List<Term> terms = Vocabulary.STANDARD.terms(own(between));
        Turn sum = Turn.NONE;
        boolean told = false;
        boolean turns = false;
        for (int i = 0; i < terms.size(); i++) {
            OptionalInt degrees = terms.get(i).is(Kind.FRACTION)
                    ? TermCursor.degrees(terms.get(i).meaning())
                    : OptionalInt.empty();
            turns |= terms.get(i).is(Kind.TURN) || TURNING.contains(terms.get(i).meaning());
            if (degrees.isPresent()) {
                int side = side(terms, i);
                if (side == 0 && degrees.getAsInt() % 180 != 0) {
                    return Optional.empty();
                }
                told = true;
                sum = sum.plus(new Turn(side < 0 ? -degrees.getAsInt() : degrees.getAsInt()));
            }
        }
        return turns && !told ? Optional.empty() : Optional.of(sum);
    }

    /** Without what only describes the last count: "up to count 22 (the half pivot)", "to count 5: the quarter R brings you". */
    private static List<Token> own(List<Token> between) {
        List<Token> own = new ArrayList<>();
        int depth = 0;
        for (Token token : between) {
            depth += token.is(Token.Kind.OPEN) ? 1 : 0;
            if (depth == 0) {
                own.add(token);
            }
            depth -= token.is(Token.Kind.CLOSE) && depth > 0 ? 1 : 0;
        }
        int end = 0;
        while (end < own.size() && !isToldOf(own, end)) {
            end++;
        }
        return own.subList(0, end);
    }

    /** "The quarter turn": one that is danced already. */
    private static boolean isToldOf(List<Token> tokens, int at) {
        return tokens.get(at).isWord("the")
                && at + 1 < tokens.size()
                && Vocabulary.STANDARD.terms(tokens.subList(at + 1, at + 2)).stream()
                        .anyMatch(term -> term.is(Kind.FRACTION));
    }

    /** 1 to the right, -1 to the left, 0 where the words beside the amount do not say it. */
    private static int side(List<Term> terms, int amount) {
        for (int i = amount + 1; i <= Math.min(terms.size() - 1, amount + REACH); i++) {
            if (terms.get(i).is(Kind.FOOT)) {
                return terms.get(i).meaning().equals("right") ? 1 : -1;
            }
        }
        boolean before = amount > 0 && terms.get(amount - 1).is(Kind.FOOT);
        return !before ? 0 : terms.get(amount - 1).meaning().equals("right") ? 1 : -1;
    }
}
