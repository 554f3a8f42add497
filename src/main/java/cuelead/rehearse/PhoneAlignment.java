package cuelead.rehearse;

import cuelead.dsp.speech.PhoneOdds;
import java.util.Arrays;
import java.util.List;

/**
 * Where each sound of a known word lies in a stretch of a take: the best path through its sounds, with silence around it
 * (forced alignment, as in Rabiner 1989, "A tutorial on hidden Markov models", Proc. IEEE 77, section III B).
 */
final class PhoneAlignment {
    private static final float NEVER = -1e9f;

    private final PhoneOdds odds;
    private final int[] states;

    /** @param phones of the word */
    PhoneAlignment(PhoneOdds odds, List<Integer> phones) {
        this.odds = odds;
        states = new int[phones.size() + 2];
        for (int i = 0; i < phones.size(); i++) {
            states[i + 1] = phones.get(i);
        }
        states[0] = PhoneOdds.SILENCE;
        states[states.length - 1] = PhoneOdds.SILENCE;
    }

    /**
     * The first frame of each sound, and then the one behind the last.
     *
     * @param from first frame of the stretch
     * @param to   the one behind it
     */
    int[] starts(int from, int to) {
        int frames = to - from;
        float[][] best = new float[states.length][frames];
        boolean[][] entered = new boolean[states.length][frames];
        for (int frame = 0; frame < frames; frame++) {
            for (int state = 0; state < states.length; state++) {
                // the stretch begins in silence, or with the first sound
                float first = state <= 1 ? 0 : NEVER;
                float stayed = frame > 0 ? best[state][frame - 1] : first;
                float came = state > 0 && frame > 0 ? best[state - 1][frame - 1] : NEVER;
                entered[state][frame] = came > stayed;
                best[state][frame] = Math.max(stayed, came) + odds.at(states[state], from + frame);
            }
        }
        int last = states.length - 1;
        int state = best[last][frames - 1] > best[last - 1][frames - 1] ? last : last - 1;
        int[] starts = new int[last];
        Arrays.fill(starts, from);
        starts[last - 1] = to;
        for (int frame = frames - 1; frame >= 0 && state > 0; frame--) {
            if (entered[state][frame]) {
                state--;
                starts[state] = from + frame;
            }
        }
        return starts;
    }

    /**
     * When each sound begins to be expected, and then when the last ends, in frames: the mean over all paths, each as likely as
     * it is (the forward-backward procedure of the same paper, section III A). Finer than frames are apart, and a little
     * change of the sound changes it only a little.
     */
    double[] expectedStarts(int from, int to) {
        int frames = to - from;
        double[][] before = new double[states.length][frames];
        double[][] behind = new double[states.length][frames];
        for (int frame = 0; frame < frames; frame++) {
            for (int state = 0; state < states.length; state++) {
                double came = frame == 0 ? (state <= 1 ? 0 : NEVER) : before[state][frame - 1];
                double entered = frame > 0 && state > 0 ? before[state - 1][frame - 1] : NEVER;
                before[state][frame] = sum(came, entered) + odds.at(states[state], from + frame);
            }
        }
        int last = states.length - 1;
        for (int frame = frames - 1; frame >= 0; frame--) {
            for (int state = 0; state <= last; state++) {
                boolean isEnd = frame == frames - 1;
                double stays = isEnd ? (state >= last - 1 ? 0 : NEVER) : after(behind, state, from, frame + 1);
                double leaves = isEnd || state == last ? NEVER : after(behind, state + 1, from, frame + 1);
                behind[state][frame] = sum(stays, leaves);
            }
        }
        double all = sum(before[last][frames - 1], before[last - 1][frames - 1]);
        double[] starts = new double[last];
        Arrays.fill(starts, from);
        for (int frame = 0; frame < frames; frame++) {
            double earlier = 0;
            for (int state = 0; state < last; state++) {
                earlier += Math.exp(before[state][frame] + behind[state][frame] - all);
                starts[state] += earlier;
            }
        }
        return starts;
    }

    private double after(double[][] behind, int state, int from, int frame) {
        return behind[state][frame] + odds.at(states[state], from + frame);
    }

    /** The logarithm of the sum of two numbers, from their logarithms. */
    private static double sum(double a, double b) {
        return Math.max(a, b) + Math.log1p(Math.exp(-Math.abs(a - b)));
    }
}
