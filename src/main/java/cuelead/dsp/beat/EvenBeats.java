package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Evens out what single beats stray: a search puts each where it is heard, and players, and the ear, are some 10 ms off. Each
 * is moved to a line through its neighbours' times; those that lie far off the line, such as the other side of a pause, have
 * no say (locally weighted regression; Cleveland 1979, "Robust locally weighted regression and smoothing scatterplots",
 * with lines, tricube weights and two rounds of bisquare weights).
 */
final class EvenBeats {
    /** So many beats on either side have a say. */
    private static final int REACH_BEATS = 4;

    private static final int ROBUST_ROUNDS = 2;
    /** Median distances from the line, beyond which a beat has no say. */
    private static final double FAR_OFF = 6;
    /** What strays less is not told from what does not stray. */
    private static final double LEAST_STRAY_SECONDS = 0.004;
    /** What lies farther from the line is not a beat that strays but one after a pause, or a fault: it stays. */
    private static final double MOST_SECONDS = 0.06;
    /** Keeps a line defined where all others lie far off. */
    private static final double LEAST_WEIGHT = 1e-6;

    private final List<PathBeat> beats;

    private EvenBeats(List<PathBeat> beats) {
        this.beats = beats;
    }

    /** The beats at their evened times, as many; all else of them stays. */
    static List<PathBeat> of(List<PathBeat> beats) {
        EvenBeats even = new EvenBeats(beats);
        List<PathBeat> moved = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            PathBeat beat = beats.get(i);
            double seconds = even.onLine(i);
            boolean isStray = Math.abs(seconds - beat.seconds()) < MOST_SECONDS;
            moved.add(isStray ? new PathBeat(seconds, beat.beatInBar(), beat.lengthSeconds(), beat.support()) : beat);
        }
        return moved;
    }

    private double onLine(int beat) {
        int first = Math.max(0, beat - REACH_BEATS);
        int end = Math.min(beats.size(), beat + REACH_BEATS + 1);
        double[] near = new double[end - first];
        for (int i = 0; i < near.length; i++) {
            double distance = Math.abs(first + i - beat) / (REACH_BEATS + 1.0);
            near[i] = Math.pow(1 - Math.pow(distance, 3), 3);
        }
        double[] weights = near.clone();
        Line line = through(first, beat, weights);
        for (int round = 0; round < ROBUST_ROUNDS; round++) {
            double[] off = new double[near.length];
            for (int i = 0; i < near.length; i++) {
                off[i] = Math.abs(seconds(first + i) - line.at(first + i - beat));
            }
            double far = FAR_OFF * Math.max(LEAST_STRAY_SECONDS, median(off));
            for (int i = 0; i < near.length; i++) {
                double say = Math.max(LEAST_WEIGHT, 1 - off[i] / far * off[i] / far);
                weights[i] = near[i] * say * say;
            }
            line = through(first, beat, weights);
        }
        return line.at(0);
    }

    /** Seconds by beats from the one that is looked at. */
    private record Line(double middleBeats, double middleSeconds, double secondsPerBeat) {
        double at(double beats) {
            return middleSeconds + (beats - middleBeats) * secondsPerBeat;
        }
    }

    /** Weighted least squares. */
    private Line through(int first, int beat, double[] weights) {
        double sum = 0;
        double middleBeats = 0;
        double middleSeconds = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i];
            middleBeats += weights[i] * (first + i - beat);
            middleSeconds += weights[i] * seconds(first + i);
        }
        middleBeats /= sum;
        middleSeconds /= sum;
        double across = 0;
        double along = 0;
        for (int i = 0; i < weights.length; i++) {
            double beats = first + i - beat - middleBeats;
            across += weights[i] * beats * (seconds(first + i) - middleSeconds);
            along += weights[i] * beats * beats;
        }
        return new Line(middleBeats, middleSeconds, along == 0 ? 0 : across / along);
    }

    private double seconds(int beat) {
        return beats.get(beat).seconds();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
