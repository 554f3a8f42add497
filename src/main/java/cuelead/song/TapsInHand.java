package cuelead.song;

import cuelead.dsp.beat.Taps;
import cuelead.time.BeatGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Taps while a user makes them. Used on one thread. */
public final class TapsInHand {
    /** Fewer taps say too little. */
    public static final int FEWEST = Taps.FEWEST;

    /** Whoever lets so many beats pass has ended tapping. */
    private static final double END_BEATS = 2.5;
    /** Slower than any beat: whoever lets this pass begins anew. */
    private static final double LONGEST_BEAT_SECONDS = 2;

    private final List<Double> taps = new ArrayList<>();

    /** How many are waiting to be carried through the song. */
    public int count() {
        return taps.size();
    }

    /** A tap; one long after the last begins anew, and so does one that is earlier in the song. */
    public void tap(double songSeconds) {
        if (!taps.isEmpty() && isOver(songSeconds)) {
            taps.clear();
        }
        taps.add(songSeconds);
    }

    private boolean isOver(double songSeconds) {
        double since = songSeconds - taps.get(taps.size() - 1);
        return since <= 0 || since > LONGEST_BEAT_SECONDS;
    }

    /**
     * The taps, once the user has ended tapping; they are done with then. Empty as long as there are too few.
     *
     * @param beats what the song has now
     */
    public Optional<TapRun> ended(double songSeconds, BeatGrid beats) {
        if (taps.size() < FEWEST) {
            return Optional.empty();
        }
        Taps all = all();
        boolean hasEnded = songSeconds - all.lastSeconds() >= END_BEATS * all.beatSeconds();
        return hasEnded ? endedNow(beats) : Optional.empty();
    }

    /** The same at once, for a user who says that there will be no more. */
    public Optional<TapRun> endedNow(BeatGrid beats) {
        if (taps.size() < FEWEST) {
            return Optional.empty();
        }
        TapRun run = new TapRun(all(), beats);
        taps.clear();
        return Optional.of(run);
    }

    /** None of them counts. */
    public void forget() {
        taps.clear();
    }

    private Taps all() {
        return new Taps(taps.stream().mapToDouble(seconds -> seconds).toArray());
    }
}
