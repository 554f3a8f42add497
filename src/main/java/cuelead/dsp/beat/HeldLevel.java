package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;

/**
 * Keeps a song from changing between related tempi, such as from every beat to every second or to three for two: dancers
 * hear one pulse throughout. A free search that jumps so is made again within a narrow range about its middle tempo; where
 * a song has truly several tempi, as a mix of songs has, the free search stands.
 */
final class HeldLevel {
    /** The narrow range, as parts of the middle tempo; live bands stay well within it. */
    private static final double SLOWEST = 0.82;

    private static final double FASTEST = 1.2;
    /** Ratios by which one music can be heard at two levels. */
    private static final double[] RELATED = {0.5, 2.0 / 3, 0.75, 4.0 / 3, 1.5, 2};

    private static final double RATIO_TOLERANCE = 0.07;
    /** Beats that can be danced: 50 to 215 a minute. */
    private static final double SHORTEST_SECONDS = 60 / 215.0;

    private static final double LONGEST_SECONDS = 60 / 50.0;
    /** Tempi that most line dances have, beats a minute (common practice). */
    private static final double USUAL_FROM = 80;

    private static final double USUAL_TO = 150;
    private static final double COST_AN_OCTAVE = 0.05;
    /** So much of a jumping path must be at related tempi. */
    private static final double MOSTLY = 0.7;

    /** From this tempo on, beats a minute, twice as many may be the beat: two-step, fast rock, fast waltz. */
    private static final double DOUBTED_FROM = 72;
    /**
     * Twice as many beats are taken where they fit so nearly as well. Between the beats of a truly slow song the network
     * hears hardly any, so that twice as many fit far worse; on made songs below 0.5, where they are right above 0.95.
     */
    private static final double NEARLY_AS_WELL = 0.94;

    private final double middleSeconds;

    private HeldLevel(double middleSeconds) {
        this.middleSeconds = middleSeconds;
    }

    static HeldLevel of(BarPath free) {
        double[] lengths = free.beats().stream()
                .mapToDouble(PathBeat::lengthSeconds)
                .sorted()
                .toArray();
        return new HeldLevel(lengths.length == 0 ? 0 : lengths[lengths.length / 2]);
    }

    /** How a path keeps to its middle tempo. */
    enum Keeping {
        KEPT,
        /** It jumps to related tempi, and hardly to others. */
        JUMPS,
        /** It has other tempi: several songs, or one that is heard badly in places. */
        WANDERS
    }

    Keeping keepingOf(BarPath path) {
        int outside = 0;
        int related = 0;
        for (PathBeat beat : path.beats()) {
            double ratio = beat.lengthSeconds() / middleSeconds;
            if (ratio > 1 / SLOWEST || ratio < 1 / FASTEST) {
                outside++;
                related += isRelated(ratio) ? 1 : 0;
            }
        }
        if (outside == 0) {
            return Keeping.KEPT;
        }
        return related >= MOSTLY * outside ? Keeping.JUMPS : Keeping.WANDERS;
    }

    private static boolean isRelated(double ratio) {
        for (double level : RELATED) {
            if (Math.abs(ratio / level - 1) < RATIO_TOLERANCE) {
                return true;
            }
        }
        return false;
    }

    /** The best path at one level: the middle one, or one related to it that fits the song better. */
    BarPath search(Activations heard, int beatsPerBar) {
        BarPath best = at(middleSeconds, heard, beatsPerBar);
        double bestScore = liking(middleSeconds) * best.logScore();
        for (double ratio : RELATED) {
            double seconds = middleSeconds * ratio;
            if (seconds > SHORTEST_SECONDS && seconds < LONGEST_SECONDS) {
                BarPath path = at(seconds, heard, beatsPerBar);
                best = liking(seconds) * path.logScore() > bestScore ? path : best;
                bestScore = Math.max(bestScore, liking(seconds) * path.logScore());
            }
        }
        return best;
    }

    /** Whether a path is so slow, and yet not truly slow, that twice as many beats may be the beat. */
    static boolean isDoubted(BarPath path) {
        double seconds = of(path).middleSeconds;
        return seconds > 2 * SHORTEST_SECONDS && seconds * DOUBTED_FROM <= 60;
    }

    /** Twice as many beats as the path has. */
    static BarPath twiceAsMany(BarPath path, Activations heard, int beatsPerBar) {
        return at(of(path).middleSeconds / 2, heard, beatsPerBar);
    }

    /** Whether one path fits nearly as well as another that it would be liked better than. */
    static boolean isNearlyAsGood(BarPath path, BarPath other) {
        return path.logScore() >= NEARLY_AS_WELL * other.logScore();
    }

    /** A soft preference for tempi that most dances have; only where two levels fit about equally does it decide. */
    private static double liking(double beatSeconds) {
        double tempo = 60 / beatSeconds;
        double octavesOutside =
                Math.max(0, Math.max(Math.log(USUAL_FROM / tempo), Math.log(tempo / USUAL_TO))) / Math.log(2);
        return 1 - COST_AN_OCTAVE * octavesOutside;
    }

    private static BarPath at(double seconds, Activations heard, int beatsPerBar) {
        double tempo = 60 / seconds;
        return BarPointer.search(heard, beatsPerBar, tempo * SLOWEST, tempo * FASTEST);
    }
}
