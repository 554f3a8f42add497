package cuelead.cli;

import cuelead.practice.Progress;
import java.io.PrintStream;

/**
 * How far a longer piece of work is, on standard error: drawn again on a terminal; elsewhere told once, when it
 * begins. Thread-safe.
 */
final class ProgressLine implements Progress, AutoCloseable {
    private static final int COLUMNS = TerminalWidth.USUAL_COLUMNS - 1;

    private final PrintStream err;
    private final Screen screen;
    private final Terminal.End end;
    private String begun = "";

    ProgressLine(Surroundings surroundings) {
        err = surroundings.err();
        screen = new Screen(err, COLUMNS);
        end = surroundings.terminal().errors();
    }

    @Override
    public synchronized void at(String work, double done) {
        if (end == Terminal.End.TERMINAL) {
            screen.show(work + " " + Math.round(100 * done) + " %");
        } else if (!work.equals(begun)) {
            err.println(work + " ...");
        }
        begun = work;
    }

    @Override
    public synchronized void close() {
        screen.clear();
    }
}
