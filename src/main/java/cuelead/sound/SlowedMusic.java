package cuelead.sound;

import cuelead.dsp.stretch.Onsets;
import cuelead.dsp.stretch.Stretcher;
import cuelead.time.SampleRate;
import cuelead.time.TimeMap;

/**
 * A song slower or faster, at its own pitch; where the map says the original speed, its samples are those of the song.
 *
 * @param song   its samples
 * @param onsets where it is struck; found far enough ahead of what is read, or attacks are blurred
 * @param map    which frame of the song is heard when
 */
public record SlowedMusic(Pcm song, Onsets onsets, TimeMap map) implements Music {
    @Override
    public SampleRate rate() {
        return song.rate();
    }

    @Override
    public long lengthFrames() {
        return map.outputFrameAt(song.lengthFrames());
    }

    @Override
    public long songFrameAt(long frame) {
        return map.songFrameAt(frame);
    }

    @Override
    public MusicReader reader() {
        return new SlowedReader(this);
    }

    /** A map that is turned while the music plays must stay the same so far behind the next frame. */
    public static int aheadFrames(SampleRate rate) {
        return Stretcher.aheadFrames(rate) + BandDip.aheadFrames(rate);
    }

    /** The whole of it, from its first frame to its last. */
    public Sound whole() {
        return new Limited(new Whole(reader(), lengthFrames()), rate(), Mix.CEILING_DBTP, 0);
    }
}
