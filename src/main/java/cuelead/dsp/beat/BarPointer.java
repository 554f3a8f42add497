package cuelead.dsp.beat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Finds the most likely row of beats and bars through a song: the bar-pointer model with the state space of Krebs, Böck and
 * Widmer 2015, "An efficient state-space model for joint tempo and meter tracking". A pointer moves through the bar a frame
 * at a time at one of a set of tempi, which may change only where a beat begins. Inside a beat it has no choice, so that
 * the search here goes from beat to beat: the best row that ends with a beat of this length and place in the bar begun at
 * this frame (Viterbi 1967, on beats for states).
 *
 * <p>Used once.
 */
public final class BarPointer {
    private static final double SLOWEST = 55;
    private static final double FASTEST = 215;
    private static final byte NONE_BEFORE = -1;

    private final Observations heard;
    private final BeatLengths lengths;
    private final int beatsPerBar;
    /** How many frames of {@link #best} are kept. */
    private final int ring;
    /**
     * Best score of a row whose last beat begins at a frame, over no beats at all: by frame modulo ring, then beat in
     * the bar and length.
     */
    private final float[][] best;
    /** The length of the beat before, by frame, then as {@link #best}. */
    private final byte[][] lengthBefore;

    private BarPointer(Observations heard, BeatLengths lengths, int beatsPerBar) {
        this.heard = heard;
        this.lengths = lengths;
        this.beatsPerBar = beatsPerBar;
        this.ring = lengths.longest() + 1;
        this.best = new float[ring][beatsPerBar * lengths.count()];
        this.lengthBefore = new byte[heard.frames()][beatsPerBar * lengths.count()];
    }

    /**
     * Searches with one number of beats to the bar.
     *
     * @return no beats for a song that is shorter than a beat
     */
    public static BarPath search(Activations activations, int beatsPerBar) {
        return search(activations, beatsPerBar, SLOWEST, FASTEST);
    }

    /** As {@link #search(Activations, int)}, between two tempi in beats a minute */
    public static BarPath search(Activations activations, int beatsPerBar, double slowest, double fastest) {
        Observations heard = new Observations(activations);
        BeatLengths lengths = new BeatLengths(Observations.FRAMES_PER_SECOND, slowest, fastest);
        if (heard.frames() <= lengths.longest()) {
            return new BarPath(beatsPerBar, 0, List.of());
        }
        return new BarPointer(heard, lengths, beatsPerBar).run();
    }

    private BarPath run() {
        int n = lengths.count();
        float[] arriving = new float[n];
        for (int t = 0; t < heard.frames(); t++) {
            for (int b = 0; b < beatsPerBar; b++) {
                int before = (b + beatsPerBar - 1) % beatsPerBar;
                arrive(t, before, arriving);
                for (int i = 0; i < n; i++) {
                    begin(t, b * n + i, i, arriving);
                }
            }
        }
        return traceBack();
    }

    /** Scores, relative to no beat at all, of rows whose last beat ends here: by that beat's length. */
    private void arrive(int t, int beatBefore, float[] arriving) {
        int n = lengths.count();
        for (int k = 0; k < n; k++) {
            int length = lengths.frames(k);
            int from = t - length;
            arriving[k] = from < 0
                    ? Float.NEGATIVE_INFINITY
                    : best[from % ring][beatBefore * n + k] + gain(from, length, beatBefore);
        }
    }

    /** What a beat adds over a stretch without one. */
    private float gain(int from, int length, int beat) {
        int to = Math.min(heard.frames(), from + length);
        return (float) (heard.wholeBeat(from, length, beat == 0) - heard.none(from, to));
    }

    private void begin(int t, int state, int length, float[] arriving) {
        float[] transition = lengths.logTransitionTo(length);
        int first = Math.max(0, length - BeatLengths.MOST_STEPS);
        int last = Math.min(arriving.length - 1, length + BeatLengths.MOST_STEPS);
        float highest = Float.NEGATIVE_INFINITY;
        int from = NONE_BEFORE;
        for (int k = first; k <= last; k++) {
            float score = arriving[k] + transition[k];
            if (score > highest) {
                highest = score;
                from = k;
            }
        }
        float anew = (float) -Math.log(arriving.length * beatsPerBar);
        if (t <= lengths.frames(length) && anew > highest) {
            highest = anew;
            from = NONE_BEFORE;
        }
        best[t % ring][state] = highest;
        lengthBefore[t][state] = (byte) from;
    }

    private BarPath traceBack() {
        int n = lengths.count();
        int frames = heard.frames();
        float highest = Float.NEGATIVE_INFINITY;
        int t = 0;
        int state = 0;
        for (int at = frames - lengths.longest(); at < frames; at++) {
            for (int s = 0; s < beatsPerBar * n; s++) {
                int length = lengths.frames(s % n);
                float score = best[at % ring][s] + gain(at, length, s / n);
                if (at + length >= frames && score > highest) {
                    highest = score;
                    t = at;
                    state = s;
                }
            }
        }
        return new BarPath(beatsPerBar, highest, beatsBackFrom(t, state));
    }

    private BarPath.PathBeat pathBeat(int frame, int length, int beat, float change) {
        double seconds = new Peak(heard).near(frame, length) / Observations.FRAMES_PER_SECOND;
        double lengthSeconds = (double) length / Observations.FRAMES_PER_SECOND;
        return new BarPath.PathBeat(seconds, beat + 1, lengthSeconds, gain(frame, length, beat) + change);
    }

    private List<BarPath.PathBeat> beatsBackFrom(int lastFrame, int lastState) {
        int n = lengths.count();
        List<BarPath.PathBeat> beats = new ArrayList<>();
        int t = lastFrame;
        int state = lastState;
        while (true) {
            int beat = state / n;
            int length = lengths.frames(state % n);
            int before = lengthBefore[t][state];
            float change = before == NONE_BEFORE ? 0 : lengths.logTransitionTo(state % n)[before];
            beats.add(pathBeat(t, length, beat, change));
            if (before == NONE_BEFORE) {
                break;
            }
            t -= lengths.frames(before);
            state = (beat + beatsPerBar - 1) % beatsPerBar * n + before;
        }
        Collections.reverse(beats);
        return beats;
    }
}
