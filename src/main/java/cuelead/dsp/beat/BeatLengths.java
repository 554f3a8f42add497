package cuelead.dsp.beat;

/**
 * The lengths that a beat can have in the search, in frames, and what it costs to go from one to the next: tempo changes
 * only at a beat, with a probability that falls off exponentially with the ratio of the lengths (Krebs, Böck and Widmer
 * 2015, "An efficient state-space model for joint tempo and meter tracking", equation 7).
 */
final class BeatLengths {
    /** Lambda of the paper. */
    private static final double STIFFNESS = 100;
    /** From one beat to the next a length changes by no more steps than this. */
    static final int MOST_STEPS = 16;

    private final int shortest;
    private final int count;
    /** By length of the next beat, then of the one before it. */
    private final float[][] logTransition;

    /**
     * @param framesPerSecond of the search
     * @param slowest         beats a minute
     * @param fastest         beats a minute
     */
    BeatLengths(int framesPerSecond, double slowest, double fastest) {
        shortest = (int) Math.floor(60 * framesPerSecond / fastest);
        count = (int) Math.ceil(60 * framesPerSecond / slowest) - shortest + 1;
        logTransition = new float[count][count];
        for (int before = 0; before < count; before++) {
            double sum = 0;
            for (int next = 0; next < count; next++) {
                sum += Math.exp(change(before, next));
            }
            for (int next = 0; next < count; next++) {
                logTransition[next][before] = (float) (change(before, next) - Math.log(sum));
            }
        }
    }

    private double change(int before, int next) {
        return -STIFFNESS * Math.abs((double) frames(next) / frames(before) - 1);
    }

    int count() {
        return count;
    }

    int frames(int index) {
        return shortest + index;
    }

    int longest() {
        return frames(count - 1);
    }

    /** Logarithm of the probability of {@code next} by every length of the beat before. */
    float[] logTransitionTo(int next) {
        return logTransition[next];
    }
}
