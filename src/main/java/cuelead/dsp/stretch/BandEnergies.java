package cuelead.dsp.stretch;

import cuelead.dsp.ComplexFft;
import cuelead.time.SampleRate;

/** The energy of a short window of a song in {@value #BANDS} bands, evenly spaced in pitch from 80 Hz to 16 kHz. */
final class BandEnergies {
    static final int BANDS = 18;
    private static final double LOWEST_HZ = 80;
    private static final double HIGHEST_HZ = 16_000;
    /** Of half the sample rate, where that is lower. */
    private static final double HIGHEST_SHARE = 0.95;

    private final int window;
    private final int[] edges = new int[BANDS + 1];
    private final StereoSpectrum spectrum;
    private final float[] frames;

    /** @param window frames; a power of two */
    BandEnergies(SampleRate rate, int window) {
        this.window = window;
        spectrum = new StereoSpectrum(new ComplexFft(window), Frames.hann(window));
        frames = new float[2 * window];
        double highest = Math.min(HIGHEST_HZ, HIGHEST_SHARE * rate.hz() / 2);
        int previous = 0;
        for (int i = 0; i <= BANDS; i++) {
            double hz = LOWEST_HZ * Math.pow(highest / LOWEST_HZ, (double) i / BANDS);
            previous = Math.max(previous + 1, (int) Math.round(hz * window / rate.hz()));
            edges[i] = Math.min(window / 2, previous);
        }
    }

    /** The energies of the window that is centred on a frame of the song. */
    void at(SongSamples song, long centreFrame, float[] energies) {
        song.copy(centreFrame - window / 2, frames, window);
        spectrum.transform(frames);
        for (int band = 0; band < BANDS; band++) {
            float sum = 0;
            for (int bin = edges[band]; bin < edges[band + 1]; bin++) {
                sum += spectrum.energy(bin);
            }
            energies[band] = sum;
        }
    }
}
