package cuelead.plan;

import java.util.Optional;

/** How long words take, as a value handed to the plan. */
@FunctionalInterface
public interface WordTimes {
    /** The length of some words, or empty where they cannot be spoken. Equal words give equal answers. */
    Optional<Length> of(String words);

    /**
     * Seconds that sound before and after the perceptual centre; both 0 or more.
     *
     * @param beforeSeconds from the first audible sample to the centre
     * @param afterSeconds  from the centre to the last audible sample
     */
    record Length(double beforeSeconds, double afterSeconds) {
        public Length {
            if (!(beforeSeconds >= 0 && afterSeconds >= 0)) {
                throw new IllegalArgumentException("word length below 0 s: " + beforeSeconds + ", " + afterSeconds);
            }
        }
    }
}
