package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import cuelead.report.Refused;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** M4A with the program ffmpeg and without it. */
class FfmpegTest {
    /** Looks like the beginning of an M4A file. */
    private static final byte[] M4A = {0, 0, 0, 28, 'f', 't', 'y', 'p', 'M', '4', 'A', ' '};

    @TempDir
    private Path folder;

    @Test
    void withoutTheProgramItSaysWhatToDo() throws Exception {
        Path file = Sounds.file(folder, "song.m4a", M4A);
        Refused refused = assertThrows(
                Refused.class,
                () -> new Ffmpeg("no-program-of-this-name").open(file, "M4A or MP4 (AAC) sound", Limits.SONG_SECONDS));
        assertEquals(
                file + " holds M4A or MP4 (AAC) sound, which is read with the program ffmpeg, and that is not "
                        + "installed: install it, or convert the file to MP3, FLAC or WAV.",
                refused.getMessage());
    }

    @Test
    void aDamagedM4aIsRefused() throws Exception {
        assumeTrue(runs("-version"), "ffmpeg is not installed");
        Path file = Sounds.file(folder, "song.m4a", M4A);
        Refused refused = assertThrows(Refused.class, () -> SongFile.open(file, Optional.empty()));
        assertEquals(
                file + " looks like M4A or MP4 (AAC) sound but holds nothing that can be played: copy or download it "
                        + "again, or choose an MP3, WAV, AIFF, OGG, FLAC or M4A file.",
                refused.getMessage());
    }

    @Test
    void anM4aSoundsAsItsOriginal() throws Exception {
        Path original = Sounds.file(folder, "sine.wav", Sounds.wav(44_100, 2, 44_100));
        Path file = folder.resolve("sine.m4a");
        assumeTrue(runs("-v", "quiet", "-i", original.toString(), "-c:a", "aac", "-b:a", "192k", file.toString()));
        try (Song song = SongFile.open(file, Optional.empty())) {
            float[] stereo = Sounds.samples(song);
            // The coder's blocks of 1,024 frames are not trimmed at the end.
            assertEquals(44_100, stereo.length / 2.0, 1_024);
            for (int i = 4_096; i < 40_000; i++) {
                assertEquals(Sounds.sine(44_100, i), stereo[2 * i], 0.01, "frame " + i);
            }
        }
    }

    private static boolean runs(String... arguments) throws InterruptedException {
        java.util.List<String> command = new java.util.ArrayList<>(java.util.List.of("ffmpeg"));
        command.addAll(java.util.List.of(arguments));
        try {
            return new ProcessBuilder(command)
                            .redirectError(Redirect.DISCARD)
                            .redirectOutput(Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException notThere) {
            return false;
        }
    }
}
