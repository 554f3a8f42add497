package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.DanceRow;
import cuelead.dance.Foot;
import cuelead.dance.Step;
import java.math.BigDecimal;
import java.util.List;

/** A dance as rows of the columns in which the sample sheets state their answers. */
final class SheetDump {
    private SheetDump() {}

    /** section, count_in_dance, label, foot, action, direction, turn, facing, weight after, transfer, figure. */
    static List<String> rows(Dance dance) {
        return DanceRow.of(dance).stream().map(SheetDump::row).toList();
    }

    private static String row(DanceRow row) {
        Step step = row.step();
        return String.join(
                "\t",
                row.section().name(),
                BigDecimal.valueOf(row.countInDance()).stripTrailingZeros().toPlainString(),
                step.count().label(),
                step.foot().map(Foot::letter).orElse("-"),
                step.action().word(),
                step.direction().word(),
                String.valueOf(step.turn().degrees()),
                row.facing().clock(),
                step.weightAfter().letter(),
                step.transfer().letter(),
                row.figure().map(run -> run.figure().id()).orElse(""));
    }
}
