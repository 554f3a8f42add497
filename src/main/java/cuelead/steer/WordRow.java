package cuelead.steer;

import cuelead.report.Refused;
import cuelead.voice.RecordingSession;
import cuelead.voice.TakeVerdict;
import cuelead.voice.TakeVerdict.Fault;
import cuelead.voice.TakeVerdict.Use;
import java.util.Optional;

/**
 * Records the words that are asked for one after the other by itself: keeps what is good, and tries each other word three
 * times. Used on one thread.
 */
public final class WordRow {
    private static final int TRIES = 3;

    private final WordDesk desk;
    private final RecordingSession session;
    private int tries;

    /** From the word in hand on. */
    public WordRow(WordDesk desk) {
        this.desk = desk;
        session = desk.session();
    }

    public boolean isOver() {
        return session.isOver();
    }

    /**
     * To be called some times a second, instead of the desk's own.
     *
     * @return what is to be said of a take that was just made
     * @throws Refused also when the microphone gives nothing at all, three times
     */
    public Optional<TakeVerdict> tick() throws Refused, InterruptedException {
        Optional<TakeVerdict> verdict = desk.tick();
        if (verdict.isPresent()) {
            tries++;
            if (verdict.get().fault() == Fault.DEAD && tries >= TRIES) {
                throw new Refused(verdict.get().fault().sentence() + " All takes so far are kept.");
            }
            goOn(verdict.get().fault().use());
        } else if (!isOver() && !desk.isTaking()) {
            desk.record();
        }
        return verdict;
    }

    /** What is only doubtful is better than nothing, when it comes to that. */
    private void goOn(Use use) throws Refused, InterruptedException {
        if (use == Use.GOOD || (use == Use.DOUBTFUL && tries >= TRIES)) {
            desk.keep();
            tries = 0;
        } else if (tries >= TRIES) {
            session.skipToAsked();
            desk.ready();
            tries = 0;
        } else {
            desk.record();
        }
    }
}
