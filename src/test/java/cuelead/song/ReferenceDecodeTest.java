package cuelead.song;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every frame lies where ffmpeg puts it, and sounds the same (reference.csv; how it was made: MANIFEST.md). */
class ReferenceDecodeTest {
    private static final List<String> REFERENCE =
            new String(Sounds.resource("reference.csv"), UTF_8).lines().toList();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "stereo-44100-cbr.mp3",
                "mono-48000-vbr.mp3",
                "mono-22050-vbr.mp3",
                "stereo-24000-no-tag.mp3",
                "stereo-44100.ogg",
                "stereo-22050.flac"
            })
    void decodesAsTheReferenceDoes(String name, @TempDir Path folder) throws Exception {
        try (Song song = SongFile.open(Sounds.file(folder, name, Sounds.resource(name)), Optional.empty())) {
            float[] stereo = Sounds.samples(song);
            int rows = 0;
            for (String row : REFERENCE) {
                String[] columns = row.split(",");
                if (columns[0].equals(name)) {
                    int frame = Integer.parseInt(columns[2]);
                    assertEquals(Integer.parseInt(columns[1]), song.pcm().lengthFrames());
                    assertEquals(Float.parseFloat(columns[3]), stereo[2 * frame], 1e-5, row);
                    assertEquals(Float.parseFloat(columns[4]), stereo[2 * frame + 1], 1e-5, row);
                    rows++;
                }
            }
            assertTrue(rows > 100, "the reference lacks " + name);
            assertEquals(List.of(), song.problems());
        }
    }
}
