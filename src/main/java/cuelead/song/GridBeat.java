package cuelead.song;

import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;

/**
 * One beat of a grid that is being put right.
 *
 * @param seconds  from the song's first frame
 * @param inBar    1 = first of its bar
 * @param inPhrase 1 = first of its phrase; 0 = not known
 */
record GridBeat(double seconds, int inBar, int inPhrase) {
    private static final String CORRECTED = " corrected: ";
    /** Fewer beats are no stretch. */
    private static final int FEWEST = 4;

    static List<GridBeat> of(BeatGrid grid) {
        List<GridBeat> beats = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            beats.add(new GridBeat(grid.beatSeconds(i), grid.beatInBar(i), grid.countInPhrase(i)));
        }
        return beats;
    }

    static BeatGrid grid(List<GridBeat> beats) {
        return new BeatGrid(
                beats.stream().mapToDouble(GridBeat::seconds).toArray(),
                beats.stream().mapToInt(GridBeat::inBar).toArray(),
                beats.stream().mapToInt(GridBeat::inPhrase).toArray());
    }

    /** Beats to the bar, or counts to the phrase: the highest number that occurs. */
    static int highest(List<GridBeat> beats, ToIntFunction<GridBeat> number) {
        return beats.stream().mapToInt(number).max().orElse(0);
    }

    /** The grid with a change made to its beats, or to those of a stretch. */
    static BeatGrid changed(BeatGrid grid, Optional<Hearing.Stretch> within, UnaryOperator<List<GridBeat>> change)
            throws Refused {
        List<GridBeat> before = new ArrayList<>();
        List<GridBeat> inside = new ArrayList<>();
        List<GridBeat> after = new ArrayList<>();
        for (GridBeat beat : of(grid)) {
            double from = within.map(Hearing.Stretch::fromSeconds).orElse(Double.NEGATIVE_INFINITY);
            double to = within.map(Hearing.Stretch::toSeconds).orElse(Double.POSITIVE_INFINITY);
            (beat.seconds < from ? before : beat.seconds > to ? after : inside).add(beat);
        }
        if (inside.size() < FEWEST) {
            throw new Refused("There are only " + inside.size()
                    + " beats there to put right: name a longer stretch of the song.");
        }
        return grid(Seam.join(Seam.join(before, change.apply(inside)), after));
    }

    static String comment(String words, Optional<Hearing.Stretch> within) {
        return CORRECTED
                + words
                + within.map(s -> String.format(Locale.ROOT, " from %.2f to %.2f", s.fromSeconds(), s.toSeconds()))
                        .orElse("");
    }
}
