package cuelead.cli;

import cuelead.sound.Speakers;
import cuelead.steer.KeyHelp;
import cuelead.steer.Moment;
import cuelead.steer.Order;
import cuelead.steer.SceneMaker;
import cuelead.steer.View;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
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
    private static final int USUAL_ROWS = 24;

    private final Terminal terminal;
    private final PlayerKeys keys;
    private final KeyHelp help;
    private final Display display;
    private final SceneMaker scenes = new SceneMaker();
    private final Thread atExit = new Thread(this::leave, "cuelead-give-terminal-back");
    private final PrintStream out;
    /** Takes the lines away, whose first has the cursor, and shows the cursor again. */
    private final String farewell;

    private volatile boolean isSizeNew = true;
    private volatile boolean isScreenForeign;
    private Layout layout;
    private Layout.Below below = Layout.Below.HINT;
    private boolean isDrawn;
    private boolean isLeft;

    /** Takes the terminal over from its keys, which are obeyed from now on. */
    PlayerScreen(PlayerKeys keys, KeyHelp help, PrintStream out) {
        this.keys = keys;
        this.help = help;
        layout = new Layout(TerminalWidth.USUAL_COLUMNS, USUAL_ROWS, help);
        terminal = keys.terminal();
        this.out = out;
        farewell = '\r' + sequence(Capability.clr_eos) + sequence(Capability.cursor_normal);
        keys.begin();
        display = new Display(terminal, false);
        terminal.puts(Capability.cursor_invisible);
        terminal.handle(Signal.WINCH, signal -> isSizeNew = true);
        terminal.handle(Signal.CONT, signal -> goOnAfterStop());
        terminal.handle(Signal.INT, signal -> keys.add(Order.QUIT));
        terminal.handle(Signal.QUIT, signal -> keys.add(Order.QUIT));
        // a slip of the finger must not stop the music
        terminal.handle(Signal.TSTP, Terminal.SignalHandler.SIG_IGN);
        Runtime.getRuntime().addShutdownHook(atExit);
    }

    @Override
    public void awaitOrder(Speakers speakers, long timeoutMillis) throws InterruptedException {
        keys.await(timeoutMillis);
    }

    @Override
    public Optional<Order> order() {
        return keys.next().map(order -> {
            // any key but its own puts the list of keys away
            below = order == Order.HELP ? layout.turned(below) : Layout.Below.HINT;
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
        boolean isKnown = size.getColumns() > 0 && size.getRows() > 0;
        Layout fitting = isKnown
                ? new Layout(size.getColumns(), size.getRows(), help)
                : new Layout(TerminalWidth.USUAL_COLUMNS, USUAL_ROWS, help);
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
        keys.close();
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
