package cuelead.rehearse;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * What should be called when.
 *
 * @param word        lower case, single spaces
 * @param seconds     when its perceptual centre should be heard, seconds of the song
 * @param beatSeconds the beat that it is for; empty for count-in words
 * @param wall        from 1; 0 before the dance, or where nothing is known of walls
 * @param section     such as {@code S1}; empty where nothing is known of sections
 * @param beatLength  seconds of a beat there; empty where it is not known
 * @param count       of its section that it is for, such as {@code 4&}; empty where nothing is known of counts
 */
public record PlannedCall(
        String word,
        double seconds,
        OptionalDouble beatSeconds,
        int wall,
        String section,
        OptionalDouble beatLength,
        String count) {
    private static final Pattern TURNING =
            Pattern.compile(".*\\b(turn|quarter|half|full|pivot|unwind|monterey|spin|three quarters?)\\b.*");

    /**
     * A call whose lead is known.
     *
     * @param leadBeats from its centre to its beat; 0 where nothing is known of it
     */
    public static PlannedCall of(
            String word, double seconds, OptionalDouble beatSeconds, double leadBeats, int wall, String section) {
        boolean isKnown = beatSeconds.isPresent() && leadBeats > 0;
        OptionalDouble length =
                isKnown ? OptionalDouble.of((beatSeconds.getAsDouble() - seconds) / leadBeats) : OptionalDouble.empty();
        String plain = word.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
        return new PlannedCall(plain, seconds, beatSeconds, wall, section, length, "");
    }

    PlannedCall withBeatLength(OptionalDouble lengthSeconds) {
        return new PlannedCall(word, seconds, beatSeconds, wall, section, lengthSeconds, count);
    }

    /** The same, for a count. */
    public PlannedCall withCount(String other) {
        return new PlannedCall(word, seconds, beatSeconds, wall, section, beatLength, other);
    }

    /** Whether it is for a turn. */
    boolean isTurn() {
        return TURNING.matcher(word).matches();
    }
}
