package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.List;

/** How far a steady part goes on beyond what is well supported, to one side: through a soft intro or a slowing ending. */
final class PartReach {
    /** Two places of a song are at one tempo when their beats' lengths differ by less than this part. */
    static final double ONE_TEMPO = 0.06;

    /** Beats that tell how long a beat is usually. */
    private static final int USUAL_BEATS = 24;
    /** Beats go on while most are within this part of the usual length ... */
    private static final double SAME_TEMPO = 0.08;

    private static final double MOST_AT_TEMPO = 0.65;
    /** ... and, over so many, are heard a little; a beat far off counts no less than this. */
    private static final int WINDOW_BEATS = 16;

    private static final double LEAST_SUPPORT = 2.5;
    private static final double LEAST_COUNTED = -8;
    /** How fast the usual length follows a slowing or quickening end. */
    private static final double FOLLOWING = 0.4;
    /** A beat that is heard, and is about as long as its neighbour, is kept; so the last beats may slow down. */
    private static final double LARGEST_STEP = 0.14;

    private static final double LEAST_KEPT = 0;
    /** Where the tempo is kept throughout, beats go on through soft music for so long: an intro or an ending is counted. */
    private static final double LONGEST_SOFT_SECONDS = 40;

    private static final double MOST_AT_ONE_TEMPO = 0.85;
    /**
     * Where the tempo is lost and comes back, as in an ending without drums, beats go on if of at least so many as many are at
     * the tempo, and if they are heard no worse than this on the mean. Of 42 made recordings with 45 s of talk, applause,
     * stray tones or stray strokes before or after the music, those that keep the tempo so well are heard at -2.8 or less.
     */
    private static final int LEAST_COMING_BACK = 24;

    private static final double LEAST_SUPPORT_COMING_BACK = -1;

    private final List<PathBeat> beats;
    private final int start;
    private final int limit;
    private final int direction;

    /**
     * From one beat outwards.
     *
     * @param limit     the first beat, going outwards, that is out of reach
     * @param direction 1 = to later beats, -1 = to earlier ones
     */
    PartReach(List<PathBeat> beats, int start, int limit, int direction) {
        this.beats = beats;
        this.start = start;
        this.limit = limit;
        this.direction = direction;
    }

    /** The last beat, going outwards, before tempo or support are lost for good. */
    int last() {
        double usual = usualLength(beats, start, -direction);
        int reached = start;
        int i = start + direction;
        while (i != limit) {
            boolean isKept = isKept(i);
            if (isKept || isSoft(i, usual) || goesOn(i, usual)) {
                reached = i;
                usual += isKept ? FOLLOWING * (beats.get(i).lengthSeconds() - usual) : 0;
            } else {
                int back = lastComingBack(i, usual);
                if (back == i) {
                    break;
                }
                reached = back;
            }
            i = reached + direction;
        }
        return reached;
    }

    private boolean isKept(int i) {
        double step = beats.get(i).lengthSeconds() / beats.get(i - direction).lengthSeconds() - 1;
        return Math.abs(step) < LARGEST_STEP && beats.get(i).support() > LEAST_KEPT;
    }

    private boolean isSoft(int i, double usual) {
        boolean isNear = Math.abs(beats.get(i).seconds() - beats.get(start).seconds()) < LONGEST_SOFT_SECONDS;
        return isNear && keepsTempo(i, usual);
    }

    /** Whether nearly all of the next beats are at this tempo, heard or not. */
    private boolean keepsTempo(int from, double usual) {
        int count = 0;
        int kept = 0;
        for (int i = from; i != limit && count < WINDOW_BEATS; i += direction) {
            count++;
            kept += isAt(usual, ONE_TEMPO, beats.get(i)) ? 1 : 0;
        }
        return kept >= MOST_AT_ONE_TEMPO * count;
    }

    /** Whether most of the next beats are at this tempo and are heard. */
    private boolean goesOn(int from, double usual) {
        int count = 0;
        int kept = 0;
        double support = 0;
        for (int i = from; i != limit && count < WINDOW_BEATS; i += direction) {
            count++;
            kept += isAt(usual, SAME_TEMPO, beats.get(i)) ? 1 : 0;
            support += Math.max(LEAST_COUNTED, beats.get(i).support());
        }
        return kept >= MOST_AT_TEMPO * count && support >= LEAST_SUPPORT * count;
    }

    /** The farthest beat up to which nearly all are at this tempo, and are heard a little; {@code from} if there is none. */
    private int lastComingBack(int from, double usual) {
        int last = from;
        int count = 0;
        int kept = 0;
        double support = 0;
        for (int i = from; i != limit; i += direction) {
            count++;
            kept += isAt(usual, ONE_TEMPO, beats.get(i)) ? 1 : 0;
            support += Math.max(LEAST_COUNTED, beats.get(i).support());
            boolean isBack = count >= LEAST_COMING_BACK
                    && kept >= MOST_AT_ONE_TEMPO * count
                    && support >= LEAST_SUPPORT_COMING_BACK * count;
            last = isBack ? i : last;
        }
        return last;
    }

    static boolean isAt(double usual, double tolerance, PathBeat beat) {
        return Math.abs(beat.lengthSeconds() / usual - 1) < tolerance;
    }

    /** The median length of the beats from one on. */
    static double usualLength(List<PathBeat> beats, int start, int direction) {
        int other = Math.max(0, Math.min(beats.size() - 1, start + direction * USUAL_BEATS));
        double[] lengths = beats.subList(Math.min(start, other), Math.max(start, other) + 1).stream()
                .mapToDouble(PathBeat::lengthSeconds)
                .sorted()
                .toArray();
        return lengths[lengths.length / 2];
    }
}
