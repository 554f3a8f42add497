package cuelead.cli;

import cuelead.steer.Order;
import java.io.IOException;
import java.io.PrintStream;
import java.util.Optional;
import java.util.concurrent.BlockingDeque;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.InfoCmp.Capability;
import org.jline.utils.NonBlockingReader;

/**
 * The terminal's keys, taken before anything is shown: what is pressed while the practice is made ready is not written
 * on the screen, and obeyed when it begins. The terminal is as it was when this is closed.
 */
final class PlayerKeys implements AutoCloseable {
    private static final String STARTING = "Starting ...";

    private final Terminal terminal;
    private final Attributes before;
    private final PrintStream out;
    private final BlockingDeque<Order> orders = new LinkedBlockingDeque<>();
    private boolean isStarting = true;
    private boolean isClosed;

    PlayerKeys(Terminal terminal, PrintStream out) {
        this.terminal = terminal;
        this.out = out;
        before = terminal.enterRawMode();
        // whatever is written next is written over it
        out.print('\r' + STARTING + '\r');
        out.flush();
        Thread keys = new Thread(this::read, "cuelead-keys");
        keys.setDaemon(true);
        keys.start();
    }

    /** Empty where lines cannot be drawn over or keys cannot be read. */
    static Optional<PlayerKeys> open(Surroundings surroundings) {
        boolean isTerminal = surroundings.terminal().output() == cuelead.cli.Terminal.End.TERMINAL
                && surroundings.terminal().input() == cuelead.cli.Terminal.End.TERMINAL;
        return isTerminal ? open(surroundings.out()) : Optional.empty();
    }

    private static Optional<PlayerKeys> open(PrintStream out) {
        try {
            Terminal terminal =
                    TerminalBuilder.builder().system(true).dumb(false).build();
            if (canDraw(terminal)) {
                return Optional.of(new PlayerKeys(terminal, out));
            }
            terminal.close();
        } catch (IOException | IllegalStateException | LinkageError notOnThisSystem) {
            // a simpler view does
        }
        return Optional.empty();
    }

    private static boolean canDraw(Terminal terminal) {
        return !terminal.getType().startsWith(Terminal.TYPE_DUMB)
                && terminal.getStringCapability(Capability.cursor_up) != null;
    }

    private void read() {
        NonBlockingReader reader = terminal.reader(); // a closed terminal would not give it
        KeyDecoder keys = new KeyDecoder(reader::read);
        try {
            for (Optional<String> stroke = keys.next(); stroke.isPresent(); stroke = keys.next()) {
                stroke.flatMap(Order::by).ifPresent(orders::add);
            }
        } catch (IOException gone) {
            // a terminal that went away gives no more keys; the sound goes on
        }
    }

    Terminal terminal() {
        return terminal;
    }

    /** From here on what they ask for is shown. */
    void begin() {
        clearStarting();
    }

    void add(Order order) {
        orders.add(order);
    }

    Optional<Order> next() {
        return Optional.ofNullable(orders.poll());
    }

    /** Waits for an order, which {@link #next} gives. */
    void await(long timeoutMillis) throws InterruptedException {
        Order first = orders.poll(timeoutMillis, TimeUnit.MILLISECONDS);
        if (first != null) {
            orders.addFirst(first);
        }
    }

    private void clearStarting() {
        if (isStarting) {
            isStarting = false;
            out.print(" ".repeat(STARTING.length()) + '\r');
            out.flush();
        }
    }

    /** Whoever shows the practice gives the terminal back as soon as that ends; to close it again does nothing. */
    @Override
    public void close() {
        if (isClosed) {
            return;
        }
        isClosed = true;
        clearStarting();
        try {
            terminal.setAttributes(before);
            terminal.close();
        } catch (IOException gone) {
            // then there is nothing to give back
        }
    }
}
