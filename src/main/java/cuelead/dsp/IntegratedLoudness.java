package cuelead.dsp;

import java.util.OptionalDouble;

/**
 * The gated programme loudness of Recommendation ITU-R BS.1770-4, annex 1: blocks of 400 ms that overlap by
 * 75 %, an absolute gate at -70 LUFS and a relative gate 10 LU below the loudness of what passed the first. It
 * works on the 100 ms steps of {@link BlockPowers}, four to a block, so that a measurement of a finished mix and
 * the forecast of one that does not exist yet are the same computation.
 */
public final class IntegratedLoudness {
    private static final int STEPS_IN_BLOCK = 4;
    private static final double ABSOLUTE_GATE_LUFS = -70;
    private static final double RELATIVE_GATE_LU = -10;

    private IntegratedLoudness() {}

    /**
     * Programme loudness in LUFS.
     *
     * @param stepPowers K-weighted power of each 100 ms, summed over channels, full scale = 1
     * @return empty where no whole block is louder than the absolute gate
     */
    public static OptionalDouble lufs(float[] stepPowers) {
        double absoluteGate = KWeighting.powerOfLufs(ABSOLUTE_GATE_LUFS);
        double ungated = meanAbove(stepPowers, absoluteGate);
        if (ungated == 0) {
            return OptionalDouble.empty();
        }
        double relativeGate = ungated * Math.pow(10, RELATIVE_GATE_LU / 10);
        double gated = meanAbove(stepPowers, Math.max(absoluteGate, relativeGate));
        return OptionalDouble.of(KWeighting.lufsOfPower(gated));
    }

    /** Mean power of the blocks louder than a gate; 0 where there is none. */
    private static double meanAbove(float[] stepPowers, double gatePower) {
        double sum = 0;
        int passed = 0;
        for (int last = STEPS_IN_BLOCK - 1; last < stepPowers.length; last++) {
            double block = 0;
            for (int step = last - STEPS_IN_BLOCK + 1; step <= last; step++) {
                block += stepPowers[step];
            }
            block /= STEPS_IN_BLOCK;
            if (block > gatePower) {
                sum += block;
                passed++;
            }
        }
        return passed == 0 ? 0 : sum / passed;
    }
}
