package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.dance.Step;
import cuelead.dance.Turn;
import cuelead.sheet.Term.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** The turns that a heading tells in figures, and whether steps turn so. */
final class HeadingTurns {
    private static final Set<String> WHOLE_TURNS = Set.of("rolling_vine", "three_step_turn");
    private static final Set<String> NO_TURNS = Set.of("rumba", "charleston", "k");
    private static final int EITHER = 0;

    private HeadingTurns() {}

    /**
     * A turn as a heading names it.
     *
     * @param degrees how far, over 0
     * @param side    1 to the right, -1 to the left, 0 where it is not told
     */
    record Named(int degrees, int side) {
        String words() {
            String amount =
                    switch (degrees) {
                        case 90 -> "a quarter turn";
                        case 180 -> "a half turn";
                        case 270 -> "a three quarter turn";
                        case 360 -> "a full turn";
                        default -> "a turn of " + degrees + " degrees";
                    };
            return amount + (side == EITHER ? "" : side > 0 ? " to the right" : " to the left");
        }

        private boolean is(int turned) {
            return side == EITHER ? Math.abs(turned) == degrees : turned == side * degrees;
        }
    }

    /** In the order of the heading; a turn that it tells twice ("x2") stands twice. */
    static List<Named> named(String heading, List<Phrase> phrases) {
        List<Named> turns = new ArrayList<>();
        List<Term> terms = Vocabulary.STANDARD.terms(Scanner.tokens(heading));
        boolean stands = false;
        int clauseStart = 0;
        for (int i = 0; i < terms.size(); i++) {
            Term term = terms.get(i);
            stands = !term.is(Kind.SEPARATOR) && (stands || NO_TURNS.contains(term.meaning()));
            if (term.is(Kind.SEPARATOR)) {
                clauseStart = turns.size();
            }
            OptionalInt degrees = term.is(Kind.FRACTION) ? TermCursor.degrees(term.meaning()) : OptionalInt.empty();
            if (degrees.isPresent() && !stands) {
                turns.add(new Named(degrees.getAsInt(), side(terms, i + 1)));
            }
            boolean twice = term.is(Kind.NUMBER, "2") && !term.text().equals("2") && turns.size() > clauseStart;
            if (twice) {
                turns.add(turns.get(turns.size() - 1));
            }
        }
        return turns.isEmpty() ? whole(phrases) : turns;
    }

    /** "Rolling vine R": a whole turn to that side. */
    private static List<Named> whole(List<Phrase> phrases) {
        return phrases.stream()
                .flatMap(phrase -> phrase.figure().stream())
                .filter(call -> WHOLE_TURNS.contains(call.row().figure().id()))
                .map(call -> new Named(
                        360, call.feet().size() == 1 ? side(call.feet().get(0)) : EITHER))
                .toList();
    }

    /** "1/4 turn L", told only where the clause ends behind it: in "1/4 L basic" the word is the basic's foot. */
    private static int side(List<Term> terms, int behind) {
        int at = behind;
        while (at < terms.size() && isOfTurn(terms.get(at))) {
            at++;
        }
        boolean told = at < terms.size() && terms.get(at).is(Kind.FOOT);
        boolean last = at + 1 >= terms.size()
                || terms.get(at + 1).is(Kind.SEPARATOR)
                || terms.get(at + 1).is(Kind.CLOSE);
        if (!told || !last) {
            return EITHER;
        }
        return side(terms.get(at).meaning().equals("right") ? Foot.RIGHT : Foot.LEFT);
    }

    private static int side(Foot foot) {
        return foot == Foot.RIGHT ? 1 : -1;
    }

    private static boolean isOfTurn(Term term) {
        return term.is(Kind.TURN) || term.is(Kind.FILLER) || term.meaning().equals("pivot");
    }

    /** Whether these turns come in this order, each as a step's own turn or as the sum of some that follow each other. */
    static boolean areTurned(List<Named> named, List<Step> steps) {
        List<Integer> turned = steps.stream()
                .map(Step::turn)
                .filter(turn -> !turn.isNone())
                .map(Turn::degrees)
                .toList();
        int from = 0;
        for (Named turn : named) {
            int end = end(turned, from, turn);
            if (end < 0) {
                return false;
            }
            from = end;
        }
        return true;
    }

    /** Index behind the first run of turns from {@code from} on that adds up to this one; -1 where none does. */
    private static int end(List<Integer> turned, int from, Named named) {
        int best = -1;
        for (int start = from; start < turned.size(); start++) {
            int sum = 0;
            for (int end = start; end < turned.size(); end++) {
                sum += turned.get(end);
                if (named.is(sum) && (best < 0 || end + 1 < best)) {
                    best = end + 1;
                }
            }
        }
        return best;
    }
}
