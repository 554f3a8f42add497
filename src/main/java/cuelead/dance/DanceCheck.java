package cuelead.dance;

import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a dance cannot be, told from the dance alone: a foot that steps while it bears the weight, clock times, walls
 * and lengths that do not add up, a pivot to the wrong side, ends and restarts that leave the wrong foot free. Each mistake is told once, and
 * nothing that may follow from a line which could not be read.
 */
public final class DanceCheck {
    private DanceCheck() {}

    /** All that is wrong, in the order of the sheet; empty when nothing is. */
    public static List<Problem> check(Dance dance, String fileName) {
        List<Problem> problems = new ArrayList<>(LengthCheck.check(dance, fileName));
        problems.addAll(WeightCheck.check(dance, fileName));
        problems.addAll(FacingCheck.check(dance, fileName));
        problems.addAll(PivotCheck.check(dance, fileName));
        problems.addAll(EasyCheck.check(dance, fileName));
        return problems.stream()
                .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
                .toList();
    }
}
