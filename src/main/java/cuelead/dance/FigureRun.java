package cuelead.dance;

import java.util.List;

/**
 * A figure recognised in the steps of a section.
 *
 * @param figure    which one, for its own lead foot as the table has it; where the sheet writes a permitted variant
 *                  (another ending, the turn elsewhere), its pattern and call words are those of the sheet
 * @param lead      the foot that begins it here; other than the figure's own lead = danced as the mirror image
 * @param firstStep index of its first step in the section
 * @param steps     how many steps it takes, one a label of the figure
 */
public record FigureRun(Figure figure, Foot lead, int firstStep, int steps) {
    /** The figure as it is danced here: itself, or its mirror image when the other foot leads. */
    public Figure danced() {
        return lead == figure.lead() ? figure : figure.mirrored();
    }

    /** Its steps in the section in which it was recognised. */
    public List<Step> stepsOf(Section section) {
        return section.steps().subList(firstStep, endStep());
    }

    public int endStep() {
        return firstStep + steps;
    }
}
