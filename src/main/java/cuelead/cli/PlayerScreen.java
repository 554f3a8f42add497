package cuelead.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.AttributedString;
import org.jline.utils.Display;
import org.jline.utils.InfoCmp.Capability;
import org.jline.utils.ShutdownHooks;

/**
 * The player's lines on a terminal: drawn in place, sized to it, with its keys read one by one. The terminal is as it
 * was when this is closed, and also when the program ends by a signal.
 */
final class PlayerScreen implements View {
    private static final Size UNKNOWN = new Size(TerminalWidth.USUAL_COLUMNS, 24);

    private final Terminal terminal;
    private final Attributes before;
    private final Display display;
    private final SceneMaker scenes = new SceneMaker();
    private final ConcurrentLinkedQueue<Order> orders = new ConcurrentLinkedQueue<>();
    private final ShutdownHooks.Task atExit = this::restore;
    private volatile boolean isSizeNew = true;
    private Layout layout = new Layout(UNKNOWN.getColumns(), UNKNOWN.getRows());
    private Layout.Below below = Layout.Below.HINT;
    private boolean isRestored;

    private PlayerScreen(Terminal terminal) {
        this.terminal = terminal;
        before = terminal.enterRawMode();
        display = new Display(terminal, false);
        terminal.puts(Capability.cursor_invisible);
        terminal.handle(Signal.WINCH, signal -> isSizeNew = true);
        terminal.handle(Signal.CONT, signal -> goOnAfterStop());
        terminal.handle(Signal.INT, signal -> orders.add(Order.QUIT));
        terminal.handle(Signal.QUIT, signal -> orders.add(Order.QUIT));
        // a slip of the finger must not stop the music
        terminal.handle(Signal.TSTP, Terminal.SignalHandler.SIG_IGN);
        ShutdownHooks.add(atExit);
        Thread keys = new Thread(this::readKeys, "cuelead-keys");
        keys.setDaemon(true);
        keys.start();
    }

    /** Empty where lines cannot be drawn over or keys cannot be read. */
    static Optional<PlayerScreen> open() {
        try {
            Terminal terminal =
                    TerminalBuilder.builder().system(true).dumb(false).build();
            if (canDraw(terminal)) {
                return Optional.of(new PlayerScreen(terminal));
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

    private void readKeys() {
        KeyDecoder keys = new KeyDecoder(patience -> terminal.reader().read(patience));
        try {
            for (Optional<String> stroke = keys.next(); stroke.isPresent(); stroke = keys.next()) {
                stroke.flatMap(Order::by).ifPresent(orders::add);
            }
        } catch (IOException gone) {
            // a terminal that went away gives no more keys; the sound goes on
        }
    }

    @Override
    public Optional<Order> order() {
        return Optional.ofNullable(orders.poll()).map(order -> {
            // any key but its own puts the list of keys away
            boolean asksForKeys = order == Order.HELP && below == Layout.Below.HINT;
            below = asksForKeys ? Layout.Below.ALL_KEYS : Layout.Below.HINT;
            return order;
        });
    }

    @Override
    public synchronized void follow(Moment moment) {
        if (isRestored) {
            return;
        }
        fit();
        draw(layout.lines(scenes.scene(moment), below));
    }

    private void fit() {
        if (!isSizeNew) {
            return;
        }
        isSizeNew = false;
        Size size = terminal.getSize();
        Layout fitting = size.getColumns() > 0 && size.getRows() > 0
                ? new Layout(size.getColumns(), size.getRows())
                : new Layout(UNKNOWN.getColumns(), UNKNOWN.getRows());
        if (!fitting.equals(layout)) {
            // the terminal may have broken the old lines in two: nothing of them can be drawn over
            display.reset();
            terminal.puts(Capability.clear_screen);
        }
        layout = fitting;
        display.resize(layout.rows(), layout.columns());
    }

    private void draw(List<AttributedString> lines) {
        display.update(lines, 0);
    }

    private void goOnAfterStop() {
        terminal.enterRawMode();
        isSizeNew = true;
    }

    @Override
    public synchronized void tell(String sentence) {
        if (isRestored) {
            return;
        }
        draw(List.of());
        terminal.writer().println(sentence);
        display.reset();
    }

    /** Takes the lines away and gives the terminal back, once. */
    private synchronized void restore() {
        if (isRestored) {
            return;
        }
        isRestored = true;
        draw(List.of());
        terminal.puts(Capability.cursor_normal);
        terminal.flush();
        terminal.setAttributes(before);
    }

    @Override
    public void close() {
        restore();
        ShutdownHooks.remove(atExit);
        try {
            terminal.close();
        } catch (IOException gone) {
            // then there is nothing to give back
        }
    }
}
