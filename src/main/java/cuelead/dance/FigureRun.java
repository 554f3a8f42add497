package cuelead.dance;

/**
 * A figure recognised in the steps of a section.
 *
 * @param figure    which one, as the table has it (for its lead foot)
 * @param lead      the foot that begins it here; other than the figure's own lead = danced as the mirror image
 * @param firstStep index of its first step in the section
 * @param steps     how many steps it takes, one a label of the figure
 */
public record FigureRun(Figure figure, Foot lead, int firstStep, int steps) {
    public int endStep() {
        return firstStep + steps;
    }
}
