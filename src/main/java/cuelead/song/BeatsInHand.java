package cuelead.song;

import cuelead.dsp.beat.Taps;
import cuelead.report.Refused;
import cuelead.song.Hearing.Stretch;
import cuelead.time.BeatGrid;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** The beats of a song while a user puts them right: every step can be taken back. Used on one thread. */
public final class BeatsInHand {
    /** Whoever lets so many beats pass has ended tapping. */
    private static final double END_BEATS = 2.5;
    /** Slower than any beat: whoever lets this pass begins anew. */
    private static final double LONGEST_BEAT_SECONDS = 2;

    /** Fewer taps say too little. */
    public static final int FEWEST_TAPS = Taps.FEWEST;

    private final Optional<Stretch> within;
    private final Deque<State> states = new ArrayDeque<>();
    private final List<Double> taps = new ArrayList<>();

    /** Beats and the comments that say how they came about. */
    private record State(BeatGrid beats, List<String> comments) {}

    /** @param within where they are put right; empty = everywhere */
    public BeatsInHand(BeatGrid beats, Optional<Stretch> within) {
        this.within = within;
        states.push(new State(beats, List.of()));
    }

    public BeatGrid beats() {
        return states.element().beats();
    }

    /** What was done, for the beat file. */
    public List<String> comments() {
        return states.element().comments();
    }

    public boolean isChanged() {
        return states.size() > 1;
    }

    /** How many taps are waiting to be carried through the song. */
    public int taps() {
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

    /** The taps, once the user has ended tapping; they are done with then. Empty as long as there are too few. */
    public Optional<TapRun> ended(double songSeconds) {
        if (taps.size() < Taps.FEWEST) {
            return Optional.empty();
        }
        Taps all = allTaps();
        boolean hasEnded = songSeconds - all.lastSeconds() >= END_BEATS * all.beatSeconds();
        return hasEnded ? endedNow() : Optional.empty();
    }

    /** The same at once, for a user who says that there will be no more. */
    public Optional<TapRun> endedNow() {
        if (taps.size() < Taps.FEWEST) {
            return Optional.empty();
        }
        TapRun run = new TapRun(allTaps(), beats());
        taps.clear();
        return Optional.of(run);
    }

    private Taps allTaps() {
        return new Taps(taps.stream().mapToDouble(seconds -> seconds).toArray());
    }

    public void use(Tapped tapped) throws Refused {
        push(tapped.within(beats(), within), tapped.comment(within));
    }

    public void change(Correction correction) throws Refused {
        push(correction.apply(beats(), within), correction.comment(within));
    }

    public void oneAt(double songSeconds) throws Refused {
        push(Correction.oneAt(songSeconds, beats(), within), Correction.oneAtComment(songSeconds, within));
    }

    private void push(BeatGrid beats, String comment) {
        List<String> comments = new ArrayList<>(comments());
        comments.add(comment);
        states.push(new State(beats, List.copyOf(comments)));
    }

    /** Takes the last step back; false where there is none. */
    public boolean takeBack() {
        if (!isChanged()) {
            return false;
        }
        states.pop();
        return true;
    }
}
