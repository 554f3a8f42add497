package cuelead.rehearse;

import cuelead.voice.MonoSound;
import java.util.Arrays;

/** How far words stand out of the room's noise: what does not stand out at all is noise that happens to sound like a word. */
final class Loudness {
    private static final double BLOCK_SECONDS = 0.05;
    /** Nobody calls in the quiet fifth of a take. */
    private static final int QUIET_FIFTH = 5;
    /** 5 dB, as power. */
    private static final double CLEARLY = 3.2;

    private final MonoSound take;
    private final double[] powers;
    private final double quiet;

    Loudness(MonoSound take) {
        this.take = take;
        int block = take.rate().framesIn(BLOCK_SECONDS);
        powers = new double[take.frames() / block + 1];
        for (int i = 0; i < take.frames(); i++) {
            powers[i / block] += (double) take.samples()[i] * take.samples()[i] / block;
        }
        double[] sorted = powers.clone();
        Arrays.sort(sorted);
        quiet = sorted[sorted.length / QUIET_FIFTH];
    }

    /** Whether the loudest 50 ms of a word are clearly louder than the room. */
    boolean standsOut(HeardWord word) {
        int block = take.rate().framesIn(BLOCK_SECONDS);
        int first = take.rate().framesIn(word.startSeconds()) / block;
        int last = Math.min(powers.length - 1, take.rate().framesIn(word.endSeconds()) / block);
        double loudest = 0;
        for (int i = first; i <= last; i++) {
            loudest = Math.max(loudest, powers[i]);
        }
        return loudest > CLEARLY * quiet;
    }
}
