package cuelead.song;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import cuelead.time.BeatGrid;
import java.util.ArrayList;
import java.util.List;

/** Whether a beat file can belong to its song. */
public final class BeatFit {
    /** A stretch without beats at either end is worth a word from here on: share of the song, and seconds. */
    private static final double LARGE_SHARE = 0.2;

    private static final double LARGE_SECONDS = 15;
    /** Beats that cover less of a song than this cannot be all of its beats. */
    private static final double LEAST_SHARE = 0.5;

    private BeatFit() {}

    /**
     * Compares the beats with the song's length.
     *
     * @param beatFile    its name, as the user is told it
     * @param songSeconds length of the song
     * @return an error when most beats do not fit, or when they cover less than half of the song; warnings about some beats beyond the song's end and about a
     *     large part of the song without beats
     */
    public static List<Problem> check(String beatFile, BeatGrid beats, double songSeconds) {
        int outside = 0;
        for (int i = 0; i < beats.size(); i++) {
            double seconds = beats.beatSeconds(i);
            outside += seconds < 0 || seconds >= songSeconds ? 1 : 0;
        }
        if (2 * outside > beats.size()) {
            return List.of(new Problem(
                    Severity.ERROR,
                    "beats_do_not_fit",
                    beatFile,
                    0,
                    0,
                    outside + " of " + beats.size() + " beats lie outside the song, which is "
                            + Clock.minutesSeconds(songSeconds) + " long.",
                    "This looks like the beat file of another song; rename it or take it away."));
        }
        double covered = beats.beatSeconds(beats.size() - 1) - beats.beatSeconds(0);
        if (covered < LEAST_SHARE * songSeconds) {
            return List.of(new Problem(
                    Severity.ERROR,
                    "beats_do_not_fit",
                    beatFile,
                    0,
                    0,
                    "The beats cover only " + Clock.minutesSeconds(covered) + " of the song, which is "
                            + Clock.minutesSeconds(songSeconds) + " long.",
                    "Make the beat file from this recording, from beginning to end."));
        }
        List<Problem> problems = new ArrayList<>();
        if (outside > 0) {
            problems.add(warning(
                    "beats_outside",
                    beatFile,
                    outside + (outside == 1 ? " beat lies" : " beats lie") + " outside the song, which is "
                            + Clock.minutesSeconds(songSeconds) + " long.",
                    "See that the beat file was made from this recording."));
        }
        addUncovered(problems, beatFile, "before the first beat", beats.beatSeconds(0), songSeconds);
        double after = songSeconds - beats.beatSeconds(beats.size() - 1);
        addUncovered(problems, beatFile, "after the last beat", after, songSeconds);
        return List.copyOf(problems);
    }

    private static void addUncovered(
            List<Problem> problems, String beatFile, String where, double seconds, double songSeconds) {
        if (seconds > LARGE_SECONDS && seconds > LARGE_SHARE * songSeconds) {
            problems.add(warning(
                    "beats_missing",
                    beatFile,
                    Clock.minutesSeconds(seconds) + " of the song's " + Clock.minutesSeconds(songSeconds) + " lie "
                            + where + ", where nothing can be called.",
                    "See that the beat file was made from this recording, to its end."));
        }
    }

    private static Problem warning(String kind, String beatFile, String sentence, String tryThis) {
        return new Problem(Severity.WARNING, kind, beatFile, 0, 0, sentence, tryThis);
    }
}
