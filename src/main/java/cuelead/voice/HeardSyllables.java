package cuelead.voice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The syllables of a recorded word, heard in its sound alone, where a synthesizer would have told them. After
 * Mermelstein 1975 ("Automatic segmentation of speech into syllabic units", J. Acoust. Soc. Am. 58): every hill of the
 * band of vowels is a syllable, and a dip that is too shallow parts none. As the words are known, hills are joined
 * further until there are no more than syllables in their spelling. A vowel begins less than half way up its
 * hill (half way: Cummins and Port 1998, "Rhythmic constraints on stress timing in English", J. Phonetics 26).
 *
 * <p>The numbers were chosen on takes that {@code src/train/words/takes.py} makes of synthesized words.
 */
final class HeardSyllables {
    /** Hills lower than this part of the highest (18 dB below it) are no vowels. */
    private static final double LOWEST_HILL = 0.12;
    /** A dip parts two syllables when it is below this part of the lower hill (2 dB, as Mermelstein has it). */
    private static final double DEEP_DIP = 0.8;
    /** Too short for a vowel, part way up: the burst of a "k" or a "t". */
    private static final double SHORTEST_VOWEL_SECONDS = 0.040;
    /** Where there are more hills than syllables, a last one lower than this part of the highest (12 dB) is none. */
    private static final double WEAK_HILL = 0.25;
    /** Where hills join, a lower one at the edge still belongs to the vowel when it has this part of the height. */
    private static final double SHOULDER = 0.6;
    /** A syllable with this part of the next one's height is not the weak one before a stress. */
    private static final double AS_STRONG = 0.7;
    /** How far up its hill a vowel begins. */
    private static final double PART_WAY_UP = 0.3;
    /** Behind an "r", "l" or "w", which is a slow rise of the same hill: nearly at its top. */
    private static final double PART_WAY_UP_OF_GLIDE = 0.75;
    /** How far up its hill a vowel ends. */
    private static final double PART_WAY_DOWN = 0.4;
    /** Where the second syllable was not heard, the first has this part of what follows its beginning. */
    private static final double FIRST_OF_TWO = 0.4;

    /**
     * One or more tops without a deep dip between them.
     *
     * @param firstTop step of the first top that is high enough to be of the vowel
     * @param lastTop  step of the last
     */
    private record Hill(int firstTop, int lastTop) {}

    private final double[] height;
    private final boolean[] voiced;
    private final List<Hill> hills = new ArrayList<>();
    private final int first;
    private final int end;
    private final String text;

    private HeardSyllables(double[] height, boolean[] voiced, int first, int end, String text) {
        this.height = height;
        this.voiced = voiced;
        this.first = first;
        this.end = end;
        this.text = text;
    }

    /**
     * The syllable that a recorded phrase is felt on.
     *
     * @param height how strong the band of vowels is, one value every 2 ms
     * @param voiced where a voice may hum: elsewhere nothing is a vowel
     * @param word   where it is heard
     * @param text   what is said: lower-case words with single spaces
     * @return empty when no vowel is heard
     */
    static Optional<StressedSyllable> stressed(double[] height, boolean[] voiced, Run word, String text) {
        HeardSyllables heard = in(height, voiced, word, text);
        if (heard.hills.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(heard.syllable(heard.stressed(), seconds(word.first()), seconds(word.last() + 1)));
    }

    /** From the beginning of the first vowel to the end of the last. */
    static Optional<Run> vowels(double[] height, boolean[] voiced, Run word, String text) {
        HeardSyllables heard = in(height, voiced, word, text);
        return heard.hills.isEmpty()
                ? Optional.empty()
                : Optional.of(new Run(heard.wayUp(0, PART_WAY_UP), heard.wayDown(heard.hills.size() - 1)));
    }

    private static HeardSyllables in(double[] height, boolean[] voiced, Run word, String text) {
        HeardSyllables heard =
                new HeardSyllables(height, voiced, word.first(), Math.min(height.length, word.last() + 1), text);
        heard.findHills(SpelledSyllables.count(text));
        return heard;
    }

    /** Where a syllable was not heard it may be the weak first one. */
    private int stressed() {
        int which = Math.min(SpelledSyllables.stressed(text), hills.size() - 1);
        return which == 1 && isOneMissing() && height[hills.get(0).firstTop] > AS_STRONG * height[hills.get(1).firstTop]
                ? 0
                : which;
    }

    private boolean isOneMissing() {
        return hills.size() < SpelledSyllables.count(text);
    }

    private StressedSyllable syllable(int which, double startSeconds, double endSeconds) {
        double onset = which == 0 ? startSeconds : seconds(wayDown(which - 1));
        double partWay = SpelledSyllables.beginsWithGlide(text) ? PART_WAY_UP_OF_GLIDE : PART_WAY_UP;
        double vowel = Math.max(onset, seconds(wayUp(which, partWay)));
        return new StressedSyllable(onset, vowel, Math.max(vowel, syllableEnd(which, vowel, endSeconds)));
    }

    /** The consonant before the next vowel begins between the end of this one and the dip. */
    private double syllableEnd(int which, double vowelSeconds, double endSeconds) {
        if (which + 1 < hills.size()) {
            return (seconds(wayDown(which)) + seconds(footAfter(which))) / 2;
        }
        boolean isFirstOfTwo = which == 0 && isOneMissing() && SpelledSyllables.stressed(text) == 0;
        return isFirstOfTwo ? vowelSeconds + FIRST_OF_TWO * (endSeconds - vowelSeconds) : endSeconds;
    }

    private void findHills(int most) {
        double highest = 0;
        for (int i = first; i < end; i++) {
            highest = voiced[i] ? Math.max(highest, height[i]) : highest;
        }
        for (int i = first; i < end; i++) {
            boolean top = height[i] >= at(i - 1) && height[i] > at(i + 1);
            if (top && voiced[i] && height[i] >= LOWEST_HILL * highest) {
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
            if (!drop(weakLast()) && !drop(shortest())) {
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

    /** The last, where it is weak: the nasal of "unwind" lets go there, whose first vowel may be shorter than a burst. */
    private int weakLast() {
        int last = hills.size() - 1;
        double highest = 0;
        for (Hill hill : hills) {
            highest = Math.max(highest, height[hill.firstTop]);
        }
        return height[hills.get(last).firstTop] < WEAK_HILL * highest ? last : -1;
    }

    private int shortest() {
        int shortest = -1;
        double least = SHORTEST_VOWEL_SECONDS;
        for (int i = 0; i < hills.size(); i++) {
            double length = seconds(wayDown(i)) - seconds(wayUp(i, PART_WAY_UP));
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

    private int wayUp(int which, double partWay) {
        int top = hills.get(which).firstTop;
        int foot = which == 0 ? lowest(first, top) : footAfter(which - 1);
        double half = height[foot] + partWay * (height[top] - height[foot]);
        int i = top;
        while (i > foot && height[i - 1] >= half) {
            i--;
        }
        return i;
    }

    private int wayDown(int which) {
        int top = hills.get(which).lastTop;
        int foot = footAfter(which);
        double half = height[foot] + PART_WAY_DOWN * (height[top] - height[foot]);
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

    private static double seconds(int step) {
        return step * BarkPowers.STEP_SECONDS;
    }
}
