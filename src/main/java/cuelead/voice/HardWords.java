package cuelead.voice;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Short words whose last sound the built-in voice hardly makes (the report of all call-words has the figures), each with
 * words of the trade that it says well. They are offered, never put in the place of what is written.
 */
public final class HardWords {
    private static final Map<String, List<String>> OFFERS = Map.ofEntries(
            Map.entry("clap", List.of("clap hands")),
            Map.entry("eight", List.of("eight counts")),
            Map.entry("half", List.of("half turn")),
            Map.entry("hip", List.of("hip bump")),
            Map.entry("hips", List.of("hip bumps")),
            Map.entry("hitch", List.of("knee up", "lift knee")),
            Map.entry("hook", List.of("hook across", "cross shin")),
            Map.entry("kick", List.of("kick forward", "low kick")),
            Map.entry("lock", List.of("lock behind", "lock step")),
            Map.entry("tag", List.of("the tag", "extra counts")));

    private HardWords() {}

    /**
     * What could be called instead of a hard word, best first; empty for words that are said well, and for those of which
     * a user says how they are spoken.
     */
    public static Optional<List<String>> offers(String words, Pronunciations users) {
        return SpeakableText.of(words).filter(text -> !users.tell(text)).map(OFFERS::get);
    }
}
