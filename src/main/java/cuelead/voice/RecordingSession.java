package cuelead.voice;

import cuelead.time.SampleRate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Words that are recorded one after the other: which one it is now, the take that was just made of it, and its mark. Knows
 * no device and no file. For one thread.
 */
public final class RecordingSession {
    private final List<String> words;
    private final Set<String> recorded;
    private final Asked asked;
    private int at;
    private Optional<Taken> taken = Optional.empty();

    /** Which words are asked for. */
    public enum Asked {
        MISSING,
        /** Those that are recorded, too. */
        ALL
    }

    /** A take, how it was judged, and where it is marked now. */
    public record Taken(MonoSound sound, TakeVerdict verdict, Optional<Mark> mark) {}

    /**
     * Begins with the first word that is asked for.
     *
     * @param words    all that are needed, each as {@link SpeakableText} has it
     * @param recorded those that there are already
     */
    public RecordingSession(List<String> words, List<String> recorded, Asked asked) {
        this.asked = asked;
        this.words = List.copyOf(words);
        this.recorded = new LinkedHashSet<>(recorded);
        goOnToAsked();
    }

    /** Whether it is behind the last word. */
    public boolean isOver() {
        return at >= words.size();
    }

    /** The word now; there must be one. */
    public String word() {
        return words.get(at);
    }

    /** Its number, from 1. */
    public int number() {
        return at + 1;
    }

    /** All words. */
    public List<String> words() {
        return words;
    }

    public int count() {
        return words.size();
    }

    public boolean isRecorded() {
        return recorded.contains(word());
    }

    /** Judges a take of the word; it takes the place of the take before. */
    public TakeVerdict take(MonoSound sound) {
        TakeVerdict verdict = TakeVerdict.of(sound, word());
        taken = Optional.of(new Taken(sound, verdict, verdict.mark()));
        return verdict;
    }

    /** The word's recording, instead of a take that was made now. */
    public void show(MonoSound sound, Mark mark) {
        taken = Optional.of(new Taken(sound, TakeVerdict.of(sound, word()), Optional.of(mark)));
    }

    /** The take since this word began, or its recording. */
    public Optional<Taken> taken() {
        return taken;
    }

    /** Moves the mark of the take within it; from then on it is one by ear. */
    public void nudge(double laterSeconds) {
        taken = taken.map(now -> new Taken(
                now.sound(),
                now.verdict(),
                now.mark()
                        .map(mark -> new Mark(
                                Math.max(0, Math.min(mark.lengthSeconds(), mark.centreSeconds() + laterSeconds)),
                                mark.lengthSeconds(),
                                Mark.By.EAR))));
    }

    /** The take as it will be heard, with its centre where it is marked; empty where there is none that can be used. */
    public Optional<Clip> clip(SampleRate rate) {
        return taken.filter(now -> now.mark().isPresent()).flatMap(now -> {
            MonoSound clean = Rumble.removed(now.sound());
            double centre = now.mark().orElseThrow().centreSeconds();
            return WordInTake.of(clean, word())
                    .map(found -> new RecordedClips(rate).cut(word(), clean, found.span(), centre));
        });
    }

    /** The take is the recording from now on, and the next word that is asked for comes. */
    public void accepted() {
        recorded.add(word());
        at++;
        taken = Optional.empty();
        goOnToAsked();
    }

    /** The next word, whether or not this one is recorded. */
    public void skip() {
        at++;
        taken = Optional.empty();
    }

    /** The next word that is asked for, whether or not this one is recorded. */
    public void skipToAsked() {
        skip();
        goOnToAsked();
    }

    /** The word before. */
    public void back() {
        at = Math.max(0, at - 1);
        taken = Optional.empty();
    }

    /** Goes to one of its words. */
    public void goTo(String word) {
        if (!words.contains(word)) {
            throw new IllegalArgumentException(word);
        }
        at = words.indexOf(word);
        taken = Optional.empty();
    }

    /** A word has no recording any more. */
    public void forget(String word) {
        recorded.remove(word);
    }

    private void goOnToAsked() {
        while (!isOver() && asked == Asked.MISSING && recorded.contains(word())) {
            at++;
        }
    }

    /** The words that are not recorded, in their order. */
    public List<String> missing() {
        return words.stream().filter(word -> !recorded.contains(word)).toList();
    }
}
