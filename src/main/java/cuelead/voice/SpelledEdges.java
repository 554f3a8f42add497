package cuelead.voice;

import java.util.regex.Pattern;

/**
 * What the spelling of words tells of the sounds around their vowels: a breath that comes close is no "s", and the burst
 * of a "t" belongs to its word although a silence lies between. The lengths are the longest that we would expect in clear
 * speech (common knowledge, no source).
 *
 * @param gapBeforeSeconds     longest silence between the first vowel and the sounds before it
 * @param longestBeforeSeconds from the first sound to the first vowel
 * @param gapAfterSeconds      longest silence between the last vowel and the sounds behind it
 */
record SpelledEdges(double gapBeforeSeconds, double longestBeforeSeconds, double gapAfterSeconds) {
    /** "step", "scuff", "square": a hiss, a closure, a burst. */
    private static final Pattern HISS_AND_STOP = Pattern.compile("s[ptckq].*");

    private static final Pattern HISS = Pattern.compile("(?:[sfhvz]|th|ch).*");
    private static final Pattern STOP_AT_END = Pattern.compile(".*(?:[ptkbdgx]|[ptk]e|ch|[tpk]s|ed)");

    /** @param text lower-case words with single spaces */
    static SpelledEdges of(String text) {
        return new SpelledEdges(
                HISS_AND_STOP.matcher(text).matches() ? 0.13 : 0.03,
                HISS.matcher(text).matches() ? 0.3 : 0.15,
                STOP_AT_END.matcher(text).matches() ? 0.16 : 0.05);
    }
}
