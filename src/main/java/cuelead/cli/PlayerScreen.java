package cuelead.cli;

import cuelead.sound.Speakers;
import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingDeque;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.AttributedString;
import org.jline.utils.Curses;
import org.jline.utils.Display;
import org.jline.utils.InfoCmp.Capability;

/**
 * The player's lines on a terminal: drawn in place, sized to it, with its keys read one by one. The terminal is as it
 * was when this is closed, and also when the program ends by a signal.
 */
final class PlayerScreen implements View {
    /** Where a terminal does not say its size. */
    private static final Layout UNKNOWN = new Layout(TerminalWidth.USUAL_COLUMNS, 24);

    private final Terminal terminal;
    private final Attributes before;
    private final Display display;
    private final SceneMaker scenes = new SceneMaker();
    private final BlockingDeque<Order> orders = new LinkedBlockingDeque<>();
    private final Thread atExit = new Thread(this::leave, "cuelead-give-terminal-back");
    private final PrintStream out;
    /** Takes the lines away, whose first has the cursor, and shows the cursor again. */
    private final String farewell;

    private volatile boolean isSizeNew = true;
    private volatile boolean isScreenForeign;
    private Layout layout = UNKNOWN;
    private Layout.Below below = Layout.Below.HINT;
    private boolean isDrawn;
    private boolean isLeft;

    private PlayerScreen(Terminal terminal, PrintStream out) {
        this.terminal = terminal;
        this.out = out;
        farewell = '\r' + sequence(Capability.clr_eos) + sequence(Capability.cursor_normal);
        before = terminal.enterRawMode();
        display = new Display(terminal, false);
        terminal.puts(Capability.cursor_invisible);
        terminal.handle(Signal.WINCH, signal -> isSizeNew = true);
        terminal.handle(Signal.CONT, signal -> goOnAfterStop());
        terminal.handle(Signal.INT, signal -> orders.add(Order.QUIT));
        terminal.handle(Signal.QUIT, signal -> orders.add(Order.QUIT));
        // a slip of the finger must not stop the music
        terminal.handle(Signal.TSTP, Terminal.SignalHandler.SIG_IGN);
        Runtime.getRuntime().addShutdownHook(atExit);
        Thread keys = new Thread(this::readKeys, "cuelead-keys");
        keys.setDaemon(true);
        keys.start();
    }

    /** Empty where lines cannot be drawn over or keys cannot be read. */
    static Optional<PlayerScreen> open(PrintStream out) {
        try {
            Terminal terminal =
                    TerminalBuilder.builder().system(true).dumb(false).build();
            if (canDraw(terminal)) {
                return Optional.of(new PlayerScreen(terminal, out));
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
    public void awaitOrder(Speakers speakers, long timeoutMillis) throws InterruptedException {
        Order first = orders.poll(timeoutMillis, TimeUnit.MILLISECONDS);
        if (first != null) {
            orders.addFirst(first);
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
        if (isLeft) {
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
        Layout fitting =
                size.getColumns() > 0 && size.getRows() > 0 ? new Layout(size.getColumns(), size.getRows()) : UNKNOWN;
        if (isScreenForeign || (isDrawn && !fitting.equals(layout))) {
            // others have written there, or the old lines are broken in two: nothing of them can be drawn over
            isScreenForeign = false;
            display.reset();
            terminal.puts(Capability.clear_screen);
        }
        layout = fitting;
        display.resize(layout.rows(), layout.columns());
    }

    private void draw(List<AttributedString> lines) {
        display.update(lines, 0);
        isDrawn = true;
    }

    private void goOnAfterStop() {
        terminal.enterRawMode();
        terminal.puts(Capability.cursor_invisible);
        isScreenForeign = true;
        isSizeNew = true;
    }

    /** It is among its lines as long as it is true. */
    @Override
    public void tell(String sentence) {}

    /** Once, past the library: it gives the terminal up by itself when the program is ended, and takes no text then. */
    private synchronized void leave() {
        if (!isLeft) {
            isLeft = true;
            out.print(farewell);
            out.flush();
        }
    }

    @Override
    public void close() {
        leave();
        forgetExit();
        try {
            terminal.setAttributes(before);
            terminal.close();
        } catch (IOException gone) {
            // then there is nothing to give back
        }
    }

    private void forgetExit() {
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            // the program is ending already, and the hook with it
        }
    }

    private String sequence(Capability capability) {
        return Optional.ofNullable(terminal.getStringCapability(capability))
                .map(Curses::tputs)
                .orElse("");
    }
}
