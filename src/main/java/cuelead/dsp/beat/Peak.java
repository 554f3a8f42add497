package cuelead.dsp.beat;

/** Moves a beat of the search to the top of the activation near by, between frames. */
final class Peak {
    /** Below this there is no peak to speak of, and the beat stays where the search put it. */
    private static final double LEAST = 0.05;
    /** So far, as a part of the beat, a beat is moved. */
    private static final int REACH_PART = 14;

    private static final int OBSERVED_PART = 16;
    /** Neighbours for the parabola: one frame of the network away. */
    private static final int STEP = Observations.FRAMES_PER_SECOND / BandSpectrum.FRAMES_PER_SECOND;

    private final Observations heard;

    Peak(Observations heard) {
        this.heard = heard;
    }

    /** The place of the peak, in frames and parts of them. */
    double near(int frame, int lengthFrames) {
        int reach = Math.max(2, lengthFrames / REACH_PART);
        int last = Math.min(heard.frames() - 1, frame + reach + lengthFrames / OBSERVED_PART);
        int top = Math.max(0, frame - reach);
        for (int i = top + 1; i <= last; i++) {
            if (heard.beat(i) > heard.beat(top)) {
                top = i;
            }
        }
        if (heard.beat(top) <= LEAST) {
            return frame;
        }
        if (top <= STEP || top >= heard.frames() - STEP - 1) {
            return top;
        }
        double before = heard.beat(top - STEP);
        double after = heard.beat(top + STEP);
        double curve = before - 2 * heard.beat(top) + after;
        return curve > -1e-9 ? top : top + STEP * Math.max(-1, Math.min(1, (before - after) / (2 * curve)));
    }
}
