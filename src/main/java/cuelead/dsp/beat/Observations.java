package cuelead.dsp.beat;

/**
 * How well the network's activations fit a beat, the first beat of a bar, or no beat, summed from the song's beginning, so
 * that any stretch costs one subtraction (Krebs, Böck and Widmer 2015, section 3.3: of a beat's frames the first
 * sixteenth is the beat). Works at twice the network's frames a second.
 */
final class Observations {
    static final int FRAMES_PER_SECOND = 2 * BandSpectrum.FRAMES_PER_SECOND;
    /** Lambda-o of the paper: the part of a beat in which it is heard, as a divisor. */
    private static final int OBSERVED_PART = 16;
    /** Keeps logarithms finite. */
    private static final double FLOOR = 1e-3;

    private final int frames;
    private final double[] beat;
    private final double[] none;
    private final double[] downbeat;
    private final double[] otherBeat;
    private final double[] overNone;

    Observations(Activations heard) {
        frames = Math.max(0, 2 * heard.frames() - 1);
        beat = new double[frames];
        none = new double[frames + 1];
        downbeat = new double[frames + 1];
        otherBeat = new double[frames + 1];
        overNone = new double[frames + 1];
        for (int i = 0; i < frames; i++) {
            double b = clip(between(heard.beat(), i));
            double d = clip(Math.min(between(heard.downbeat(), i), b));
            beat[i] = b;
            none[i + 1] = none[i] + Math.log((1 - b) / (OBSERVED_PART - 1));
            downbeat[i + 1] = downbeat[i] + Math.log(d);
            otherBeat[i + 1] = otherBeat[i] + Math.log(Math.max(b - d, FLOOR));
            overNone[i + 1] = overNone[i] + Math.log(b) - Math.log((1 - b) / (OBSERVED_PART - 1));
        }
    }

    private static double between(float[] values, int frame) {
        return frame % 2 == 0 ? values[frame / 2] : (values[frame / 2] + values[frame / 2 + 1]) / 2;
    }

    private static double clip(double activation) {
        return Math.max(FLOOR, Math.min(1 - FLOOR, activation));
    }

    int frames() {
        return frames;
    }

    /** Likelihood of a beat in one frame, 0 to 1. */
    double beat(int frame) {
        return beat[frame];
    }

    /** Logarithmic likelihood of a stretch without beats. */
    double none(int from, int to) {
        return none[to] - none[from];
    }

    /** Logarithmic likelihood of one beat that begins at {@code from}; what lies beyond the song costs nothing. */
    double wholeBeat(int from, int lengthFrames, boolean isFirstOfBar) {
        int observed = Math.max(1, Math.round((float) lengthFrames / OBSERVED_PART));
        int heardTo = Math.min(frames, from + observed);
        int to = Math.min(frames, from + lengthFrames);
        double[] sums = isFirstOfBar ? downbeat : otherBeat;
        return sums[heardTo] - sums[from] + none(heardTo, to);
    }

    /** How much likelier a beat, first of its bar or not, is than none where one begins, as a logarithm; 0 outside of the song. */
    double beatOverNone(int from, double lengthFrames) {
        int observed = (int) Math.max(1, Math.round(lengthFrames / OBSERVED_PART));
        int first = Math.max(0, Math.min(frames, from));
        return overNone[Math.max(first, Math.min(frames, from + observed))] - overNone[first];
    }
}
