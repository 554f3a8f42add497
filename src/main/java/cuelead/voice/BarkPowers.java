package cuelead.voice;

import cuelead.dsp.RealFft;
import java.util.Arrays;

/**
 * How strong a sound is over time in the critical bands of hearing (Zwicker 1961, "Subdivision of the audible frequency
 * range into critical bands", J. Acoust. Soc. Am. 33), from 100 Hz on; every 2 ms, under a Hann window of 16 ms that is
 * centred on that instant.
 */
final class BarkPowers {
    static final double STEP_SECONDS = 0.002;

    private static final double[] EDGES_HZ = {
        100, 200, 300, 400, 510, 630, 770, 920, 1080, 1270, 1480, 1720, 2000, 2320, 2700, 3150, 3700, 4400, 5300, 6400,
        7700, 9500
    };
    private static final double WINDOW_SECONDS = 0.016;
    /** Half of the window of {@link #levelRms}. */
    private static final double HALF_LEVEL_SECONDS = 0.001;

    private final double[][] powers;
    private final double[] levelRms;
    private final int bands;

    private BarkPowers(double[][] powers, double[] levelRms, int bands) {
        this.powers = powers;
        this.levelRms = levelRms;
        this.bands = bands;
    }

    static BarkPowers of(MonoSound sound) {
        int steps = 1 + (int) (sound.lengthSeconds() / STEP_SECONDS);
        int bands = bandsBelow(sound.rate().hz() / 2.0);
        double[] level = new double[steps];
        double[][] powers = new double[steps][bands];
        int window = sound.rate().framesIn(WINDOW_SECONDS);
        int half = Math.max(1, sound.rate().framesIn(HALF_LEVEL_SECONDS));
        Spectrum spectrum = new Spectrum(window, bandsOfBins(sound.rate().hz(), window, bands));
        for (int step = 0; step < steps; step++) {
            int centre = sound.rate().framesIn(step * STEP_SECONDS);
            level[step] = rms(sound.samples(), centre - half, centre + half);
            spectrum.add(sound.samples(), centre - window / 2, powers[step]);
        }
        return new BarkPowers(powers, level, bands);
    }

    /** Work space of one frame after the other. */
    private static final class Spectrum {
        private final RealFft fft;
        private final float[] hann;
        private final float[] frame;
        private final float[] magnitudes;
        private final int[] bandOfBin;

        Spectrum(int window, int[] bandOfBin) {
            this.bandOfBin = bandOfBin;
            hann = new float[window];
            for (int i = 0; i < window; i++) {
                hann[i] = (float) (0.5 - 0.5 * Math.cos(2 * Math.PI * (i + 0.5) / window));
            }
            frame = new float[transformLength(window)];
            fft = new RealFft(frame.length);
            magnitudes = new float[fft.bins()];
        }

        void add(float[] samples, int first, double[] powers) {
            Arrays.fill(frame, 0);
            for (int i = Math.max(0, -first); i < hann.length && first + i < samples.length; i++) {
                frame[i] = hann[i] * samples[first + i];
            }
            fft.magnitudes(frame, magnitudes);
            for (int bin = 0; bin < bandOfBin.length; bin++) {
                if (bandOfBin[bin] >= 0) {
                    powers[bandOfBin[bin]] += (double) magnitudes[bin] * magnitudes[bin];
                }
            }
        }
    }

    private static int transformLength(int window) {
        return Math.max(4, Integer.highestOneBit(2 * window - 1));
    }

    private static int bandsBelow(double highestHz) {
        int bands = 0;
        while (bands + 1 < EDGES_HZ.length && EDGES_HZ[bands + 1] <= highestHz) {
            bands++;
        }
        return bands;
    }

    /** The band of each bin, -1 where it lies in none. */
    private static int[] bandsOfBins(int hz, int window, int bands) {
        int length = transformLength(window);
        int[] bandOfBin = new int[length / 2 + 1];
        Arrays.fill(bandOfBin, -1);
        for (int bin = 0; bin < bandOfBin.length; bin++) {
            double binHz = (double) bin * hz / length;
            for (int band = 0; band < bands; band++) {
                if (binHz >= EDGES_HZ[band] && binHz < EDGES_HZ[band + 1]) {
                    bandOfBin[bin] = band;
                }
            }
        }
        return bandOfBin;
    }

    private static double rms(float[] samples, int from, int to) {
        double sum = 0;
        int first = Math.max(0, from);
        int end = Math.min(samples.length, to);
        for (int i = first; i < end; i++) {
            sum += (double) samples[i] * samples[i];
        }
        return end > first ? Math.sqrt(sum / (end - first)) : 0;
    }

    int steps() {
        return powers.length;
    }

    int bands() {
        return bands;
    }

    double power(int step, int band) {
        return powers[step][band];
    }

    /** RMS of all frequencies over 2 ms, full scale = 1. */
    double levelRms(int step) {
        return levelRms[step];
    }

    /** Mean power of a band over some steps, those outside the sound left out. */
    double meanPower(int band, int firstStep, int endStep) {
        double sum = 0;
        int first = Math.max(0, firstStep);
        int end = Math.min(steps(), endStep);
        for (int step = first; step < end; step++) {
            sum += powers[step][band];
        }
        return end > first ? sum / (end - first) : 0;
    }

    /** RMS of all frequencies over some steps around one. */
    double meanRms(int centre, int halfSteps) {
        double sum = 0;
        for (int step = Math.max(0, centre - halfSteps); step <= Math.min(steps() - 1, centre + halfSteps); step++) {
            sum += levelRms[step] * levelRms[step];
        }
        return Math.sqrt(sum / (2 * halfSteps + 1));
    }

    /** The first band that lies wholly above a frequency. */
    static int bandFrom(double hz) {
        int band = 0;
        while (band < EDGES_HZ.length && EDGES_HZ[band] < hz) {
            band++;
        }
        return band;
    }
}
