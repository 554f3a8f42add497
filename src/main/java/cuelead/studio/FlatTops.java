package cuelead.studio;

/** Counts where a recording was cut off at full scale. For one thread. */
final class FlatTops {
    private static final double FULL_SCALE = 0.985;
    private static final int FLAT_SAMPLES = 3;

    private int flat;
    private int tops;

    /** Counts on. */
    void add(float[] samples) {
        for (float sample : samples) {
            flat = Math.abs(sample) >= FULL_SCALE ? flat + 1 : 0;
            tops += flat == FLAT_SAMPLES ? 1 : 0;
        }
    }

    /** How many there were. */
    int count() {
        return tops;
    }
}
