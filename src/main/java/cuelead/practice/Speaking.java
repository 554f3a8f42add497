package cuelead.practice;

import cuelead.report.Refused;
import cuelead.voice.Clip;
import cuelead.voice.Voice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Speaks words on a thread of its own, so that nobody waits for them. Told what to do by one thread. */
final class Speaking implements AutoCloseable {
    private final Voice voice;
    private final Runnable closing;
    private final Map<String, Optional<Clip>> spoken = new ConcurrentHashMap<>();
    private Optional<Thread> thread = Optional.empty();
    private volatile Optional<Throwable> trouble = Optional.empty();
    private volatile boolean isClosed;

    /**
     * @param voice   is thread-safe
     * @param closing is run when it shall stop: the voice must not write from then on
     */
    Speaking(Voice voice, Runnable closing) {
        this.voice = voice;
        this.closing = closing;
    }

    boolean isBusy() {
        return thread.filter(Thread::isAlive).isPresent();
    }

    /** Begins to speak words, in their order; not while it is busy. */
    void begin(List<String> words) {
        Thread speaking = new Thread(() -> speak(words), "cuelead-speaking");
        speaking.setDaemon(true);
        thread = Optional.of(speaking);
        speaking.start();
    }

    private void speak(List<String> words) {
        try {
            for (String next : words) {
                if (isClosed) {
                    return;
                }
                spoken.put(next, voice.say(next));
            }
        } catch (Refused | RuntimeException | Error e) {
            trouble = Optional.of(e);
        }
    }

    /** Everything that it has said so far, and what it cannot say. */
    Map<String, Optional<Clip>> spoken() {
        return Map.copyOf(spoken);
    }

    /** Throws what kept it from speaking, if anything did. */
    void check() throws Refused {
        if (trouble.isPresent()) {
            if (trouble.get() instanceof Refused refused) {
                throw refused;
            }
            throw new IllegalStateException("a word could not be spoken", trouble.get());
        }
    }

    /** It stops after the word that is being spoken, which may take a second where a synthesizer is loaded for it. */
    @Override
    public void close() {
        isClosed = true;
        closing.run();
    }
}
