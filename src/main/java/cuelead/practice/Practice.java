package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.plan.CallPlan;
import cuelead.plan.Timeline;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Optional;

/**
 * A dance made ready to be practised: sheet read, song open, beats laid, calls decided, words spoken, mix made. All
 * times are seconds of the song (without a song: of the practice track).
 */
public interface Practice extends AutoCloseable {
    /** Makes a practice ready; the song goes on loading behind it. */
    static Practice prepare(Wish wish, Places places, Progress progress) throws Refused {
        return new Preparation(wish, places, progress).prepare();
    }

    Dance dance();

    /** What was found wrong or doubtful with sheet, song and beats, that did not stop the practice. */
    List<Problem> problems();

    Optional<Song> song();

    Timeline timeline();

    CallPlan plan();

    /** The calls with their clips, in the order of the plan, those outside of the wish's times left out. */
    List<SpokenCall> spokenCalls();

    SampleRate rate();

    /** First frame of the song that {@link #mix} gives. */
    long fromFrame();

    /** The frame after the last that {@link #mix} gives. */
    long toFrame();

    /** A new stream of everything, from the wish's beginning to its end. */
    Sound mix();

    /** The calls alone, as they are in the mix. */
    Sound voiceStem();

    /** The music alone with its dips, as it is in the mix. */
    Sound musicStem();

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

    /** Waits until the mix can be read up to a frame of the song; not on the audio thread. */
    void await(long songFrame) throws InterruptedException, Refused;

    @Override
    void close();
}
