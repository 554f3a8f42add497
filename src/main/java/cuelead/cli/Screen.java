package cuelead.cli;

import java.io.PrintStream;

/** One line of a terminal that is drawn again and again. Used on one thread at a time. */
final class Screen {
    /** No terminal is narrower by custom; a line that wraps could not be drawn over. */
    private static final int COLUMNS = 79;

    private final PrintStream out;
    private String shown = "";

    Screen(PrintStream out) {
        this.out = out;
    }

    /** Draws a line in place of the one before; nothing when it is the same. */
    synchronized void show(String line) {
        String cut = line.length() > COLUMNS ? line.substring(0, COLUMNS - 3) + "..." : line;
        if (cut.equals(shown)) {
            return;
        }
        out.print('\r' + cut + " ".repeat(Math.max(0, shown.length() - cut.length())));
        out.flush();
        shown = cut;
    }

    /** Takes the line away. */
    synchronized void clear() {
        if (!shown.isEmpty()) {
            out.print('\r' + " ".repeat(shown.length()) + '\r');
            out.flush();
            shown = "";
        }
    }
}
