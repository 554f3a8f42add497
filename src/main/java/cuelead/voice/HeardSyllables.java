package cuelead.voice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The syllables of a recorded word, heard in its sound alone, where a synthesizer would have told them. After
 * Mermelstein 1975 ("Automatic segmentation of speech into syllabic units", J. Acoust. Soc. Am. 58): every hill of the
 * {@link VowelBand} is a syllable, and a dip that is too shallow parts none. As the words are known, hills are joined
 * further until there are no more than syllables in their spelling. A vowel begins a little more than half way up its
 * hill (half way: Cummins and Port 1998, "Rhythmic constraints on stress timing in English", J. Phonetics 26).
 *
 * <p>The numbers were chosen on 274 synthesized words of three voices whose sounds are known: perceptual centres then
 * differ by 8 ms in the middle and by 24 ms at the 95th percentile.
 */
final class HeardSyllables {
    /** Hills lower than this part of the highest (18 dB below it) are no vowels. */
    private static final double LOWEST_HILL = 0.12;
    /** A dip parts two syllables when it is below this part of the lower hill (2 dB, as Mermelstein has it). */
    private static final double DEEP_DIP = 0.8;
    /** Too short for a vowel, part way up: the burst of a "k" or a "t". */
    private static final double SHORTEST_VOWEL_SECONDS = 0.040;
    /** Where hills join, a lower one at the edge still belongs to the vowel when it has this part of the height. */
    private static final double SHOULDER = 0.6;
    /** How far up its hill a vowel begins, and ends. */
    private static final double PART_WAY = 0.6;

    /**
     * One or more tops without a deep dip between them.
     *
     * @param firstTop step of the first top that is high enough to be of the vowel
     * @param lastTop  step of the last
     */
    private record Hill(int firstTop, int lastTop) {}

    private final double[] height;
    private final List<Hill> hills = new ArrayList<>();
    private final int first;
    private final int end;

    private HeardSyllables(double[] height, int first, int end) {
        this.height = height;
        this.first = first;
        this.end = end;
    }

    /**
     * The syllable that a recorded phrase is felt on.
     *
     * @param audible where the sound can be heard
     * @param text    what is said: lower-case words with single spaces
     * @return empty when no vowel is heard
     */
    static Optional<StressedSyllable> stressed(MonoSound sound, AudibleSpan audible, String text) {
        double startSeconds = sound.rate().secondsAt(audible.startFrame());
        double endSeconds = sound.rate().secondsAt(audible.endFrame());
        double[] height = VowelBand.rms(sound);
        HeardSyllables heard =
                new HeardSyllables(height, step(startSeconds), Math.min(height.length, step(endSeconds)));
        heard.findHills(SpelledSyllables.count(text));
        if (heard.hills.isEmpty()) {
            return Optional.empty();
        }
        int which = Math.min(SpelledSyllables.stressed(text), heard.hills.size() - 1);
        return Optional.of(heard.syllable(which, startSeconds, endSeconds));
    }

    private StressedSyllable syllable(int which, double startSeconds, double endSeconds) {
        double onset = which == 0 ? startSeconds : seconds(wayDown(which - 1));
        double vowel = Math.max(onset, seconds(wayUp(which)));
        double end = which + 1 == hills.size() ? endSeconds : seconds(footAfter(which));
        return new StressedSyllable(onset, vowel, Math.max(vowel, end));
    }

    private void findHills(int most) {
        double highest = 0;
        for (int i = first; i < end; i++) {
            highest = Math.max(highest, height[i]);
        }
        for (int i = first; i < end; i++) {
            boolean top = height[i] >= at(i - 1) && height[i] > at(i + 1);
            if (top && height[i] >= LOWEST_HILL * highest) {
                hills.add(new Hill(i, i));
            }
        }
        joinAndDrop(most);
    }

    private void joinAndDrop(int most) {
        boolean shallow = true;
        while (shallow) {
            shallow = join(shallowest(DEEP_DIP));
        }
        while (hills.size() > most) {
            if (!drop(shortest())) {
                join(shallowest(0));
            }
        }
    }

    private boolean drop(int which) {
        if (which >= 0) {
            hills.remove(which);
        }
        return which >= 0;
    }

    private boolean join(int which) {
        if (which < 0) {
            return false;
        }
        Hill one = hills.get(which);
        Hill next = hills.remove(which + 1);
        double higher = Math.max(height[one.lastTop], height[next.lastTop]);
        boolean rises = height[one.firstTop] < SHOULDER * higher;
        boolean falls = height[next.lastTop] < SHOULDER * higher;
        hills.set(which, new Hill(rises ? next.firstTop : one.firstTop, falls ? one.lastTop : next.lastTop));
        return true;
    }

    private int shortest() {
        int shortest = -1;
        double least = SHORTEST_VOWEL_SECONDS;
        for (int i = 0; i < hills.size(); i++) {
            double length = seconds(wayDown(i)) - seconds(wayUp(i));
            if (length < least) {
                least = length;
                shortest = i;
            }
        }
        return shortest;
    }

    /** The first of the two hills with the shallowest dip between them, when that is too shallow. */
    private int shallowest(double tooShallow) {
        int shallowest = -1;
        double least = tooShallow;
        for (int i = 0; i + 1 < hills.size(); i++) {
            double lower = Math.min(height[hills.get(i).lastTop], height[hills.get(i + 1).firstTop]);
            double depth = height[footAfter(i)] / lower;
            if (depth > least) {
                least = depth;
                shallowest = i;
            }
        }
        return shallowest;
    }

    private int wayUp(int which) {
        int top = hills.get(which).firstTop;
        int foot = which == 0 ? lowest(first, top) : footAfter(which - 1);
        double half = height[foot] + PART_WAY * (height[top] - height[foot]);
        int i = top;
        while (i > foot && height[i - 1] >= half) {
            i--;
        }
        return i;
    }

    private int wayDown(int which) {
        int top = hills.get(which).lastTop;
        int foot = footAfter(which);
        double half = height[foot] + PART_WAY * (height[top] - height[foot]);
        int i = top;
        while (i < foot && height[i + 1] >= half) {
            i++;
        }
        return i;
    }

    private int footAfter(int which) {
        int next = which + 1 < hills.size() ? hills.get(which + 1).firstTop : end - 1;
        return lowest(hills.get(which).lastTop, Math.max(hills.get(which).lastTop, next));
    }

    private int lowest(int from, int to) {
        int lowest = from;
        for (int i = from; i <= to; i++) {
            if (height[i] < height[lowest]) {
                lowest = i;
            }
        }
        return lowest;
    }

    private double at(int i) {
        return i < first || i >= end ? 0 : height[i];
    }

    private static int step(double seconds) {
        return (int) Math.round(seconds / VowelBand.STEP_SECONDS);
    }

    private static double seconds(int step) {
        return step * VowelBand.STEP_SECONDS;
    }
}
