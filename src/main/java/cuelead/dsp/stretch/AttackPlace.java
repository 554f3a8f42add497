package cuelead.dsp.stretch;

import cuelead.time.SampleRate;

/**
 * Where exactly an attack is that was found roughly: where the levels of the bands rise most within 6 ms, looked at every
 * 0.7 ms. Of several strokes close to each other that is the strongest, so it is the one that lies exactly on its place.
 */
final class AttackPlace {
    private static final int BANDS = BandEnergies.BANDS;
    private static final double BEFORE_SECONDS = 0.010;
    private static final double AFTER_SECONDS = 0.012;
    /** Steps on either side between which the rise is taken. */
    private static final int REACH = 4;

    /** A stroke lies that much behind the middle of the two windows between which the levels rise most, by measuring. */
    private static final double LATE_SHARE = 0.46;

    private static final double STEP_SECONDS = 0.005;
    private static final double STEP_SEARCH_SECONDS = 0.008;
    /** High frequencies tell an attack best: the energy is that of the differences and a little of the samples. */
    private static final float DIFFERENCE_GAIN = 2;

    private static final float SAMPLE_GAIN = 0.15f;
    private static final double FLOOR_SHARE = 2e-3;
    private static final double SILENCE = 1e-6;

    private final SongSamples song;
    private final int hop;
    private final int before;
    private final int after;
    private final int step;
    private final int search;
    private final int lateFrames;
    private final BandEnergies energies;
    private final float[][] levels;
    private final float[] frames;
    private final double[] energySums;

    AttackPlace(SongSamples song, SampleRate rate) {
        this.song = song;
        int window = Frames.vocoderWindow(rate) / 16;
        hop = window / 8;
        lateFrames = (int) Math.round(LATE_SHARE * window);
        before = rate.framesIn(BEFORE_SECONDS) / hop;
        after = rate.framesIn(AFTER_SECONDS) / hop;
        step = rate.framesIn(STEP_SECONDS);
        search = rate.framesIn(STEP_SEARCH_SECONDS);
        energies = new BandEnergies(rate, window);
        levels = new float[before + after + 2 * REACH + 1][BANDS];
        frames = new float[2 * (2 * search + 2 * step + 1)];
        energySums = new double[2 * search + 2 * step + 2];
    }

    /** By how many dB the energy of 5 ms rises at most against the 5 ms before, near a frame. */
    double stepDb(long nearFrame) {
        int count = energySums.length - 1;
        song.copy(nearFrame - search - step, frames, count);
        for (int i = 0; i < count; i++) {
            energySums[i + 1] = energySums[i] + (i == 0 ? 0 : sharpness(2 * i) + sharpness(2 * i + 1));
        }
        double floor = SILENCE * step;
        double most = 0;
        for (int i = step; i + step <= count; i++) {
            double then = energySums[i + step] - energySums[i];
            double first = energySums[i] - energySums[i - step];
            most = Math.max(most, (then + floor) / (first + floor));
        }
        return 10 * Math.log10(most);
    }

    private double sharpness(int sample) {
        double value = (frames[sample] - frames[sample - 2]) * DIFFERENCE_GAIN + SAMPLE_GAIN * frames[sample];
        return value * value;
    }

    /**
     * The frame of the attack near a frame.
     *
     * @param sums  of the energies of each band, over twice as long windows
     * @param count of how many windows
     */
    long refined(long nearFrame, double[] sums, int count) {
        long first = nearFrame - (long) (before + REACH) * hop;
        for (int i = 0; i < levels.length; i++) {
            energies.at(song, first + (long) i * hop, levels[i]);
            for (int band = 0; band < BANDS; band++) {
                double floor = FLOOR_SHARE * sums[band] / count + SILENCE;
                levels[i][band] = (float) Math.log10(levels[i][band] + floor);
            }
        }
        double most = -1;
        int at = before;
        for (int i = REACH; i < levels.length - REACH; i++) {
            double rise = rise(levels[i - REACH], levels[i + REACH]);
            if (rise > most) {
                most = rise;
                at = i;
            }
        }
        return first + (long) at * hop + lateFrames;
    }

    private static double rise(float[] from, float[] to) {
        double sum = 0;
        for (int band = 0; band < BANDS; band++) {
            sum += Math.max(0, to[band] - from[band]);
        }
        return sum;
    }
}
