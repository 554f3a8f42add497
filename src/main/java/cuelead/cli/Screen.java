package cuelead.cli;

import java.io.PrintStream;

/** One line of a terminal that is drawn again and again. Used on one thread at a time. */
final class Screen {
    private final PrintStream out;
    private final int columns;
    private String shown = "";

    /** @param columns the longest line: one that wraps could not be drawn over */
    Screen(PrintStream out, int columns) {
        this.out = out;
        this.columns = columns;
    }

    /** Draws a line in place of the one before; nothing when it is the same. */
    synchronized void show(String line) {
        String cut = OneLine.cut(line, columns);
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
