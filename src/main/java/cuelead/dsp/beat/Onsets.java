package cuelead.dsp.beat;

/**
 * How strongly sound begins in each frame: the rise of each band's loudness over two frames, averaged over a range of bands
 * (spectral flux; Böck and Widmer 2013, "Maximum filter vibrato suppression for onset detection", section 2.1).
 */
final class Onsets {
    /** Bands up to about 130 Hz: bass drum and bass. */
    static final int LOW_BANDS = 5;

    /** From about 5 kHz on: cymbals. */
    static final int FIRST_CYMBAL_BAND = 63;

    private static final int APART_FRAMES = 2;

    private final float[] strength;

    private Onsets(float[] strength) {
        this.strength = strength;
    }

    /**
     * Onsets in the bands from {@code from} up to, and without, {@code to}; 1 is a strong one, whatever the song.
     *
     * @param loudness by band, then frame
     */
    static Onsets of(float[][] loudness, int from, int to) {
        float[] flux = new float[loudness[0].length];
        double squares = 0;
        for (int t = APART_FRAMES; t < flux.length; t++) {
            for (int band = from; band < to; band++) {
                flux[t] += Math.max(0, loudness[band][t] - loudness[band][t - APART_FRAMES]) / (to - from);
            }
            squares += flux[t] * flux[t];
        }
        float scale = (float) (1 / (3 * Math.sqrt(squares / Math.max(1, flux.length)) + 1e-9));
        for (int t = 0; t < flux.length; t++) {
            flux[t] = Math.min(1, flux[t] * scale);
        }
        return new Onsets(flux);
    }

    /** The strongest within so many seconds of a time; 0 to 1. */
    double near(double seconds, double reachSeconds) {
        int first = Math.max(0, (int) Math.round((seconds - reachSeconds) * BandSpectrum.FRAMES_PER_SECOND));
        int last = Math.min(
                strength.length - 1, (int) Math.round((seconds + reachSeconds) * BandSpectrum.FRAMES_PER_SECOND));
        float strongest = 0;
        for (int t = first; t <= last; t++) {
            strongest = Math.max(strongest, strength[t]);
        }
        return strongest;
    }
}
