package cuelead.steer;

import cuelead.sound.Speakers;
import java.util.Optional;

/** Where a practice that plays is followed. Used on one thread, but for {@link #close}. */
public interface View extends AutoCloseable {
    /** Shows a moment; called some times a second. */
    void follow(Moment moment);

    /** Whether each look is worth a drawing, as where motion is to be smooth. */
    default boolean isDrawnAtEveryLook() {
        return false;
    }

    /** Tells a sentence that stays, unless the view shows what moments tell. */
    void tell(String sentence);

    /** Waits until the user asks for something or the speakers come to the end, at most so long. */
    default void awaitOrder(Speakers speakers, long timeoutMillis) throws InterruptedException {
        speakers.awaitEnd(timeoutMillis);
    }

    /** The next thing that the user asks for, if any. */
    Optional<? extends Ask> order();

    /** Shows what came to its end, and gives the terminal back. */
    @Override
    void close();
}
