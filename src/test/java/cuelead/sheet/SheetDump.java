package cuelead.sheet;

import cuelead.dance.Counts;
import cuelead.dance.Dance;
import cuelead.dance.Facing;
import cuelead.dance.FigureRun;
import cuelead.dance.Foot;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.WallWalk;
import java.util.ArrayList;
import java.util.List;

/** A dance as rows of the columns in which the sample sheets state their answers. */
final class SheetDump {
    private SheetDump() {}

    /** section, count_in_dance, label, foot, action, direction, turn, facing, weight after, transfer, figure. */
    static List<String> rows(Dance dance) {
        List<String> rows = new ArrayList<>();
        for (Part part : dance.parts()) {
            rows(part, Facing.FRONT, rows);
        }
        for (var tag : dance.tags()) {
            Facing start = tag.afterWalls().isEmpty()
                    ? Facing.FRONT
                    : new WallWalk(dance).beforeTags(tag.afterWalls().get(0));
            rows(tag.part(), start, rows);
        }
        return rows;
    }

    private static void rows(Part part, Facing start, List<String> rows) {
        Facing facing = start;
        Counts before = Counts.ZERO;
        for (Section section : part.sections()) {
            for (int i = 0; i < section.steps().size(); i++) {
                Step step = section.steps().get(i);
                facing = facing.after(step.turn());
                double count = before.plus(step.count().offset()).toDecimal() + 1;
                rows.add(String.join(
                        "\t",
                        section.name(),
                        count == Math.rint(count) ? String.valueOf((int) count) : String.valueOf(count),
                        step.count().label(),
                        step.foot().map(Foot::letter).orElse("-"),
                        step.action().word(),
                        step.direction().word(),
                        String.valueOf(step.turn().degrees()),
                        facing.clock(),
                        step.weightAfter().letter(),
                        step.transfer().letter(),
                        figure(section, i)));
            }
            before = before.plus(Counts.of(section.length()));
        }
    }

    private static String figure(Section section, int step) {
        return section.figures().stream()
                .filter(run -> run.firstStep() <= step && step < run.endStep())
                .findFirst()
                .map(FigureRun::figure)
                .map(figure -> figure.id())
                .orElse("");
    }
}
