package cuelead.studio;

import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;
import java.nio.file.Path;
import java.util.Optional;

/** Reads whole sound files as one channel. */
public final class MonoFile {
    private static final int BLOCK_FRAMES = 8192;

    private MonoFile() {}

    /**
     * All of a file.
     *
     * @param rate the rate to convert to; empty for the file's own
     * @throws Refused when it is missing, unreadable or no sound
     */
    public static MonoSound read(Path file, Optional<SampleRate> rate) throws Refused {
        try (Song song = SongFile.open(file, rate)) {
            song.awaitLoaded();
            return of(song);
        }
    }

    /** The mean of both channels of a song that is loaded. */
    static MonoSound of(Song song) {
        float[] mono = new float[Math.toIntExact(song.pcm().lengthFrames())];
        float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
        for (int from = 0; from < mono.length; from += BLOCK_FRAMES) {
            int frames = Math.min(BLOCK_FRAMES, mono.length - from);
            song.pcm().copy(from, block, frames);
            for (int i = 0; i < frames; i++) {
                mono[from + i] = (block[2 * i] + block[2 * i + 1]) / 2;
            }
        }
        return new MonoSound(mono, song.pcm().rate());
    }
}
