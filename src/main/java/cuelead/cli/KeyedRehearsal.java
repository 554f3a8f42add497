package cuelead.cli;

import cuelead.rehearse.Prompt;
import cuelead.sound.Speakers;
import cuelead.studio.RehearsalScene;
import cuelead.studio.RehearsalView;
import java.util.Optional;

/** A rehearsal in a line of a terminal that is drawn again and again; standard output is left to the report. */
final class KeyedRehearsal implements RehearsalView {
    private final Surroundings surroundings;
    private final RawKeys keys;
    private final Screen screen;

    KeyedRehearsal(Surroundings surroundings, RawKeys keys) {
        this.surroundings = surroundings;
        this.keys = keys;
        screen = new Screen(surroundings.err(), TerminalWidth.ofOutput(surroundings.environment()) - 1);
    }

    @Override
    public void show(RehearsalScene scene) {
        screen.show(PromptLine.of(scene));
    }

    @Override
    public void prompt(Prompt prompt, double songSeconds) {
        // it is part of the line that is shown
    }

    @Override
    public void level(float peak) {
        // a line has no place for it
    }

    @Override
    public void tell(String sentence) {
        screen.clear();
        surroundings.err().print(sentence + "\r\n"); // a raw terminal does not go back by itself
        surroundings.err().flush();
    }

    @Override
    public void ask(Question question) {
        switch (question) {
            case CLICKS -> {
                tell(LinedRehearsal.CLICKS);
                tell("Enter plays them, s goes on without, q quits.");
            }
            case CLICKS_AGAIN ->
                tell(
                        "The eight clicks were not heard evenly: hold one side of the headphones close to the microphone, and"
                                + " be quiet meanwhile. Enter plays them again, s goes on without, q quits.");
            case BEGIN -> tell("Put your headphones on. Enter begins; then q ends.");
        }
    }

    @Override
    public boolean takesOrders() {
        return true;
    }

    @Override
    public Optional<Order> order(Speakers speakers, long timeoutMillis) throws InterruptedException {
        return keys.next(timeoutMillis).flatMap(KeyedRehearsal::order);
    }

    private static Optional<Order> order(String key) {
        return switch (key) {
            case "enter" -> Optional.of(Order.GO_ON);
            case "s" -> Optional.of(Order.SKIP);
            case RawKeys.QUIT -> Optional.of(Order.STOP);
            default -> Optional.empty();
        };
    }

    @Override
    public void close() {
        screen.clear();
        keys.close();
    }
}
