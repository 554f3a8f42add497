package cuelead.voice;

import cuelead.report.Refused;
import java.util.Optional;

/** Something that can say words. Each call word or phrase becomes one clip; equal words give equal clips. */
public interface Voice {
    /**
     * The clip of some words at this voice's sample rate, trimmed, faded and levelled.
     *
     * @param words one word or a short phrase, as the call plan has it
     * @return empty where this voice cannot say them
     * @throws Refused when the voice itself cannot be used (a broken recording, no synthesizer)
     */
    Optional<Clip> say(String words) throws Refused;

    /** Whether its answer is there without speaking: it takes no longer than reading a small file. */
    default boolean isAtHand(String words) throws Refused {
        return false;
    }
}
