package cuelead.voice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;

/**
 * A voice that remembers what it said, in memory and in a folder, so that a later start says the same words without a
 * synthesizer. A file that is damaged or was meant for other words is made again; a folder that cannot be written costs
 * nothing but speed. Thread-safe; every thread gets the same clip for the same words.
 */
public final class VoiceCache implements Voice {
    private final Voice voice;
    private final ClipStore store;
    private final Map<String, Clip> remembered = new ConcurrentHashMap<>();
    private final ConcurrentLinkedQueue<Problem> problems = new ConcurrentLinkedQueue<>();
    private final Object oneFileAtATime = new Object();
    private boolean writable = true;

    /**
     * @param voice    who speaks what is not remembered
     * @param voiceKey name, safe as a file name, of everything but the words that a clip depends on: voice, version,
     *                 rate ({@link SynthVoice#key()})
     * @param folder   where clips are kept, in a folder of the voice's own; made when the first clip is kept
     */
    public VoiceCache(Voice voice, String voiceKey, Path folder) {
        this.voice = voice;
        this.store = new ClipStore(folder.resolve(voiceKey), voiceKey);
    }

    @Override
    public Optional<Clip> say(String words) throws Refused {
        Clip known = remembered.get(words);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<Clip> clip = store.load(words);
        if (clip.isEmpty()) {
            clip = voice.say(words);
            clip.ifPresent(this::keep);
        }
        return clip.map(made -> {
            Clip earlier = remembered.putIfAbsent(words, made);
            return earlier == null ? made : earlier;
        });
    }

    @Override
    public boolean isAtHand(String words) {
        return remembered.containsKey(words) || store.has(words);
    }

    /** At most one note: that clips cannot be kept, and why. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    private void keep(Clip clip) {
        synchronized (oneFileAtATime) {
            if (writable) {
                write(clip);
            }
        }
    }

    private void write(Clip clip) {
        try {
            store.save(clip);
        } catch (IOException cannotKeep) {
            writable = false;
            if (problems.isEmpty()) {
                problems.add(cannotKeep(cannotKeep));
            }
        }
    }

    /** From now on nothing is written; a file that is being written is finished before. */
    public void writeNoMore() {
        synchronized (oneFileAtATime) {
            writable = false;
        }
    }

    private Problem cannotKeep(IOException cause) {
        return new Problem(
                Problem.Severity.NOTE,
                "words_not_kept",
                store.folder().toString(),
                0,
                0,
                "Spoken words cannot be kept here (" + cause.getMessage()
                        + "), so the next start takes a second longer.",
                Files.isDirectory(store.folder()) ? "Make room on this disk or allow writing to the folder." : "");
    }
}
