package cuelead.voice;

import java.util.Arrays;

/**
 * Which steps of a take stand out of its noise and are not more than 40 dB below its loudest 20 ms, as the onset and end
 * of a clip are defined ({@link AudibleSpan}).
 */
final class Standing {
    private static final double BELOW_LOUDEST = 0.01;
    private static final int HALF_LOUD_STEPS = 5;
    private static final double LEAST_DB = 1.5;
    private static final double MOST_DB = 6;
    /** Over what the noise itself reaches. */
    private static final double OVER_NOISE_DB = 1.5;

    private static final int NOISE_PART = 5;

    private final boolean[] stands;

    /** @param excessDb how far each step stands out of the noise */
    Standing(BarkPowers powers, double[] excessDb) {
        double[] sorted = excessDb.clone();
        Arrays.sort(sorted);
        double least = Math.max(LEAST_DB, Math.min(MOST_DB, sorted[sorted.length / NOISE_PART] + OVER_NOISE_DB));
        double loudest = 0;
        for (int step = 0; step < powers.steps(); step++) {
            loudest = Math.max(loudest, powers.meanRms(step, HALF_LOUD_STEPS));
        }
        stands = new boolean[excessDb.length];
        for (int step = 0; step < stands.length; step++) {
            stands[step] = excessDb[step] > least && powers.levelRms(step) > BELOW_LOUDEST * loudest;
        }
    }

    /** The first step of the sounds that lead to one, with no longer gap between them. */
    int before(int step, int gap, int most) {
        int first = step;
        for (int i = step; i >= Math.max(0, step - most) && first - i <= gap; i--) {
            first = stands[i] ? i : first;
        }
        return first;
    }

    /** The last step of the sounds that follow one, with no longer gap between them. */
    int after(int step, int gap, int most) {
        int last = step;
        for (int i = step; i <= Math.min(stands.length - 1, step + most) && i - last <= gap; i++) {
            last = stands[i] ? i : last;
        }
        return last;
    }

    /** Where the last sound of a range begins: behind its last gap that is longer than so many steps. */
    int lastPart(int from, int to, int gap) {
        int start = from;
        int silent = 0;
        for (int i = from; i <= to; i++) {
            if (stands[i]) {
                start = silent > gap ? i : start;
                silent = 0;
            } else {
                silent++;
            }
        }
        return start;
    }
}
