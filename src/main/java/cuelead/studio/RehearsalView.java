package cuelead.studio;

import cuelead.rehearse.Prompt;
import cuelead.sound.Speakers;
import java.util.Optional;

/** Where a rehearsal is followed, and from where it is ordered. Used on the thread of the rehearsal. */
public interface RehearsalView extends AutoCloseable {
    /** What is asked before it goes on. */
    enum Question {
        /** Whether clicks shall tell how late the microphone is, with the headphones held to it. */
        CLICKS,
        /** The same, after they were not heard evenly. */
        CLICKS_AGAIN,
        /** Whether the music shall begin. */
        BEGIN
    }

    /** What its user wants. */
    enum Order {
        GO_ON,
        /** Goes on without what is asked for. */
        SKIP,
        STOP
    }

    /** How the moment is shown; called some times a second while the music plays. */
    void show(RehearsalScene scene);

    /** A prompt whose moment has come. */
    void prompt(Prompt prompt, double songSeconds);

    /** How loud the microphone was since the last time: the highest sample, full scale = 1. */
    void level(float peak);

    /** Tells a sentence that stays. */
    void tell(String sentence);

    /** Asks; the answer comes as an order. Told also where none can be given. */
    void ask(Question question);

    /** Whether orders can be given here; if not, nothing is waited for. */
    boolean takesOrders();

    /** The next order; empty when none comes in time. */
    Optional<Order> order(Speakers speakers, long timeoutMillis) throws InterruptedException;

    @Override
    void close();
}
