package cuelead.song;

import cuelead.report.Refused;
import cuelead.sound.Pcm;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * Opens sound files: MP3, WAV, AIFF, OGG Vorbis and FLAC, and others where the program {@code ffmpeg} is
 * installed. What a file holds is told by its content, not by its name.
 */
public final class SongFile {
    private SongFile() {}

    /**
     * Opens a song and begins to load it in the background. Reads headers only, so that it returns at once with
     * the exact length known.
     *
     * @param wantedRate the rate to resample to; empty for the song's own
     * @throws Refused when it is missing, unreadable, no sound, longer than 20 minutes, or too big for the memory
     */
    public static Song open(Path file, Optional<SampleRate> wantedRate) throws Refused {
        return open(file, wantedRate, Limits.of(Limits.SONG_SECONDS));
    }

    static Song open(Path file, Optional<SampleRate> wantedRate, Limits limits) throws Refused {
        Findings findings = new Findings(file.toString());
        Decoder original = DecoderChoice.open(file, limits, findings);
        Decoder decoder = atRate(original, wantedRate);
        Pcm pcm = new Pcm(decoder.rate(), decoder.lengthFrames());
        CompletableFuture<Void> loaded = new Loader(decoder, pcm, findings).start();
        return new Song(file, pcm, findings::list, loaded);
    }

    /**
     * Reads a short sound (a minute at most) whole, such as a recorded call-word.
     *
     * @throws Refused as {@link #open}
     */
    public static WholeSound readAll(Path file) throws Refused {
        Findings findings = new Findings(file.toString());
        try (Decoder decoder = DecoderChoice.open(file, Limits.of(Limits.SHORT_SOUND_SECONDS), findings)) {
            int frames = Math.toIntExact(decoder.lengthFrames());
            float[] stereo = new float[frames * Sound.CHANNELS];
            int got = decoder.read(stereo, frames);
            float[] mono = new float[got];
            for (int i = 0; i < got; i++) {
                mono[i] = (stereo[2 * i] + stereo[2 * i + 1]) / 2;
            }
            return new WholeSound(decoder.rate(), mono, findings.list());
        } catch (IOException broken) {
            throw Refusals.unreadable(file, broken);
        }
    }

    private static Decoder atRate(Decoder original, Optional<SampleRate> wantedRate) {
        return wantedRate
                .filter(rate -> !rate.equals(original.rate()))
                .<Decoder>map(rate -> new ResampledDecoder(original, rate))
                .orElse(original);
    }

    /** Whether the file is there to be opened at all. */
    static long checkedSize(Path file) throws Refused, IOException {
        if (Files.notExists(file)) {
            throw Refusals.missing(file);
        }
        if (Files.isDirectory(file)) {
            throw Refusals.folder(file);
        }
        long size = Files.size(file);
        if (size == 0) {
            throw Refusals.empty(file);
        }
        return size;
    }
}
