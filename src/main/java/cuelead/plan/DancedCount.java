package cuelead.plan;

import cuelead.dance.Count;
import cuelead.dance.Facing;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Turn;
import cuelead.time.BeatPosition;
import java.util.List;

/**
 * A count of the dance at its place in the song: every whole count, and each "and" or "a" that has a step.
 *
 * @param run           the wall or tag that it belongs to
 * @param section       its section
 * @param count         its count within the section
 * @param countInRun    its whole count counted through the run, from 1
 * @param at            where on the grid
 * @param songSeconds   when
 * @param facingBefore  the way faced before it
 * @param facingAfter   the way faced after it
 * @param steps         what is done on it; empty where nothing is written
 */
public record DancedCount(
        Run run,
        Section section,
        Count count,
        int countInRun,
        BeatPosition at,
        double songSeconds,
        Facing facingBefore,
        Facing facingAfter,
        List<Step> steps) {
    public DancedCount {
        steps = List.copyOf(steps);
    }

    public Turn turn() {
        return steps.stream().map(Step::turn).reduce(Turn.NONE, Turn::plus);
    }

    /** Whether a foot takes the weight on this count. */
    public boolean takesWeight() {
        return steps.stream().anyMatch(step -> step.transfer().takesWeight());
    }

    public boolean isFirstOfSection() {
        return count.isWhole() && count.number() == 1;
    }

    /** Whether a tag begins here that comes within its wall. */
    public boolean beginsBridge() {
        return !run.isTag() && isFirstOfSection() && section.name().startsWith("TAG");
    }
}
