package cuelead.plan;

import cuelead.dance.Count;
import cuelead.dance.Facing;
import cuelead.time.Beats;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing said.
 *
 * @param words         what is said
 * @param kind          what it is
 * @param level         the call level in force at that place of the dance
 * @param centreSeconds when its perceptual centre sounds, seconds of the song
 * @param startsSeconds when its first audible sample sounds
 * @param endsSeconds   when its last audible sample sounds
 * @param beatSeconds   the beat that it is for; empty for count-in words, which sit on their own beats
 * @param lead          from its centre to that beat
 * @param wall          the wall of that beat, from 1; 0 before the dance
 * @param section       the section of that beat, such as {@code S1}; empty before the dance
 * @param count         the count of that beat within its section; for count-in words the count said
 * @param facing        the way that the dancer faces before that count
 */
public record Call(
        String words,
        Kind kind,
        CallLevel level,
        double centreSeconds,
        double startsSeconds,
        double endsSeconds,
        OptionalDouble beatSeconds,
        Beats lead,
        int wall,
        String section,
        Optional<Count> count,
        Facing facing) {
    /** What a call is. */
    public enum Kind {
        WORD("word"),
        FIGURE("figure"),
        SECTION("section"),
        CHANGE("change"),
        COUNT_IN("count-in");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** The same call, so much later. */
    public Call laterBy(double seconds) {
        OptionalDouble beat = beatSeconds.isPresent()
                ? OptionalDouble.of(beatSeconds.getAsDouble() + seconds)
                : OptionalDouble.empty();
        return new Call(
                words,
                kind,
                level,
                centreSeconds + seconds,
                startsSeconds + seconds,
                endsSeconds + seconds,
                beat,
                lead,
                wall,
                section,
                count,
                facing);
    }

    /** Room to move: seconds from the end of the call to its beat; empty for count-in words. */
    public OptionalDouble roomSeconds() {
        return beatSeconds.isPresent()
                ? OptionalDouble.of(beatSeconds.getAsDouble() - endsSeconds)
                : OptionalDouble.empty();
    }
}
