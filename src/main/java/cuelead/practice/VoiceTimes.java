package cuelead.practice;

import cuelead.plan.WordTimes;
import cuelead.report.Refused;
import cuelead.voice.Clip;
import cuelead.voice.Voice;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The lengths of words as one voice says them, asked for by the plan; keeps the clips. Used on one thread. */
final class VoiceTimes implements WordTimes {
    private final Voice voice;
    private final Map<String, Optional<Clip>> clips = new HashMap<>();
    private Optional<Refused> refusal = Optional.empty();

    VoiceTimes(Voice voice) {
        this.voice = voice;
    }

    @Override
    public Optional<Length> of(String words) {
        return clips.computeIfAbsent(words, this::say)
                .map(clip -> new Length(
                        clip.centreSeconds() - clip.onsetSeconds(), clip.endSeconds() - clip.centreSeconds()));
    }

    /** The clip of words that the plan has used. */
    Clip clip(String words) {
        return clips.get(words).orElseThrow();
    }

    /** All words that were asked for, those without a clip too. */
    Set<String> asked() {
        return new TreeSet<>(clips.keySet());
    }

    /** Throws what kept the voice from speaking, if anything did. */
    void check() throws Refused {
        if (refusal.isPresent()) {
            throw refusal.get();
        }
    }

    private Optional<Clip> say(String words) {
        try {
            return voice.say(words);
        } catch (Refused e) {
            refusal = Optional.of(e);
            return Optional.empty();
        }
    }
}
