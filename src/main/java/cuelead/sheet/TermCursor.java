package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.Term.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A place in a list of terms, with the small steps that the grammar takes. */
final class TermCursor {
    private final List<Term> terms;
    private int at;

    TermCursor(List<Term> terms) {
        this.terms = List.copyOf(terms);
    }

    int position() {
        return at;
    }

    void moveTo(int position) {
        at = position;
    }

    boolean atEnd() {
        return at >= terms.size();
    }

    Term peek() {
        return terms.get(at);
    }

    Term peekAt(int position) {
        return terms.get(position);
    }

    boolean at(Kind kind) {
        return !atEnd() && peek().is(kind);
    }

    boolean at(Kind kind, String meaning) {
        return !atEnd() && peek().is(kind, meaning);
    }

    boolean nextIs(Kind kind) {
        return at + 1 < terms.size() && terms.get(at + 1).is(kind);
    }

    /** Whether such a term stands before the one that was taken last. */
    boolean behind(Kind kind) {
        return at > 1 && terms.get(at - 2).is(kind);
    }

    /** What comes behind this term and small words. */
    boolean nextWordIs(Kind kind) {
        int next = at + 1;
        while (next < terms.size() && terms.get(next).is(Kind.FILLER)) {
            next++;
        }
        return next < terms.size() && terms.get(next).is(kind);
    }

    /** Always true, so that a rule can end with it. */
    boolean advance() {
        at++;
        return true;
    }

    void skip(Kind kind) {
        while (at(kind)) {
            at++;
        }
    }

    void skipWords(Kind... kinds) {
        boolean moved = true;
        while (moved && !atEnd()) {
            moved = false;
            for (Kind kind : kinds) {
                if (at(kind)) {
                    at++;
                    moved = true;
                }
            }
        }
    }

    /** Feet, marks and small words may stand within the name of a figure. */
    void skipWithinName() {
        skipWords(Kind.FOOT, Kind.FILLER, Kind.MARK);
    }

    /** A word before the name of a figure that says how it is danced: "back lock step", "1/4 turn R sailor", "cheeky vine". */
    boolean skipModifier() {
        if (atEnd()) {
            return false;
        }
        boolean count = at(Kind.NUMBER) && nextIs(Kind.COUNT);
        boolean modifier = at(Kind.PLACE)
                || at(Kind.FRACTION)
                || at(Kind.TURN)
                || at(Kind.PART)
                || at(Kind.VERB, "cross")
                || at(Kind.FIGURE_WORD, "syncopated")
                || at(Kind.UNKNOWN)
                || count;
        at += count ? 2 : modifier ? 1 : 0;
        return modifier;
    }

    /** "to the", "to", "over" before the side of a turn. */
    void skipOverShoulder() {
        skip(Kind.FILLER);
        if (at(Kind.PLACE, "over") && nextIs(Kind.FOOT)) {
            at++;
        }
    }

    /** Takes a foot when one stands here. */
    Optional<Foot> footHere() {
        if (!at(Kind.FOOT)) {
            return Optional.empty();
        }
        Foot foot = peek().meaning().equals("left") ? Foot.LEFT : Foot.RIGHT;
        at++;
        return Optional.of(foot);
    }

    /** Takes the number that stands here; anything beyond sense counts as 999. */
    int number() {
        String digits = peek().meaning();
        at++;
        return digits.length() > 3 ? 999 : Integer.parseInt(digits);
    }

    /** Takes a fraction of a turn and gives it in degrees; empty where none stands here that a dancer can turn. */
    OptionalInt fraction() {
        if (!at(Kind.FRACTION)) {
            return OptionalInt.empty();
        }
        OptionalInt degrees = degrees(peek().meaning());
        if (degrees.isPresent()) {
            at++;
        }
        return degrees;
    }

    static OptionalInt degrees(String fraction) {
        return switch (fraction) {
            case "1/8" -> OptionalInt.of(45);
            case "1/4", "2/8" -> OptionalInt.of(90);
            case "3/8" -> OptionalInt.of(135);
            case "1/2", "2/4", "4/8" -> OptionalInt.of(180);
            case "5/8" -> OptionalInt.of(225);
            case "3/4", "6/8" -> OptionalInt.of(270);
            case "7/8" -> OptionalInt.of(315);
            case "1/1", "full" -> OptionalInt.of(360);
            default -> OptionalInt.empty();
        };
    }

    /** A fraction of a turn as the names of figures have it. */
    static Optional<String> fractionOf(int degrees) {
        return switch (degrees) {
            case 90 -> Optional.of("1/4");
            case 180 -> Optional.of("1/2");
            case 270 -> Optional.of("3/4");
            case 360 -> Optional.of("full");
            default -> Optional.empty();
        };
    }

    /** Whether these standard words stand here in order, within the clause. */
    boolean matches(List<String> words) {
        int start = at;
        boolean all = true;
        for (String word : words) {
            skipWithinName();
            all = all && !atEnd() && peek().meaning().equals(word);
            at = all ? at + 1 : at;
        }
        at = start;
        return all;
    }

    /** "4 sways R, L, R, L": so many feet stand alone behind the one that was taken. */
    int feetListedAhead() {
        int feet = 0;
        int next = at;
        while (next + 1 < terms.size()
                && (terms.get(next).is(Kind.SEPARATOR) || terms.get(next).is(Kind.LINK))
                && terms.get(next + 1).is(Kind.FOOT)) {
            feet++;
            next += 2;
        }
        return feet;
    }

    /** Takes all that is left. */
    List<Term> rest() {
        List<Term> rest = terms.subList(at, terms.size());
        at = terms.size();
        return rest;
    }

    /** The word that stands here; empty at the end. */
    String textHere() {
        return atEnd() ? "" : peek().text();
    }

    /** Takes a bracket with all that it holds, to its end or the end of the line. */
    List<Term> bracketed() {
        List<Term> inside = new ArrayList<>();
        int depth = 0;
        do {
            Term term = peek();
            depth += term.is(Kind.OPEN) ? 1 : term.is(Kind.CLOSE) ? -1 : 0;
            if (!term.is(Kind.OPEN) && !term.is(Kind.CLOSE)) {
                inside.add(term);
            }
            at++;
        } while (depth > 0 && !atEnd());
        return inside;
    }
}
