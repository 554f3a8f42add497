package cuelead.sound;

import cuelead.dsp.KWeighting;
import cuelead.time.SampleRate;

/**
 * How the K-weighted energy of a mono sound, heard on both sides, is spread over its length: measured once in
 * steps of 5 ms, then asked for any span. Immutable.
 */
final class ClipPower {
    private static final double STEP_SECONDS = 0.005;

    private final int stepFrames;
    /** energyBefore[i] is the energy of all steps before the i-th. */
    private final double[] energyBefore;

    ClipPower(float[] mono, SampleRate rate) {
        stepFrames = rate.framesIn(STEP_SECONDS);
        energyBefore = new double[(mono.length + stepFrames - 1) / stepFrames + 1];
        KWeighting weighting = new KWeighting(rate);
        double energy = 0;
        for (int i = 0; i < mono.length; i++) {
            double weighted = weighting.filter(mono[i]);
            energy += Sound.CHANNELS * weighted * weighted;
            energyBefore[i / stepFrames + 1] = energy;
        }
    }

    /** Sum over some frames of the squared weighted samples of both channels; 0 outside the sound. */
    double energy(long fromFrame, long toFrame) {
        return energyBefore(toFrame) - energyBefore(fromFrame);
    }

    private double energyBefore(long frame) {
        double at = Math.max(0, Math.min(energyBefore.length - 1, (double) frame / stepFrames));
        int step = (int) Math.min((long) at, energyBefore.length - 2);
        return step < 0 ? 0 : energyBefore[step] + (at - step) * (energyBefore[step + 1] - energyBefore[step]);
    }
}
