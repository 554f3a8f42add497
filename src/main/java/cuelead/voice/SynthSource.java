package cuelead.voice;

import cuelead.report.Refused;
import java.util.Optional;

/**
 * Where the built-in voice has its synthesizer from: loaded by the first who needs it, or ahead of that on a thread of its
 * own. Thread-safe.
 */
public final class SynthSource {
    private final Pronunciations pronunciations;
    private Optional<Synthesizer> synthesizer = Optional.empty();

    public SynthSource(Pronunciations pronunciations) {
        this.pronunciations = pronunciations;
    }

    /** How its words are to be said. */
    public Pronunciations pronunciations() {
        return pronunciations;
    }

    /** A file-name-safe name for everything that its clips depend on but the words and the rate. */
    public String key() {
        return SynthVoice.NAME + pronunciations.key();
    }

    /** Begins to load it, and does not wait. */
    public void getReady() {
        Thread thread = new Thread(this::load, "cuelead-load-voice");
        thread.setDaemon(true);
        thread.start();
    }

    private void load() {
        try {
            get();
        } catch (Refused toldWhenNeeded) {
            // whoever needs it tries again and is told
        }
    }

    /** Waits until it is loaded. It is not thread-safe itself. */
    synchronized Synthesizer get() throws Refused {
        if (synthesizer.isEmpty()) {
            synthesizer = Optional.of(new Synthesizer(pronunciations));
        }
        return synthesizer.get();
    }
}
