package cuelead.dance;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Whether the clock times among the steps are where the turns lead. Marks that are wrong by as much as the mark before
 * follow from it and are not told again; the first one behind a line in doubt tells where the dancers face there.
 */
final class ClockMarkCheck {
    private final Dance dance;
    private final String file;
    private final WallWalk walls;
    private final KnownTurns turns;

    ClockMarkCheck(Dance dance, String file) {
        this.dance = dance;
        this.file = file;
        this.walls = new WallWalk(dance);
        this.turns = new KnownTurns(dance);
    }

    List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        dance.parts().forEach(part -> problems.addAll(of(part)));
        for (Tag tag : dance.tags()) {
            if (tag.afterWalls().size() == 1
                    && !dance.isPhrased()
                    && walls.isKnown(tag.afterWalls().get(0))) {
                problems.addAll(
                        of(tag.part(), walls.before(tag, tag.afterWalls().get(0))));
            }
        }
        dance.ending().ifPresent(ending -> problems.addAll(ofEnding(ending)));
        return problems;
    }

    /** The dance without the marks that are told to be wrong, for they prove nothing of what a line in doubt turns. */
    Dance without(List<Problem> wrong) {
        List<ClockMark> marks = dance.claims().clockMarks().stream()
                .filter(mark -> wrong.stream()
                        .noneMatch(problem -> problem.line() == mark.line() && problem.column() == mark.column()))
                .toList();
        return dance.with(dance.claims().withMarks(marks));
    }

    /** What the line that tells of the ending says itself, is a claim about the ending. */
    private List<Problem> ofEnding(Ending ending) {
        int wall = ending.wall().orElse(0);
        int counts = ending.countsOf(dance.parts().get(0));
        if (dance.isPhrased() || ending.part().isEmpty() || wall == 0 || !walls.isKnown(wall, counts)) {
            return List.of();
        }
        return of(ending.part().get(), walls.after(wall, counts)).stream()
                .filter(problem -> problem.line() != ending.line())
                .toList();
    }

    /** The marks of a part may be told as if it began at the front, or as it begins somewhere in the sequence. */
    private List<Problem> of(Part part) {
        List<Problem> fewest = of(part, Facing.FRONT);
        if (dance.isPhrased()) {
            List<Facing> facings = walls.alongSequence();
            for (int i = 0; i < dance.sequence().size(); i++) {
                boolean here = dance.sequence().get(i).equals(part.name());
                List<Problem> wrong = here ? of(part, facings.get(i)) : fewest;
                fewest = wrong.size() < fewest.size() ? wrong : fewest;
            }
        }
        return fewest;
    }

    private List<Problem> of(Part part, Facing start) {
        List<Problem> wrong = new ArrayList<>();
        int carried = 0;
        Counts checked = Counts.ZERO;
        Optional<ClockMark> believed = Optional.empty();
        for (ClockMark mark : dance.claims().clockMarks()) {
            if (!mark.part().equals(part.name())) {
                continue;
            }
            Facing real = start.after(WallWalk.turnThrough(part, mark.afterCounts()));
            int off = Math.floorMod(mark.stated().degrees() - real.degrees(), 360);
            boolean doubtful = turns.isDoubtful(part, checked, mark.afterCounts());
            boolean other = off != carried && !doubtful;
            if (other && believed.isPresent()) {
                wrong.add(contradiction(believed.get(), mark, off, real.after(new Turn(carried))));
            } else if (other && off != 0) {
                wrong.add(behindMissing(wrong(mark, real, ""), part, checked, mark));
            }
            believed = doubtful && off != carried ? Optional.of(mark) : other ? Optional.empty() : believed;
            carried = off;
            checked = mark.afterCounts();
        }
        return wrong;
    }

    /**
     * A mark that was believed, for a line in doubt before it may turn, and one behind steps that are understood. Where the
     * later one is right if the line in doubt turns nobody, the earlier one is blamed.
     */
    private Problem contradiction(ClockMark believed, ClockMark mark, int off, Facing fromBelieved) {
        if (off != 0) {
            return wrong(mark, fromBelieved, "from the " + believed.stated().clock() + " in line " + believed.line());
        }
        Turn between = new Turn(mark.stated().degrees() - fromBelieved.degrees());
        return wrong(
                believed,
                believed.stated().after(between),
                "before the " + mark.stated().clock() + " in line " + mark.line());
    }

    /** Where counts are missing between this mark and the one before, one of them may turn. */
    private Problem behindMissing(Problem wrong, Part part, Counts after, ClockMark mark) {
        OptionalInt missing = part.equals(dance.parts().get(0))
                ? new MissingCounts(dance).lineBetween(after, mark.afterCounts())
                : OptionalInt.empty();
        return missing.isEmpty()
                ? wrong
                : new Problem(
                        wrong.severity(),
                        wrong.kind(),
                        wrong.file(),
                        wrong.line(),
                        wrong.column(),
                        wrong.sentence(),
                        "Look first at the counts that are missing behind line " + missing.getAsInt()
                                + ": they may turn; else correct the turn before it.");
    }

    private Problem wrong(ClockMark mark, Facing real, String beside) {
        return new Problem(
                Severity.ERROR,
                "wrong_clock",
                file,
                mark.line(),
                mark.column(),
                "The sheet says " + mark.stated().clock() + " here, but " + (beside.isEmpty() ? "" : beside + " ")
                        + "its turns end at " + real.clock() + ".",
                "Write " + real.clock() + ", or correct the turn before it.");
    }
}
