package cuelead.practice;

import cuelead.plan.CallSettings;
import cuelead.plan.DancedCount;
import cuelead.plan.Timeline;
import java.util.List;
import java.util.Optional;

/**
 * What is heard at a moment.
 *
 * @param version     tells whether timeline and calls are others than before
 * @param songSeconds the place in the song, at the speed at which it is played
 * @param timeline    how the dance lies over the music
 * @param calls       the calls, in order
 * @param settings    how calls are chosen
 * @param repeating   whether a section is repeated
 * @param aim         the section that is repeated, or that was jumped to while its run-up is heard
 * @param clock       the place at the song's own speed
 */
public record Heard(
        int version,
        double songSeconds,
        Timeline timeline,
        List<SpokenCall> calls,
        CallSettings settings,
        Repeating repeating,
        Optional<DancedCount> aim,
        SongClock clock) {
    /**
     * Times at the song's own speed, whatever it is played at.
     *
     * @param seconds    what is heard
     * @param endSeconds when it ends
     */
    public record SongClock(double seconds, double endSeconds) {}

    /** Whether a section is repeated. */
    public enum Repeating {
        NOTHING,
        A_SECTION
    }
}
