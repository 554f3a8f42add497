package cuelead.dsp.beat;

import java.util.Arrays;

/**
 * What a listener has tapped for a few bars, a tap a beat. People tap some 20 to 50 ms before the beat (Repp 2005,
 * "Sensorimotor synchronization: a review of the tapping literature", section on negative mean asynchrony) and scatter
 * by as much, so taps say which beats are meant and not where they lie.
 */
public final class Taps {
    /** Fewer say too little. */
    public static final int FEWEST = 8;

    private static final double EARLY_SECONDS = 0.03;
    /** A beat is looked for so near to its tap, as standard deviation. */
    private static final double SCATTER_SECONDS = 0.05;
    /** What is tapped is a beat, however little is heard there. */
    private static final double LEAST = 0.6;
    /** The tempo of the song about that of the taps. */
    private static final double SLOWEST = 0.85;

    private static final double FASTEST = 1.18;

    private final double[] seconds;

    /**
     * @param seconds rising, from the song's first frame; at least {@value #FEWEST}
     */
    public Taps(double... seconds) {
        if (seconds.length < FEWEST) {
            throw new IllegalArgumentException(seconds.length + " taps");
        }
        for (int i = 1; i < seconds.length; i++) {
            if (!(seconds[i] > seconds[i - 1])) {
                throw new IllegalArgumentException("tap " + i + " is not after the one before");
            }
        }
        this.seconds = seconds.clone();
    }

    public int count() {
        return seconds.length;
    }

    /** When a tap came, 0 = the first. */
    public double seconds(int tap) {
        return seconds[tap];
    }

    public double lastSeconds() {
        return seconds[seconds.length - 1];
    }

    /** From tap to tap in the middle: one that was left out or came twice changes nothing. */
    public double beatSeconds() {
        double[] gaps = new double[seconds.length - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = seconds[i + 1] - seconds[i];
        }
        Arrays.sort(gaps);
        return gaps[gaps.length / 2];
    }

    double slowest() {
        return 60 / beatSeconds() * SLOWEST;
    }

    double fastest() {
        return 60 / beatSeconds() * FASTEST;
    }

    /** What was heard, with beats at the taps and none between them; elsewhere as it was. */
    Activations over(Activations heard) {
        float[] beat = heard.beat().clone();
        float[] downbeat = heard.downbeat().clone();
        int from = frame(seconds[0] - beatSeconds() / 2);
        int to = Math.min(beat.length, frame(lastSeconds() + beatSeconds() / 2));
        for (int i = Math.max(0, from); i < to; i++) {
            double nearness = nearness((double) i / BandSpectrum.FRAMES_PER_SECOND);
            beat[i] = (float) (nearness * Math.max(LEAST, beat[i]));
            downbeat[i] = Math.min(downbeat[i], beat[i]);
        }
        return new Activations(beat, downbeat, heard.phrase());
    }

    private static int frame(double seconds) {
        return (int) Math.round(seconds * BandSpectrum.FRAMES_PER_SECOND);
    }

    private double nearness(double at) {
        double least = Double.MAX_VALUE;
        for (double tap : seconds) {
            least = Math.min(least, Math.abs(tap + EARLY_SECONDS - at));
        }
        return Math.exp(-least * least / (2 * SCATTER_SECONDS * SCATTER_SECONDS));
    }
}
