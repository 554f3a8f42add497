package cuelead.practice;

import cuelead.plan.WordTimes;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.SpeakableText;
import cuelead.voice.StandIn;
import cuelead.voice.Voice;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The lengths of words as one voice says them, asked for by the plan; keeps the clips. Who waits for no voice gets a guess
 * of the words that are not {@linkplain Voice#isAtHand at hand}, and {@link #learn}s them later. Used on one thread.
 */
final class VoiceTimes implements WordTimes {
    private final Voice voice;
    /** Of the guesses; empty = every word is waited for. */
    private final Optional<SampleRate> guessing;

    private final Map<String, Optional<Clip>> clips = new HashMap<>();
    private final Map<String, Clip> standIns = new HashMap<>();
    private Set<String> guessed = new HashSet<>();
    private Optional<Refused> refusal = Optional.empty();

    private VoiceTimes(Voice voice, Optional<SampleRate> guessing) {
        this.voice = voice;
        this.guessing = guessing;
    }

    /** Each word is spoken when it is asked for. */
    static VoiceTimes spoken(Voice voice) {
        return new VoiceTimes(voice, Optional.empty());
    }

    /**
     * Nothing is spoken because it is asked for.
     *
     * @param rate of the voice
     */
    static VoiceTimes atHand(Voice voice, SampleRate rate) {
        return new VoiceTimes(voice, Optional.of(rate));
    }

    @Override
    public Optional<Length> of(String words) {
        Optional<Clip> known = clips.get(words);
        if (known == null) {
            known = isGuessed(words) ? Optional.of(guess(words)) : say(words);
        }
        return known.map(clip ->
                new Length(clip.centreSeconds() - clip.onsetSeconds(), clip.endSeconds() - clip.centreSeconds()));
    }

    private boolean isGuessed(String words) {
        return standIns.containsKey(words)
                || (guessing.isPresent() && SpeakableText.of(words).isPresent() && !isAtHand(words));
    }

    private boolean isAtHand(String words) {
        try {
            return voice.isAtHand(words);
        } catch (Refused e) {
            return true; // speaking tells
        }
    }

    private Clip guess(String words) {
        guessed.add(words);
        return standIns.computeIfAbsent(words, unspoken -> StandIn.of(unspoken, guessing.orElseThrow()));
    }

    /** Filled from now on with the words that are guessed, until it is asked again. */
    Set<String> guessesFromNow() {
        guessed = new HashSet<>();
        return guessed;
    }

    /** Whether words need not be guessed. */
    boolean knows(String words) {
        return clips.containsKey(words);
    }

    /** The same of several. */
    boolean knowsAll(Collection<String> words) {
        return clips.keySet().containsAll(words);
    }

    /** Takes what has been spoken meanwhile. */
    void learn(Map<String, Optional<Clip>> spoken) {
        spoken.forEach(this::keep);
    }

    /** Speaks what is not known of some words. */
    void learnNow(Collection<String> words) {
        words.stream().filter(asked -> !knows(asked)).forEach(this::say);
    }

    /** The clip of words that the plan has used, or what stands in for it. */
    Clip clip(String words) {
        return knows(words) ? clips.get(words).orElseThrow() : standIns.get(words);
    }

    /** All words that were asked for, those without a clip too. */
    Set<String> asked() {
        Set<String> asked = new TreeSet<>(clips.keySet());
        asked.addAll(standIns.keySet());
        return asked;
    }

    /** Throws what kept the voice from speaking, if anything did. */
    void check() throws Refused {
        if (refusal.isPresent()) {
            throw refusal.get();
        }
    }

    private Optional<Clip> say(String words) {
        Optional<Clip> clip = Optional.empty();
        try {
            clip = voice.say(words);
        } catch (Refused e) {
            refusal = Optional.of(e);
        }
        keep(words, clip);
        return clip;
    }

    private void keep(String words, Optional<Clip> clip) {
        clips.put(words, clip);
        standIns.remove(words);
    }
}
