package cuelead.cli;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.NonBlockingReader;

/** Keys of a terminal, read one by one; it is as it was when this is closed. */
final class RawKeys implements AutoCloseable {
    /** What Ctrl-C means. */
    static final String QUIT = "q";

    private final Terminal terminal;
    private final Attributes before;
    private final BlockingQueue<String> strokes = new LinkedBlockingQueue<>();

    private RawKeys(Terminal terminal) {
        this.terminal = terminal;
        before = terminal.enterRawMode();
        terminal.handle(Signal.INT, signal -> strokes.add(QUIT));
        Thread keys = new Thread(this::read, "cuelead-keys");
        keys.setDaemon(true);
        keys.start();
    }

    /** Empty where keys cannot be read. */
    static Optional<RawKeys> open() {
        try {
            return Optional.of(new RawKeys(
                    TerminalBuilder.builder().system(true).dumb(false).build()));
        } catch (IOException | IllegalStateException | LinkageError notOnThisSystem) {
            return Optional.empty();
        }
    }

    private void read() {
        NonBlockingReader reader = terminal.reader(); // a closed terminal would not give it
        KeyDecoder keys = new KeyDecoder(reader::read);
        try {
            for (Optional<String> stroke = keys.next(); stroke.isPresent(); stroke = keys.next()) {
                strokes.add(stroke.get());
            }
        } catch (IOException gone) {
            // a terminal that went away gives no more keys
        }
        strokes.add(QUIT);
    }

    /** The next key stroke, as {@link KeyDecoder} names it; empty when none comes in time. */
    Optional<String> next(long timeoutMillis) throws InterruptedException {
        return Optional.ofNullable(strokes.poll(timeoutMillis, TimeUnit.MILLISECONDS));
    }

    @Override
    public void close() {
        try {
            terminal.setAttributes(before);
            terminal.close();
        } catch (IOException gone) {
            // then there is nothing to give back
        }
    }
}
