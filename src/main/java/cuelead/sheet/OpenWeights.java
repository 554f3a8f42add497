package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Foot;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Transfer;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * "Step R forward, slide L beside R, step R forward" and "bump hips right, left", behind which the right foot steps: a
 * slide and a bump may take the weight or not, and authors seldom say (glossaries differ). What is danced next tells: where
 * the foot that bore the weight acts, they took it.
 */
final class OpenWeights {
    private static final Set<Action> OPEN = EnumSet.of(Action.SLIDE, Action.BUMP);

    private final Problems problems;

    OpenWeights(Problems problems) {
        this.problems = problems;
    }

    /** The part with the weight where its next steps need it; of a bump that is told. */
    Part settled(Part part) {
        List<Section> sections = new ArrayList<>(part.sections());
        Optional<Step> next = Optional.empty();
        for (int i = sections.size() - 1; i >= 0; i--) {
            List<Step> steps = new ArrayList<>(sections.get(i).steps());
            for (int at = steps.size() - 1; at >= 0; at--) {
                Step step = steps.get(at);
                if (isTaken(step, next)) {
                    steps.set(at, taken(step));
                }
                next = step.foot().isPresent() ? Optional.of(step) : next;
            }
            sections.set(i, sections.get(i).with(steps));
        }
        return new Part(part.name(), sections);
    }

    /** {@code next} is what a foot does next in the part. */
    private static boolean isTaken(Step step, Optional<Step> next) {
        if (!OPEN.contains(step.action())
                || step.transfer() != Transfer.NONE
                || step.foot().isEmpty()) {
            return false;
        }
        Foot standing = step.foot().get().other();
        return step.weightAfter().isOn(standing)
                && next.filter(behind -> behind.action().needsFreeFoot())
                        .flatMap(Step::foot)
                        .filter(standing::equals)
                        .isPresent();
    }

    private Step taken(Step step) {
        Foot foot = step.foot().orElseThrow();
        if (step.action() == Action.BUMP) {
            problems.note(
                    "open_weight",
                    step.line(),
                    step.column(),
                    "It is not said where the weight is behind this bump; the "
                            + foot.other().word() + " foot moves next, so it is taken to be on " + foot.word() + ".",
                    "Write \"(weight on " + (foot == Foot.LEFT ? "L" : "R") + ")\" behind it.");
        }
        return new Step(
                step.count(),
                step.foot(),
                step.action(),
                step.direction(),
                step.turn(),
                Transfer.FULL,
                Weight.on(foot),
                step.line(),
                step.column());
    }
}
