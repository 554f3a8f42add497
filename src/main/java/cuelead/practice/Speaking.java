package cuelead.practice;

import cuelead.report.Refused;
import cuelead.voice.Clip;
import cuelead.voice.Voice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;

/** Speaks words on a thread of its own, so that nobody waits for them. Told what to do by one thread. */
final class Speaking implements AutoCloseable {
    /** A word is spoken within some milliseconds; a synthesizer that is being loaded may take a second or two. */
    private static final long LONGEST_WORD_MILLIS = TimeUnit.SECONDS.toMillis(4);

    private final Voice voice;
    private final Map<String, Optional<Clip>> spoken = new ConcurrentHashMap<>();
    private Optional<Thread> thread = Optional.empty();
    private volatile Optional<Throwable> trouble = Optional.empty();
    private volatile boolean isClosed;

    /** @param voice is thread-safe */
    Speaking(Voice voice) {
        this.voice = voice;
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

    /** Waits until the word that is being spoken is said and kept; the others are left out. */
    @Override
    public void close() {
        isClosed = true;
        try {
            if (thread.isPresent()) {
                thread.get().join(LONGEST_WORD_MILLIS);
            }
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
