package cuelead.song;

import cuelead.report.Refused;
import cuelead.song.Hearing.Stretch;
import cuelead.time.BeatGrid;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** The beats of a song while a user puts them right: every step can be taken back, and done again. Used on one thread. */
public final class BeatsInHand {
    private final Deque<State> states = new ArrayDeque<>();
    /** What was taken back, the last first. */
    private final Deque<State> takenBack = new ArrayDeque<>();

    /** Beats and the comments of their file. */
    private record State(BeatGrid beats, List<String> comments) {}

    /**
     * As they were found.
     *
     * @param comments those of their file; none where there is none
     */
    public BeatsInHand(BeatGrid beats, List<String> comments) {
        states.push(new State(beats, List.copyOf(comments)));
    }

    public BeatGrid beats() {
        return states.element().beats();
    }

    /** What is known of them. */
    public Hearing hearing() {
        return BeatFile.hearing(beats(), comments());
    }

    /** For the beat file: those that were there and still hold, and what was done. */
    public List<String> comments() {
        return states.element().comments();
    }

    /** Whether a user wrote them or put them right, now or before. */
    public boolean isUsers() {
        return BeatFile.isUsers(new BeatFile.Reading(Optional.of(beats()), comments(), List.of()));
    }

    public boolean isChanged() {
        return states.size() > 1;
    }

    /** Whether something was taken back and can be done again. */
    public boolean hasTakenBack() {
        return !takenBack.isEmpty();
    }

    /**
     * Takes what was tapped.
     *
     * @param within where; empty = everywhere
     */
    public void use(Tapped tapped, Optional<Stretch> within) throws Refused {
        push(tapped.within(beats(), within), tapped.comment(within));
    }

    /**
     * Puts them right.
     *
     * @param within where; empty = everywhere
     */
    public void change(Correction correction, Optional<Stretch> within) throws Refused {
        push(correction.apply(beats(), within), correction.comment(within));
    }

    /**
     * Makes the beat nearest to a moment the first of an eight.
     *
     * @param within where; empty = everywhere
     */
    public void oneAt(double songSeconds, Optional<Stretch> within) throws Refused {
        push(Correction.oneAt(songSeconds, beats(), within), Correction.oneAtComment(songSeconds, within));
    }

    /** The dance begins somewhere, whatever its sheet says. */
    public void begin(DanceBegin begin) {
        List<String> comments = new ArrayList<>(DanceBegin.without(begin.dance(), Correction.unmarked(comments())));
        comments.add(begin.comment());
        push(new State(beats(), List.copyOf(comments)));
    }

    /** The song was listened to again; where a dance begins stays. */
    public void hear(Hearing again, SongNote song) {
        List<String> comments = new ArrayList<>(BeatFile.heardComments(again, song));
        comments.addAll(DanceBegin.among(comments()));
        push(new State(again.beats(), List.copyOf(comments)));
    }

    private void push(BeatGrid beats, String comment) {
        List<String> comments = new ArrayList<>(Correction.kept(comments()));
        comments.add(comment);
        push(new State(beats, List.copyOf(comments)));
    }

    private void push(State state) {
        states.push(state);
        takenBack.clear();
    }

    /** Takes the last step back; false where there is none. */
    public boolean takeBack() {
        if (!isChanged()) {
            return false;
        }
        takenBack.push(states.pop());
        return true;
    }

    /** Does again what was taken back last; false where nothing was, or another step was made since. */
    public boolean doAgain() {
        if (takenBack.isEmpty()) {
            return false;
        }
        states.push(takenBack.pop());
        return true;
    }
}
