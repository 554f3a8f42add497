package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.Section;
import cuelead.dance.Step;

/**
 * Which step of a dance.
 *
 * @param section from 0, of {@link Dance#sections()}
 * @param step    from 0, in that section
 */
public record StepPlace(int section, int step) {
    /** Whether a dance has such a step. */
    boolean isIn(Dance dance) {
        return section < dance.sections().count()
                && step < sectionOf(dance).steps().size();
    }

    Section sectionOf(Dance dance) {
        return dance.sections().toList().get(section);
    }

    Step of(Dance dance) {
        return sectionOf(dance).steps().get(step);
    }
}
