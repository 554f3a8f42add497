package cuelead.voice;

import java.util.Arrays;

/**
 * The steady noise of the room in a take, band by band, and what stands out of it: a spectral gate. The noise is taken
 * from the quietest stretches of each band (after Martin 2001, "Noise power spectral density estimation based on optimal
 * smoothing and minimum statistics", IEEE Trans. Speech Audio Proc. 9, in its simplest form: a low quantile instead of a
 * running minimum).
 */
final class RoomNoise {
    /** Stretches of 20 ms. */
    private static final int STRETCH_STEPS = 10;
    /** The noise is what all but this part of the stretches exceed, ... */
    private static final double QUIET_PART = 0.15;
    /** ... and so much more, since a low quantile lies below the mean. */
    private static final double QUANTILE_TO_MEAN = 2;
    /** In a word that was cut out tightly no stretch is of the room alone: quiet must last so long ... */
    private static final double LASTING_SECONDS = 0.2;
    /** ... within 6 dB of the quietest twentieth. */
    private static final double LASTING_RATIO = 4;

    private static final int QUIETEST_OF = 20;
    /** Noise never counts as more than 6 dB below the loudest in its band, and never as less than 70 dB below. */
    private static final double MOST = 0.25;

    private static final double LEAST = 1e-7;
    private static final double NOTHING = 1e-12;
    /** More than this above the noise counts no further. */
    private static final double HIGHEST_EXCESS_DB = 30;
    /** Bands of the voice, of vowels, of hisses: a sound may stand out in one of these groups alone. */
    private static final double[] GROUPS_HZ = {0, 920, 3_150, Double.MAX_VALUE};
    /** Fewer bands are less sure. */
    private static final double GROUP_HANDICAP_DB = 1;

    private final BarkPowers powers;
    private final double[] noise;

    RoomNoise(BarkPowers powers) {
        this.powers = powers;
        this.noise = new double[powers.bands()];
        int stretches = Math.max(1, powers.steps() / STRETCH_STEPS);
        boolean lasts = lasts(stretches);
        for (int band = 0; band < noise.length; band++) {
            double[] sorted = new double[stretches];
            for (int i = 0; i < stretches; i++) {
                sorted[i] = powers.meanPower(band, i * STRETCH_STEPS, (i + 1) * STRETCH_STEPS);
            }
            Arrays.sort(sorted);
            double loudest = sorted[stretches - 1];
            double quiet = lasts ? QUANTILE_TO_MEAN * sorted[(int) (QUIET_PART * stretches)] : 0;
            noise[band] = Math.max(Math.min(quiet, MOST * loudest), LEAST * loudest) + NOTHING;
        }
    }

    private boolean lasts(int stretches) {
        double[] sorted = new double[stretches];
        for (int i = 0; i < stretches; i++) {
            double rms = powers.meanRms(i * STRETCH_STEPS + STRETCH_STEPS / 2, STRETCH_STEPS / 2);
            sorted[i] = rms * rms;
        }
        Arrays.sort(sorted);
        int lasting = 0;
        while (lasting < stretches && sorted[lasting] <= LASTING_RATIO * sorted[stretches / QUIETEST_OF]) {
            lasting++;
        }
        return lasting * STRETCH_STEPS * BarkPowers.STEP_SECONDS >= LASTING_SECONDS;
    }

    /**
     * How far each step stands out of the noise: the mean of its bands in dB, those below the noise as 0; or that of a
     * group of bands, where it is clearly more.
     */
    double[] excessDb() {
        double[] excess = new double[powers.steps()];
        for (int step = 0; step < excess.length; step++) {
            excess[step] = meanExcess(step, 1, 0, noise.length);
            for (int group = 0; group + 1 < GROUPS_HZ.length; group++) {
                int from = Math.min(noise.length, BarkPowers.bandFrom(GROUPS_HZ[group]));
                int to = Math.min(noise.length, BarkPowers.bandFrom(GROUPS_HZ[group + 1]));
                excess[step] = Math.max(excess[step], meanExcess(step, 2, from, to) - GROUP_HANDICAP_DB);
            }
        }
        return excess;
    }

    /** How far the loudest 20 ms of the take stand out of the noise, all bands together. */
    double loudestDb() {
        double noiseOfAll = 0;
        for (double band : noise) {
            noiseOfAll += band;
        }
        double loudest = 0;
        for (int step = 0; step < powers.steps(); step++) {
            double power = 0;
            for (int band = 0; band < noise.length; band++) {
                power += powers.meanPower(band, step - STRETCH_STEPS / 2, step + STRETCH_STEPS / 2 + 1);
            }
            loudest = Math.max(loudest, power);
        }
        return 10 * Math.log10(loudest / noiseOfAll + NOTHING);
    }

    private double meanExcess(int step, int halfSteps, int fromBand, int toBand) {
        double sum = 0;
        for (int band = fromBand; band < toBand; band++) {
            double ratio = powers.meanPower(band, step - halfSteps, step + halfSteps + 1) / noise[band];
            sum += Math.min(HIGHEST_EXCESS_DB, Math.max(0, 10 * Math.log10(ratio + NOTHING)));
        }
        return toBand > fromBand ? sum / (toBand - fromBand) : 0;
    }

    /** Power over the noise in a range of frequencies; no unit, one value a step. */
    double[] power(double fromHz, double toHz) {
        double[] gated = new double[powers.steps()];
        int end = Math.min(noise.length, BarkPowers.bandFrom(toHz));
        for (int step = 0; step < gated.length; step++) {
            for (int band = BarkPowers.bandFrom(fromHz); band < end; band++) {
                gated[step] += Math.max(0, powers.power(step, band) - noise[band]);
            }
        }
        return gated;
    }

    /** Its root, smoothed by a Hann window. */
    static double[] amplitude(double[] power, double smoothingSeconds) {
        return smoothed(power, (int) Math.round(smoothingSeconds / BarkPowers.STEP_SECONDS / 2));
    }

    private static double[] smoothed(double[] power, int half) {
        double[] amplitude = new double[power.length];
        for (int step = 0; step < power.length; step++) {
            double sum = 0;
            double weights = 0;
            for (int i = -half; i <= half; i++) {
                double weight = 0.5 + 0.5 * Math.cos(Math.PI * i / (half + 1));
                weights += weight;
                sum += step + i >= 0 && step + i < power.length ? weight * power[step + i] : 0;
            }
            amplitude[step] = Math.sqrt(sum / weights);
        }
        return amplitude;
    }
}
