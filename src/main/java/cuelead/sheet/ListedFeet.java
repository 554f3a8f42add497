package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Figure;
import cuelead.dance.FigureRow;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import cuelead.sheet.Term.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A list of feet in brackets: "(R, L, R, L)", "(R forward, L, R back, L)". */
final class ListedFeet {
    private ListedFeet() {}

    /** A foot and where it goes, {@link Direction#NONE} where that is not said. */
    record Listed(Foot foot, Direction way) {}

    /**
     * One foot an action; empty where any other words stand between them, for that is styling, and where only one is
     * named, for that may be the side of a turn.
     */
    static List<Listed> read(List<Term> inside) {
        List<Listed> feet = new ArrayList<>();
        boolean footNext = true;
        for (Term term : inside) {
            if (isParting(term)) {
                footNext = true;
            } else if (term.is(Kind.FOOT) && footNext) {
                feet.add(new Listed(term.meaning().equals("left") ? Foot.LEFT : Foot.RIGHT, Direction.NONE));
                footNext = false;
            } else if (term.is(Kind.PLACE) && !feet.isEmpty() && !footNext) {
                int last = feet.size() - 1;
                feet.set(last, new Listed(feet.get(last).foot(), way(term)));
            } else if (!term.is(Kind.FILLER)) {
                return List.of();
            }
        }
        return feet.size() > 1 ? feet : List.of();
    }

    /** "(R steps)", "(starting L)", "(R foot first)": the foot that begins; a foot alone may be the side of a turn. */
    static Optional<Foot> lead(List<Term> inside) {
        List<Term> clause =
                inside.stream().takeWhile(term -> !term.is(Kind.SEPARATOR)).toList();
        List<Term> feet = clause.stream().filter(term -> term.is(Kind.FOOT)).toList();
        boolean begins = clause.stream().anyMatch(ListedFeet::isBeginning);
        boolean only =
                clause.stream().allMatch(term -> term.is(Kind.FOOT) || term.is(Kind.FILLER) || isBeginning(term));
        return feet.size() == 1 && begins && only
                ? Optional.of(feet.get(0).meaning().equals("left") ? Foot.LEFT : Foot.RIGHT)
                : Optional.empty();
    }

    private static boolean isBeginning(Term term) {
        return term.is(Kind.LEADING)
                || term.is(Kind.VERB, "step")
                || term.text().equals("first");
    }

    /** Whether words behind a figure's name are its own steps: a foot for each, or toe and heel of a strut. */
    static boolean tells(List<Term> words, FigureRow row) {
        boolean strut = row.figure().pattern().stream().anyMatch(beat -> beat.action() == Action.DROP);
        return areAll(read(words).size(), row) || (strut && parts(words) == steps(row));
    }

    /** Whether so many feet are one for each step of a figure, or for all but an open ending. */
    static boolean areAll(int feet, FigureRow row) {
        List<Figure.Beat> pattern = row.figure().pattern();
        boolean openEnd = row.freeEnding() || pattern.get(pattern.size() - 1).transfer() == Transfer.NONE;
        return feet == steps(row) || (feet > 1 && openEnd && feet == steps(row) - 1);
    }

    private static long steps(FigureRow row) {
        return row.figure().pattern().stream()
                .filter(beat -> beat.foot().isPresent())
                .count();
    }

    /** How many toes and heels are named; 0 where other words stand between them. */
    private static long parts(List<Term> words) {
        boolean only = words.stream()
                .allMatch(term ->
                        isParting(term) || term.is(Kind.PART) || term.is(Kind.FOOT) || term.is(Kind.PLACE, "down"));
        return only ? words.stream().filter(term -> term.is(Kind.PART)).count() : 0;
    }

    static boolean isParting(Term term) {
        return term.is(Kind.SEPARATOR) || term.is(Kind.LINK) || term.is(Kind.MARK);
    }

    private static Direction way(Term place) {
        return switch (place.meaning()) {
            case "fwd" -> Direction.FWD;
            case "back" -> Direction.BACK;
            case "side" -> Direction.SIDE;
            default -> Direction.NONE;
        };
    }
}
