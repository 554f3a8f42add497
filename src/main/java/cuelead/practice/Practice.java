package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.lesson.Lesson;
import cuelead.plan.CallPlan;
import cuelead.plan.Timeline;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.sound.Speakers;
import java.util.List;
import java.util.Optional;

/**
 * A dance made ready to be practised: sheet read, song open, beats laid, calls decided, words spoken, mix made. All
 * times are seconds of what is heard: at its own speed, of the song.
 */
public interface Practice extends Track, AutoCloseable {
    /** Makes a practice ready; the song goes on loading behind it. */
    static Practice prepare(Wish wish, Places places, Progress progress) throws Refused {
        return new Preparation(wish, places, progress, Preparation.Purpose.A_TRACK).prepare();
    }

    /**
     * The same for what is only played live: it waits for no word that is not heard soon. The others are spoken while it
     * plays, and its calls are those of any practice as soon as they are. It cannot be read as a track.
     */
    static Practice prepareToPlay(Wish wish, Places places, Progress progress) throws Refused {
        return new Preparation(wish, places, progress, Preparation.Purpose.PLAYING).prepare();
    }

    Dance dance();

    /** What was found wrong or doubtful with sheet, song and beats, that did not stop the practice. */
    List<Problem> problems();

    Optional<Song> song();

    Timeline timeline();

    CallPlan plan();

    /** Plays it on one output, steered by the user; the speakers play nothing else meanwhile. */
    default LivePractice live(Speakers speakers) {
        return live(speakers, Optional.empty(), Delays.NONE);
    }

    /**
     * Plays it, steered by the user; the speakers play nothing else meanwhile.
     *
     * @param speakers for everything, or for the music alone
     * @param calls    for calls and clicks; empty = they go with the music. Runs at the same sample rate
     * @param delays   how much later than this computer knows things are heard
     */
    LivePractice live(Speakers speakers, Optional<Speakers> calls, Delays delays);

    /** Waits until the mix can be read up to a frame; not on the audio thread. */
    default void await(long frame) throws InterruptedException, Refused {
        await(frame, Progress.UNTOLD);
    }

    /**
     * The same.
     *
     * @param progress told how far the listening to the song is
     */
    void await(long frame, Progress progress) throws InterruptedException, Refused;

    /**
     * Waits until it can be played live up to a frame. How loud a song is may be found only while it plays: then its
     * levels come to what they should be by steps that nobody notices.
     */
    void awaitPlayable(long frame) throws InterruptedException, Refused;

    /** Whether all of its song is loaded; where it is not, the rest is asked for, and nobody waits. */
    boolean isSongLoaded();

    /**
     * Makes a lesson of its dance ready.
     *
     * @throws Refused when a pass cannot be made: music without a song, a wall that is not danced
     */
    Walkthrough walkthrough(Lesson lesson) throws Refused;

    @Override
    void close();
}
