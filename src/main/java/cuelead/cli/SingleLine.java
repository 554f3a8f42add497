package cuelead.cli;

import cuelead.steer.Moment;
import cuelead.steer.Order;
import cuelead.steer.SceneMaker;
import cuelead.steer.View;
import java.util.Optional;

/** One line of a terminal whose keys cannot be read, drawn again and again. */
final class SingleLine implements View {
    private final Surroundings surroundings;
    private final Screen screen;
    private final SceneMaker scenes = new SceneMaker();
    private final int columns;
    private final Thread clearAtExit;

    SingleLine(Surroundings surroundings) {
        this.surroundings = surroundings;
        columns = TerminalWidth.ofOutput(surroundings.environment()) - 1;
        screen = new Screen(surroundings.out(), columns);
        clearAtExit = new Thread(screen::clear, "cuelead-clear-line");
        Runtime.getRuntime().addShutdownHook(clearAtExit);
    }

    @Override
    public void follow(Moment moment) {
        screen.show(OneLine.of(scenes.scene(moment), columns));
    }

    @Override
    public void tell(String sentence) {
        screen.clear();
        surroundings.err().println(sentence);
    }

    @Override
    public Optional<Order> order() {
        return Optional.empty();
    }

    @Override
    public void close() {
        screen.clear();
        try {
            Runtime.getRuntime().removeShutdownHook(clearAtExit);
        } catch (IllegalStateException e) {
            // the program is ending already, and the hook with it
        }
    }
}
