package cuelead.song;

import java.util.function.LongSupplier;

/**
 * What a sound may cost.
 *
 * @param mostSeconds the longest that is opened
 * @param freeBytes   memory that is left for samples
 */
record Limits(int mostSeconds, LongSupplier freeBytes) {
    static final int SONG_SECONDS = 20 * 60;
    static final int SHORT_SOUND_SECONDS = 60;

    static Limits of(int mostSeconds) {
        return new Limits(mostSeconds, Limits::heapLeft);
    }

    private static long heapLeft() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.maxMemory() - runtime.totalMemory() + runtime.freeMemory();
    }
}
