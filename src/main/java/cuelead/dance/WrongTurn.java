package cuelead.dance;

import cuelead.dance.Doubt.About;
import cuelead.report.Problem;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Whether one wrong turn is behind several findings: with the turn that a printed clock wants, the walls, restarts and
 * tags come right as well. Then the clock is told alone, for that is where the mistake is.
 */
final class WrongTurn {
    private static final String KIND = "wrong_clock";
    /** A clock and one other finding may be two mistakes that happen to agree; a clock and two others hardly are. */
    private static final int FEWEST = 3;

    private final Dance dance;
    private final Function<Dance, List<Problem>> check;

    WrongTurn(Dance dance, Function<Dance, List<Problem>> check) {
        this.dance = dance;
        this.check = check;
    }

    /** The findings, or the one clock that explains them all. */
    List<Problem> alone(List<Problem> found) {
        List<Problem> clocks =
                found.stream().filter(problem -> problem.kind().equals(KIND)).toList();
        if (clocks.size() != 1 || found.size() < FEWEST) {
            return found;
        }
        Problem clock = clocks.get(0);
        boolean explained = mark(clock)
                .flatMap(this::mended)
                .filter(mended -> check.apply(mended).isEmpty())
                .isPresent();
        return explained ? List.of(turnIsWrong(clock)) : found;
    }

    private Optional<ClockMark> mark(Problem clock) {
        return dance.claims().clockMarks().stream()
                .filter(mark -> mark.line() == clock.line() && mark.column() == clock.column())
                .findFirst();
    }

    /** The dance whose last step before the mark turns as the mark wants it. */
    private Optional<Dance> mended(ClockMark mark) {
        Optional<Part> part = dance.parts().stream()
                .filter(each -> each.name().equals(mark.part()))
                .findFirst();
        return part.flatMap(each -> lastBefore(each, mark.afterCounts()).map(from -> {
            Facing real = Facing.FRONT.after(WallWalk.turnThrough(each, mark.afterCounts()));
            Turn missing = new Turn(mark.stated().degrees() - real.degrees());
            Doubt there = new Doubt(each.name(), from, About.WEIGHT_AND_TURNS, mark.line());
            return new HiddenTurn(dance).turned(there, missing);
        }));
    }

    private static Optional<Counts> lastBefore(Part part, Counts end) {
        Stream.Builder<Counts> places = Stream.builder();
        int before = 0;
        for (Section section : part.sections()) {
            Counts start = Counts.of(before);
            section.steps().forEach(step -> places.add(start.plus(step.count().offset())));
            before += section.length();
        }
        return places.build().filter(place -> place.compareTo(end) < 0).reduce((one, next) -> next);
    }

    private static Problem turnIsWrong(Problem clock) {
        return new Problem(
                clock.severity(),
                clock.kind(),
                clock.file(),
                clock.line(),
                clock.column(),
                clock.sentence(),
                "Correct the turn before it: with the clock as it is printed, the walls and facings that the sheet tells"
                        + " come right.");
    }
}
