package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.List;

/**
 * How likely dancers are to hear a song's beat at one level rather than at another: a logarithm that means something only
 * against that of another level of the same song (conditional logit; McFadden 1974, "Conditional logit analysis of
 * qualitative choice behavior"). What the network hears on the beats and between them tells most; what comes back after
 * how many beats ({@link Recurrence}) tells a slow song from one twice as fast. The weights were fitted together on 703 made
 * songs of known tempo, 54 to 204 beats a minute, none of which the benchmark has.
 */
final class LevelOdds {
    private static final double SCORE = 4.4;
    private static final double ON_BEATS = 11.2;
    private static final double HALFWAY = -4.8;
    private static final double AT_THIRDS = -3.7;
    private static final double AWAY_FROM_USUAL = 0.6;
    private static final double FAST = 3.1;
    /** By lag, as in {@link Recurrence}. */
    private static final double[] STROKES = {-0.7, 13.2, -1.1, -6.1};

    private static final double[] NOTES = {-4.1, -1.6, -1.0, 2.8};
    private static final double[] SOUND = {3.9, -3.4, 6.3, -5.4};
    /** Beats a minute, amid those of the songs. */
    private static final double USUAL_TEMPO = 110;
    /** Octaves over the usual tempo from which on fast tempi are made up for. */
    private static final double FAST_OCTAVES = 0.4;

    private final Activations heard;
    private final float[][] loudness;

    /** @param loudness of the song, by band, then frame */
    LevelOdds(Activations heard, float[][] loudness) {
        this.heard = heard;
        this.loudness = loudness;
    }

    /**
     * As a logarithm.
     *
     * @param path         the beats at this level, one at least
     * @param middleLength of its beats, in seconds
     * @param highestScore of the paths at all levels of the song; more than 0
     */
    double of(BarPath path, double middleLength, double highestScore) {
        double octaves = Math.log(60 / middleLength / USUAL_TEMPO) / Math.log(2);
        List<PathBeat> beats = path.beats();
        return SCORE * path.logScore() / highestScore
                + ON_BEATS * mean(beats, 0)
                + HALFWAY * mean(beats, 0.5)
                + AT_THIRDS * (mean(beats, 1 / 3.0) + mean(beats, 2 / 3.0)) / 2
                + AWAY_FROM_USUAL * octaves * octaves
                + FAST * Math.max(0, octaves - FAST_OCTAVES)
                + recurring(beats);
    }

    private double recurring(List<PathBeat> beats) {
        Recurrence recurrence = new Recurrence(
                loudness, beats.stream().mapToDouble(PathBeat::seconds).toArray());
        double sum = 0;
        for (int lag = 0; lag < Recurrence.lags(); lag++) {
            sum += STROKES[lag] * recurrence.strokes()[lag]
                    + NOTES[lag] * recurrence.notes()[lag]
                    + SOUND[lag] * recurrence.sound()[lag];
        }
        return sum;
    }

    /** How much of a beat the network hears at a part of each beat. */
    private double mean(List<PathBeat> beats, double part) {
        double sum = 0;
        for (PathBeat beat : beats) {
            sum += Activations.highestNear(heard.beat(), beat.seconds() + part * beat.lengthSeconds());
        }
        return sum / beats.size();
    }
}
