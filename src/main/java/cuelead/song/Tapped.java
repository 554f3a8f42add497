package cuelead.song;

import cuelead.dsp.beat.Taps;
import cuelead.report.Refused;
import cuelead.song.Hearing.Stretch;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Beats through a whole song from what was tapped for a few bars. The first tap is a count 1.
 *
 * @param beats   all of them
 * @param carried what carried the taps on
 * @param taps    what was tapped
 */
public record Tapped(BeatGrid beats, Carried carried, Taps taps) {
    /** What carried the taps through the song. */
    public enum Carried {
        /** The beats that had been heard, as they were or counted otherwise. */
        BY_HEARD_BEATS,
        /** The song was heard again, at the tempo of the taps. */
        BY_LISTENING_AGAIN,
        /** Nothing agrees with the taps: their tempo goes on evenly. */
        EVENLY
    }

    /** Ways to count otherwise, the likeliest first: places of the first 1, then how many beats, then half a beat. */
    private static final List<List<Correction>> WAYS = ways();

    private static List<List<Correction>> ways() {
        List<List<Correction>> levels = List.of(
                List.of(),
                List.of(Correction.HALF),
                List.of(Correction.TWICE),
                List.of(Correction.COUNT_LATER, Correction.HALF),
                List.of(Correction.TWO_FOR_THREE),
                List.of(Correction.COUNT_LATER, Correction.TWO_FOR_THREE),
                List.of(Correction.COUNT_LATER, Correction.COUNT_LATER, Correction.TWO_FOR_THREE),
                List.of(Correction.THREE_FOR_TWO),
                List.of(Correction.COUNT_LATER, Correction.THREE_FOR_TWO));
        List<List<Correction>> all = new ArrayList<>(levels);
        for (List<Correction> level : levels) {
            List<Correction> between = new ArrayList<>(level);
            between.add(Correction.HALF_BEAT);
            all.add(between);
        }
        return all;
    }

    /**
     * Carries taps through a song.
     *
     * @param heard the beats that it has now
     * @param ear   listens again where they do not fit
     */
    public static Tapped through(Taps taps, BeatGrid heard, Path song, Ear ear) throws Refused {
        Optional<BeatGrid> otherwise = counted(taps, heard);
        if (otherwise.isPresent()) {
            return new Tapped(from(taps, otherwise.get()), Carried.BY_HEARD_BEATS, taps);
        }
        Optional<BeatGrid> again =
                ear.follow(song, taps).filter(beats -> TapMatch.of(taps, beats).isGood());
        return again.isPresent()
                ? new Tapped(from(taps, again.get()), Carried.BY_LISTENING_AGAIN, taps)
                : new Tapped(evenly(taps, heard), Carried.EVENLY, taps);
    }

    /** The heard beats in the way that fits the taps best; empty where none does. */
    private static Optional<BeatGrid> counted(Taps taps, BeatGrid heard) throws Refused {
        Optional<BeatGrid> best = Optional.empty();
        double least = Double.MAX_VALUE;
        for (List<Correction> way : WAYS) {
            BeatGrid beats = heard;
            for (Correction correction : way) {
                beats = correction.apply(beats, Optional.empty());
            }
            TapMatch match = TapMatch.of(taps, beats);
            if (match.isGood() && match.cost() < least) {
                least = match.cost();
                best = Optional.of(beats);
            }
        }
        return best;
    }

    private static BeatGrid from(Taps taps, BeatGrid beats) throws Refused {
        return Correction.oneAt(taps.seconds(0), beats, Optional.empty());
    }

    /** From end to end of the heard beats, at the middle tempo of the taps. */
    private static BeatGrid evenly(Taps taps, BeatGrid heard) {
        double beat = taps.beatSeconds();
        double first = taps.seconds(0);
        int before = (int) Math.floor(Math.max(0, first - Math.max(0, heard.beatSeconds(0) - beat)) / beat);
        double end = Math.max(taps.lastSeconds(), heard.beatSeconds(heard.size() - 1));
        int beats = before + 1 + (int) Math.floor((end - first) / beat);
        int bar = GridBeat.highest(GridBeat.of(heard), GridBeat::inBar);
        int phrase = GridBeat.highest(GridBeat.of(heard), GridBeat::inPhrase);
        List<GridBeat> made = new ArrayList<>();
        for (int i = -before; i < beats - before; i++) {
            made.add(new GridBeat(
                    first + i * beat, CountShift.moved(1, i, bar), phrase == 0 ? 0 : CountShift.moved(1, i, phrase)));
        }
        return GridBeat.grid(made);
    }

    /** The same, where nothing but a stretch was wrong: other beats stay. */
    public BeatGrid within(BeatGrid others, Optional<Stretch> stretch) throws Refused {
        if (stretch.isEmpty()) {
            return beats;
        }
        return GridBeat.changed(
                others,
                stretch,
                inside -> GridBeat.of(beats).stream()
                        .filter(beat -> beat.seconds() >= stretch.get().fromSeconds()
                                && beat.seconds() <= stretch.get().toSeconds())
                        .toList());
    }

    /** The comment by which a beat file remembers it. */
    public String comment(Optional<Stretch> stretch) {
        String tapped = String.format(Locale.ROOT, "tapped from %.2f to %.2f", taps.seconds(0), taps.lastSeconds());
        return GridBeat.comment(stretch.isEmpty() ? tapped : tapped + ", used", stretch);
    }
}
