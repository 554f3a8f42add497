package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.Term.Kind;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The words of a turn, in any order: "turn 1/4 right", "1/2 turn over left shoulder", "make a half turn to the L", "turn L
 * 1/4", "turning left 3/8".
 */
final class TurnWords {
    private final TermCursor terms;
    private final PhraseDraft draft;
    private final int column;
    private Optional<Foot> side = Optional.empty();
    private OptionalInt part = OptionalInt.empty();
    private int whole;

    TurnWords(TermCursor terms, PhraseDraft draft) {
        this.terms = terms;
        this.draft = draft;
        this.column = terms.peek().column();
    }

    /** Takes them and tells the draft. */
    void read() {
        if (terms.at(Kind.TURN, "paddle")) {
            draft.paddle();
        }
        while (next()) {
            // each word is one step
        }
        if (part.isPresent()) {
            draft.turn(whole * 360 + part.getAsInt(), side, column);
        } else if (draft.namesTurn()) {
            shoulder();
            side.or(terms::footHere).ifPresent(draft::turnSide);
        } else if (!draft.turns() && !terms.at(Kind.CLOCK) && !terms.at(Kind.ONTO)) {
            open();
        }
    }

    /** A turn without an amount. */
    private void open() {
        draft.openTurn(column);
        if (terms.at(Kind.FRACTION)) {
            draft.unknown(terms.peek());
            terms.advance();
        }
    }

    private boolean next() {
        if (terms.atEnd()) {
            return false;
        }
        return switch (terms.peek().kind()) {
            case TURN, MARK -> terms.advance();
            case FILLER -> filler();
            case NUMBER -> number();
            case FRACTION -> fraction();
            case PLACE -> shoulder();
            case FOOT -> side();
            case FIGURE_WORD -> spiral();
            default -> false;
        };
    }

    /** Behind the side, "to" begins something else: "turn 1/4 R to R side". */
    private boolean filler() {
        if (side.isPresent() && terms.peek().text().equals("to")) {
            return false;
        }
        return terms.advance();
    }

    /** "A full spiral turn L": how the feet lie while one turns. */
    private boolean spiral() {
        return terms.at(Kind.FIGURE_WORD, "spiral") && terms.advance();
    }

    private boolean number() {
        if (part.isPresent() || !terms.nextIs(Kind.FRACTION)) {
            return false;
        }
        whole = terms.number();
        return true;
    }

    private boolean fraction() {
        if (part.isPresent()) {
            return false;
        }
        part = terms.fraction();
        return part.isPresent();
    }

    /** "Over your right shoulder"; "turn 1/4 right over left" crosses. */
    private boolean shoulder() {
        int mark = terms.position();
        if (!terms.at(Kind.PLACE, "over")) {
            return false;
        }
        terms.advance();
        terms.skip(Kind.FILLER);
        Optional<Foot> named = terms.footHere();
        boolean shoulder = terms.at(Kind.FILLER) && terms.peek().text().startsWith("shoulder");
        if (named.isEmpty() || (side.isPresent() && !shoulder)) {
            terms.moveTo(mark);
            return false;
        }
        side = side.or(() -> named);
        return true;
    }

    /** "1/4 turn R", "turn R a quarter"; RF is a foot and never a side. */
    private boolean side() {
        boolean follows = part.isPresent() || terms.nextWordIs(Kind.FRACTION) || terms.nextWordIs(Kind.TURN);
        if (side.isPresent() || !follows || terms.peek().text().endsWith("f")) {
            return false;
        }
        side = terms.footHere();
        return true;
    }
}
