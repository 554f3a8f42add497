package cuelead.cli;

import cuelead.practice.Progress;
import java.io.PrintStream;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * How far a longer piece of work is, on standard error: drawn again on a terminal; elsewhere told when it begins and,
 * where it is long, every {@value #SECONDS_BETWEEN} seconds. Thread-safe.
 */
final class ProgressLine implements Progress, AutoCloseable {
    private static final int COLUMNS = TerminalWidth.USUAL_COLUMNS - 1;

    private static final int SECONDS_BETWEEN = 5;

    private final PrintStream err;
    private final Screen screen;
    private final Terminal.End end;
    private final LongSupplier nanoTime;
    private String begun = "";
    private long toldNanos;

    ProgressLine(Surroundings surroundings) {
        this(surroundings, System::nanoTime);
    }

    /** @param nanoTime as {@link System#nanoTime} */
    ProgressLine(Surroundings surroundings, LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
        err = surroundings.err();
        screen = new Screen(err, COLUMNS);
        end = surroundings.terminal().errors();
    }

    @Override
    public synchronized void at(String work, double done) {
        if (end == Terminal.End.TERMINAL) {
            screen.show(work + " " + Math.round(100 * done) + " %");
        } else if (!work.equals(begun)) {
            tell(work + " ...");
        } else if (nanoTime.getAsLong() - toldNanos >= TimeUnit.SECONDS.toNanos(SECONDS_BETWEEN)) {
            tell(work + " " + Math.round(100 * done) + " %");
        }
        begun = work;
    }

    private void tell(String line) {
        toldNanos = nanoTime.getAsLong();
        err.println(line);
    }

    @Override
    public synchronized void close() {
        screen.clear();
    }
}
