package cuelead.cli;

import cuelead.dance.Count;
import cuelead.plan.Call;
import cuelead.steer.Told;
import java.util.Locale;

/** One call as a line: when, for which wall, section and count, and what. */
final class CallLine {
    private CallLine() {}

    static String of(Call call) {
        String wall = call.wall() == 0 ? "count-in" : "wall " + call.wall();
        String count = call.count().map(Count::label).orElse("");
        return String.format(
                Locale.ROOT,
                "%8s  %-8s  %-4s  %-3s  %s",
                Told.minutes(call.startsSeconds()),
                wall,
                call.section(),
                count,
                call.words());
    }
}
