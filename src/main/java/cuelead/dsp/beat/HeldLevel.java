package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
    /** Beats that can be danced: 45 to 230 a minute. */
    private static final double SHORTEST_SECONDS = 60 / 230.0;

    private static final double LONGEST_SECONDS = 60 / 45.0;
    /** Levels at which a song is searched besides its middle tempo, as parts of that. */
    private static final double[] OTHER_LEVELS = {0.5, 2.0 / 3, 1.5, 2};

    /** So much of a jumping path must be at related tempi. */
    private static final double MOSTLY = 0.7;

    /** A path about the middle tempo is taken for one that wanders where it fits so nearly as well. */
    private static final double NEARLY_AS_WELL = 0.94;

    /**
     * A faster level must keep so much of the score of the best-fitting path: beats that hardly anything in the song answers
     * to are no level of it, however common their tempo is. Noise makes such beats look likelier than they are.
     */
    private static final double FASTER_KEEPS = 0.5;

    private final double middleSeconds;

    private HeldLevel(double middleSeconds) {
        this.middleSeconds = middleSeconds;
    }

    static HeldLevel of(BarPath free) {
        return new HeldLevel(middleLength(free));
    }

    private static double middleLength(BarPath path) {
        double[] lengths = path.beats().stream()
                .mapToDouble(PathBeat::lengthSeconds)
                .sorted()
                .toArray();
        return lengths.length == 0 ? 0 : lengths[lengths.length / 2];
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

    /** The best path about the middle tempo. */
    BarPath middle(TempoSearch paths) {
        return about(middleSeconds, paths);
    }

    private static BarPath about(double seconds, TempoSearch paths) {
        return paths.between(60 / seconds * SLOWEST, 60 / seconds * FASTEST);
    }

    /**
     * The path at the level that is the likeliest for the song.
     *
     * @param odds   of levels of this song
     * @param middle the path at the middle level
     * @param paths  finds the best path between two tempi, in beats a minute
     */
    BarPath likeliest(LevelOdds odds, BarPath middle, TempoSearch paths) {
        List<BarPath> levels = new ArrayList<>(List.of(middle));
        for (double level : OTHER_LEVELS) {
            double seconds = middleSeconds / level;
            if (seconds > SHORTEST_SECONDS && seconds < LONGEST_SECONDS) {
                levels.add(about(seconds, paths));
            }
        }
        BarPath best = levels.stream()
                .max(Comparator.comparingDouble(BarPath::logScore))
                .orElseThrow();
        double highest = best.logScore();
        return levels.stream()
                .filter(path -> !path.beats().isEmpty())
                .filter(path -> isAnsweredTo(path, best))
                .max(Comparator.comparingDouble(path -> odds.of(path, middleLength(path), Math.max(1, highest))))
                .orElseThrow();
    }

    /** Whether enough in the song answers to the beats of a path that may be faster than the best-fitting one. */
    static boolean isAnsweredTo(BarPath path, BarPath best) {
        boolean faster = middleLength(path) < middleLength(best);
        return !faster || path.logScore() >= FASTER_KEEPS * best.logScore();
    }

    /** Finds the best path between two tempi, in beats a minute. */
    interface TempoSearch {
        BarPath between(double slowest, double fastest);
    }

    /**
     * Whether a path about the middle tempo fits nearly as well as one that wanders about it; scores of other levels say
     * nothing about that, since fewer beats are heard better.
     */
    static boolean isNearlyAsGood(BarPath path, BarPath other) {
        return path.logScore() >= NEARLY_AS_WELL * other.logScore();
    }
}
