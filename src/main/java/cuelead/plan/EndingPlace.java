package cuelead.plan;

import cuelead.dance.Counts;
import cuelead.dance.Ending;
import cuelead.dance.Part;
import java.util.List;
import java.util.Optional;

/**
 * Where an ending comes.
 *
 * @param wall   the wall that it ends
 * @param counts counts of that wall that are danced before it
 * @param part   its steps
 */
record EndingPlace(int wall, int counts, Part part) {
    /** Empty where the sheet tells no steps of an ending, or the music ends before it could begin. */
    static Optional<EndingPlace> in(Timeline goingOn) {
        return goingOn.dance()
                .ending()
                .filter(ending -> ending.part().isPresent())
                .flatMap(ending -> lastRun(goingOn, ending)
                        .map(run -> new EndingPlace(
                                run.wall(),
                                ending.countsOf(run.part()),
                                ending.part().orElseThrow())));
    }

    private static Optional<Run> lastRun(Timeline goingOn, Ending ending) {
        List<Run> walls = goingOn.runs().stream()
                .filter(Run::isWall)
                .filter(run -> isIts(run, ending, goingOn))
                .toList();
        return walls.isEmpty() ? Optional.empty() : Optional.of(walls.get(walls.size() - 1));
    }

    /** It begins before the music ends; where no wall is named, it is over not long before that. */
    private static boolean isIts(Run run, Ending ending, Timeline goingOn) {
        int before = ending.countsOf(run.part());
        int after = before + ending.part().map(Part::counts).orElse(0);
        boolean isNamed = ending.wall().isPresent();
        boolean isOver = secondsAfter(run, after, goingOn) >= goingOn.endSeconds() - Timeline.LONG_REST_SECONDS;
        return secondsAfter(run, before, goingOn) <= goingOn.endSeconds()
                && (isNamed ? ending.wall().getAsInt() == run.wall() : isOver);
    }

    private static double secondsAfter(Run run, int counts, Timeline goingOn) {
        return goingOn.grid().secondsAt(run.start().plus(goingOn.beatsOf(Counts.of(counts))));
    }
}
