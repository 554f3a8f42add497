package cuelead.cli;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The terminal's own settings on Linux and macOS, changed so that single keys come at once and are not shown; put
 * back when closed and when the program ends.
 */
final class Stty implements AutoCloseable {
    private static final File TERMINAL = new File("/dev/tty");
    private static final long PATIENCE_SECONDS = 2;

    private final String before;
    private final Thread atExit = new Thread(this::restore, "cuelead-terminal");

    private Stty(String before) {
        this.before = before;
    }

    /** Empty where the terminal cannot be changed: then keys come with Enter. */
    static Optional<Stty> singleKeys() {
        if (!TERMINAL.exists()) {
            return Optional.empty();
        }
        Optional<String> before = stty("-g");
        if (before.isEmpty() || stty("-icanon", "-echo", "min", "1").isEmpty()) {
            return Optional.empty();
        }
        Stty changed = new Stty(before.get());
        Runtime.getRuntime().addShutdownHook(changed.atExit);
        return Optional.of(changed);
    }

    @Override
    public void close() {
        restore();
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            // the program is ending already, and the hook with it
        }
    }

    private void restore() {
        stty(before);
    }

    /** What the command says; empty when it fails or is not there. */
    private static Optional<String> stty(String... arguments) {
        List<String> command = new ArrayList<>(List.of("stty"));
        command.addAll(List.of(arguments));
        try {
            Process process = new ProcessBuilder(command)
                    .redirectInput(TERMINAL)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip();
            boolean done = process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
            return done && process.exitValue() == 0 ? Optional.of(said) : Optional.empty();
        } catch (IOException notThere) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
