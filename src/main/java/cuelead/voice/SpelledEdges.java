package cuelead.voice;

import java.util.List;
import java.util.regex.Pattern;

/**
 * What the spelling of words tells of the sounds around their vowels: a breath that comes close is no "s", the burst
 * of a "t" belongs to its word although a silence lies between, and an "f" that is not heard was hidden by the noise. The
 * longest lengths are those that we would expect in clear speech (common knowledge, no source), the usual ones were
 * chosen on takes that {@code src/train/words/takes.py} makes.
 *
 * @param gapBeforeSeconds     longest silence between the first vowel and the sounds before it
 * @param longestBeforeSeconds from the first sound to the first vowel
 * @param gapAfterSeconds      longest silence between the last vowel and the sounds behind it
 * @param before               how long the consonants before the first vowel last
 * @param after                how long those behind the last vowel last
 */
record SpelledEdges(
        double gapBeforeSeconds, double longestBeforeSeconds, double gapAfterSeconds, Lasting before, Lasting after) {
    /** "step", "scuff", "square": a hiss, a closure, a burst. */
    private static final Pattern HISS_AND_STOP = Pattern.compile("s[ptckq].*");

    private static final Pattern HISS = Pattern.compile("(?:[sfhvz]|th|ch).*");
    private static final Pattern STOP_AT_END = Pattern.compile(".*(?:[ptkbdgx]|[ptk]e|ch|[tpk]s|ed)");

    /**
     * How long weak consonants last.
     *
     * @param leastSeconds shorter than in any hurried word
     * @param usualSeconds as most are
     */
    record Lasting(double leastSeconds, double usualSeconds) {
        /** Of sounds that no noise hides. */
        static final Lasting ANYTHING = new Lasting(0, 0);
    }

    private record Spelled(Pattern words, Lasting lasting) {
        Spelled(String words, double leastSeconds, double usualSeconds) {
            this(Pattern.compile(words), new Lasting(leastSeconds, usualSeconds));
        }
    }

    /** The first that fits counts. */
    private static final List<Spelled> BEFORE = List.of(
            new Spelled("s[tpkcqwl].*", 0.10, 0.19),
            new Spelled("(?:f[lr]|th?r|tw[^o]|sh|qu|ch).*", 0.07, 0.13),
            new Spelled("[kcp][lr].*", 0.06, 0.12),
            new Spelled("s.*", 0.05, 0.10),
            new Spelled("[fpk].*", 0.03, 0.075));

    private static final List<Spelled> AFTER =
            List.of(new Spelled(".*(?:ft|mp|ck|nt|lf|ff|ps|x|ke|p|ss|sh|ch|st)", 0.05, 0.14));

    /** @param text lower-case words with single spaces */
    static SpelledEdges of(String text) {
        return new SpelledEdges(
                HISS_AND_STOP.matcher(text).matches() ? 0.13 : 0.03,
                HISS.matcher(text).matches() ? 0.3 : 0.15,
                STOP_AT_END.matcher(text).matches() ? 0.16 : 0.05,
                lasting(BEFORE, text),
                lasting(AFTER, text));
    }

    private static Lasting lasting(List<Spelled> spellings, String text) {
        return spellings.stream()
                .filter(spelled -> spelled.words().matcher(text).matches())
                .map(Spelled::lasting)
                .findFirst()
                .orElse(Lasting.ANYTHING);
    }
}
