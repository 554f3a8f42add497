package cuelead.practice;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.util.List;

/** Sound with its calls, ready to be written. Frames are those of the song, or of the track where there is none. */
public interface Track {
    SampleRate rate();

    /** First frame that {@link #mix} gives. */
    long fromFrame();

    /** The frame after the last that {@link #mix} gives. */
    long toFrame();

    /** Whether there is music in it. */
    boolean hasMusic();

    /** The calls with their clips, in order. */
    List<SpokenCall> spokenCalls();

    /** A new stream of everything. */
    Sound mix();

    /** The calls alone, as they are in the mix. */
    Sound voiceStem();

    /** The music alone with its dips, as it is in the mix. */
    Sound musicStem();
}
