package cuelead.song;

import cuelead.dsp.beat.Taps;
import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import java.nio.file.Path;

/**
 * Taps that a user has ended, to be carried through the song.
 *
 * @param beats what the song has now
 */
public record TapRun(Taps taps, BeatGrid beats) {
    /** Carries them through it, which may take some seconds. */
    public Tapped through(Path song, Ear ear) throws Refused {
        return Tapped.through(taps, beats, song, ear);
    }
}
