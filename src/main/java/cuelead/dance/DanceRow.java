package cuelead.dance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One action of a dance and all that is known of it there, as a teacher would write it in a table.
 *
 * @param section      its section
 * @param place        from count 1 of its part or tag; 0 = on count 1
 * @param step         what is done
 * @param facing       of the dancer afterwards; wall 1 of the dance begins at the front
 * @param weightBefore where the weight was
 * @param figure       the figure to which it belongs; empty for an action that stands alone
 */
public record DanceRow(
        Section section, Counts place, Step step, Facing facing, Weight weightBefore, Optional<FigureRun> figure) {
    /** The counts of the part up to and with this one, from 1: 17 = on the seventeenth, 17.5 = on the & after it. */
    public double countInDance() {
        return place.toDecimal() + 1;
    }

    /** Each part from the front, and each tag from where the first wall that it follows ends. */
    public static List<DanceRow> of(Dance dance) {
        List<DanceRow> rows = new ArrayList<>();
        Weight weight = dance.header().startWeight();
        for (Part part : dance.parts()) {
            weight = add(part, Facing.FRONT, weight, rows);
        }
        for (Tag tag : dance.tags()) {
            Facing start = tag.afterWalls().stream()
                    .findFirst()
                    .map(wall -> new WallWalk(dance).beforeTags(wall))
                    .orElse(Facing.FRONT);
            weight = add(tag.part(), start, weight, rows);
        }
        return List.copyOf(rows);
    }

    private static Weight add(Part part, Facing start, Weight before, List<DanceRow> rows) {
        Facing facing = start;
        Weight weight = before;
        Counts danced = Counts.ZERO;
        for (Section section : part.sections()) {
            for (int i = 0; i < section.steps().size(); i++) {
                Step step = section.steps().get(i);
                facing = facing.after(step.turn());
                Counts place = danced.plus(step.count().offset());
                rows.add(new DanceRow(section, place, step, facing, weight, figure(section, i)));
                weight = step.weightAfter();
            }
            danced = danced.plus(Counts.of(section.length()));
        }
        return weight;
    }

    private static Optional<FigureRun> figure(Section section, int step) {
        return section.figures().stream()
                .filter(run -> run.firstStep() <= step && step < run.endStep())
                .findFirst();
    }
}
