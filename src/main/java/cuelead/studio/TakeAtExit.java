package cuelead.studio;

import cuelead.output.GrowingTake;
import cuelead.report.Refused;
import java.nio.file.Path;
import java.util.function.Consumer;

/**
 * Sees that a take that is being made is whole when the program is ended from outside (Ctrl-C where there are no keys, a
 * closed terminal, the computer going off), and that its user learns where it is.
 */
final class TakeAtExit {
    private final Thread atExit;

    /** From now on. */
    TakeAtExit(GrowingTake take, Path file, Consumer<String> lastWords) {
        atExit = new Thread(() -> keep(take, file, lastWords), "cuelead-keep-take");
        Runtime.getRuntime().addShutdownHook(atExit);
    }

    private static void keep(GrowingTake take, Path file, Consumer<String> lastWords) {
        try {
            take.close();
            lastWords.accept(kept(file));
        } catch (Refused broken) {
            lastWords.accept(broken.getMessage());
        }
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
