package cuelead.cli;

import cuelead.output.GrowingTake;
import cuelead.report.Refused;
import java.io.PrintStream;
import java.nio.file.Path;

/**
 * Sees that a take that is being made is whole when the program is ended from outside (Ctrl-C where there are no keys, a
 * closed terminal, the computer going off), and that its user learns where it is.
 */
final class TakeAtExit {
    private final Thread atExit;

    /** From now on. */
    TakeAtExit(GrowingTake take, Path file, PrintStream err) {
        atExit = new Thread(() -> keep(take, file, err), "cuelead-keep-take");
        Runtime.getRuntime().addShutdownHook(atExit);
    }

    private static void keep(GrowingTake take, Path file, PrintStream err) {
        try {
            take.close();
            err.print("\r" + kept(file) + "\r\n"); // a raw terminal does not go back by itself
        } catch (Refused lastWords) {
            err.print("\r" + lastWords.getMessage() + "\r\n");
        }
        err.flush();
    }

    /** Where a take is that was broken off. */
    static String kept(Path file) {
        return "What you said so far is kept in " + file + ".";
    }

    /** From now on others see to it. */
    void forget() {
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            // the program is ending already, and the hook with it
        }
    }
}
