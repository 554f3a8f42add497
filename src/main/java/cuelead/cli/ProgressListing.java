package cuelead.cli;

import cuelead.rehearse.Progress;
import cuelead.rehearse.Rehearsed;
import java.io.PrintStream;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** How rehearsals of a dance went over the days, the last ones. */
final class ProgressListing {
    private static final int MOST = 5;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM HH:mm", Locale.ENGLISH);

    private ProgressListing() {}

    static void print(Progress progress, PrintStream out) {
        List<Rehearsed> all = progress.rehearsals();
        out.println();
        out.println("Your rehearsals of this dance");
        for (Rehearsed one : all.subList(Math.max(0, all.size() - MOST), all.size())) {
            out.println(String.format(
                    Locale.ROOT,
                    "  %-18s %3d of %d calls on time%s",
                    DAY.format(one.at()),
                    one.onTime(),
                    one.planned(),
                    one.steadyMs().isPresent()
                            ? String.format(
                                    Locale.ROOT,
                                    ", half of them within %.0f ms",
                                    one.steadyMs().getAsDouble())
                            : ""));
        }
    }
}
