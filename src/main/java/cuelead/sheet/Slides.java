package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Foot;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Transfer;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * "Step R forward, slide L beside R, step R forward": a slide may take the weight or not, and authors seldom say
 * (glossaries differ). What is danced next tells: where the foot that bore the weight acts, the slide took it.
 */
final class Slides {
    private Slides() {}

    static Part settled(Part part) {
        List<Section> sections = new ArrayList<>(part.sections());
        Optional<Step> next = Optional.empty();
        for (int i = sections.size() - 1; i >= 0; i--) {
            List<Step> steps = new ArrayList<>(sections.get(i).steps());
            for (int at = steps.size() - 1; at >= 0; at--) {
                Step step = settled(steps.get(at), next);
                steps.set(at, step);
                next = step.foot().isPresent() ? Optional.of(step) : next;
            }
            sections.set(i, sections.get(i).with(steps));
        }
        return new Part(part.name(), sections);
    }

    /** {@code next} is what a foot does next in the part. */
    private static Step settled(Step step, Optional<Step> next) {
        if (step.action() != Action.SLIDE
                || step.transfer() != Transfer.NONE
                || step.foot().isEmpty()) {
            return step;
        }
        Foot foot = step.foot().get();
        boolean taken = next.filter(behind -> behind.action().needsFreeFoot())
                .flatMap(Step::foot)
                .filter(foot.other()::equals)
                .isPresent();
        boolean stood = step.weightAfter().isOn(foot.other());
        return taken && stood
                ? new Step(
                        step.count(),
                        step.foot(),
                        step.action(),
                        step.direction(),
                        step.turn(),
                        Transfer.FULL,
                        Weight.on(foot),
                        step.line(),
                        step.column())
                : step;
    }
}
