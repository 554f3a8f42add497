package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.List;

/**
 * How likely dancers are to hear a song's beat at one level rather than at another: a logarithm that means something only
 * against that of another level of the same song (conditional logit; McFadden 1974, "Conditional logit analysis of
 * qualitative choice behavior"). The weights were fitted on 297 made songs of known tempo, 54 to 204 beats a minute, none of
 * which any score is told for.
 */
final class LevelOdds {
    private static final double SCORE = 2.9;
    private static final double ON_BEATS = 8.2;
    private static final double HALFWAY = -4.7;
    private static final double AT_THIRDS = -3.3;
    private static final double AWAY_FROM_USUAL = -0.5;
    private static final double FAST = 1.0;
    /** Beats a minute, amid those of the songs. */
    private static final double USUAL_TEMPO = 110;
    /** Octaves over the usual tempo from which on fast tempi are made up for. */
    private static final double FAST_OCTAVES = 0.4;

    private LevelOdds() {}

    /**
     * As a logarithm.
     *
     * @param path         the beats at this level, one at least
     * @param middleLength of its beats, in seconds
     * @param highestScore of the paths at all levels of the song; more than 0
     */
    static double of(BarPath path, double middleLength, double highestScore, Activations heard) {
        double octaves = Math.log(60 / middleLength / USUAL_TEMPO) / Math.log(2);
        List<PathBeat> beats = path.beats();
        return SCORE * path.logScore() / highestScore
                + ON_BEATS * mean(beats, 0, heard)
                + HALFWAY * mean(beats, 0.5, heard)
                + AT_THIRDS * (mean(beats, 1 / 3.0, heard) + mean(beats, 2 / 3.0, heard)) / 2
                + AWAY_FROM_USUAL * octaves * octaves
                + FAST * Math.max(0, octaves - FAST_OCTAVES);
    }

    /** How much of a beat the network hears at a part of each beat. */
    private static double mean(List<PathBeat> beats, double part, Activations heard) {
        double sum = 0;
        for (PathBeat beat : beats) {
            sum += Activations.highestNear(heard.beat(), beat.seconds() + part * beat.lengthSeconds());
        }
        return sum / beats.size();
    }
}
