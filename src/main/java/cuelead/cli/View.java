package cuelead.cli;

import cuelead.practice.Practice;
import cuelead.sound.Speakers;
import java.util.Optional;

/** Where a practice that plays is followed. Used on one thread, but for {@link #close}. */
interface View extends AutoCloseable {
    /** Shows a moment; called some times a second. */
    void follow(Moment moment);

    /** Tells a sentence that stays, unless the view shows what moments tell. */
    void tell(String sentence);

    /** Waits until the user asks for something or the speakers come to the end, at most so long. */
    default void awaitOrder(Speakers speakers, long timeoutMillis) throws InterruptedException {
        speakers.awaitEnd(timeoutMillis);
    }

    /** The next thing that the user asks for, if any. */
    Optional<Order> order();

    /** Shows what came to its end, and gives the terminal back. */
    @Override
    void close();

    /** What suits where the output leads: the player's lines, one line, or a line a call. */
    static View of(Surroundings surroundings, Practice practice) {
        if (surroundings.terminal().output() != Terminal.End.TERMINAL) {
            return new CallLines(surroundings, practice);
        }
        Optional<View> player = surroundings.terminal().input() == Terminal.End.TERMINAL
                ? PlayerScreen.open(surroundings.out()).map(View.class::cast)
                : Optional.empty();
        return player.orElseGet(() -> new SingleLine(surroundings));
    }
}
