package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages of an OGG file (RFC 3533) may be damaged or missing; the others sound where they did. */
class DamagedOggTest {
    private static final byte[] WHOLE = Sounds.resource("stereo-44100.ogg");
    private static final List<Integer> PAGES = pages(WHOLE);
    /** So much of a long block may be missing on either side of a hole. */
    private static final int EDGE_FRAMES = 2_048;

    @TempDir
    private Path folder;

    private float[] sound;
    private List<Problem> problems = List.of();

    @BeforeEach
    void decodeWhole() throws Exception {
        sound = decode(WHOLE);
        assertEquals(List.of(), problems);
        assertTrue(PAGES.size() >= 5, "too few pages: " + PAGES);
    }

    @Test
    void aDamagedPageIsSilentAndShiftsNothing() throws Exception {
        for (int page = 2; page < PAGES.size() - 1; page++) {
            byte[] damaged = WHOLE.clone();
            damaged[PAGES.get(page) + 200] ^= 8;
            assertRightOrSilent(decode(damaged));
            assertEquals(1, problems.size(), "page " + page + ": " + problems);
        }
    }

    @Test
    void aMissingPageIsSilentAndShiftsNothing() throws Exception {
        ByteArrayOutputStream cut = new ByteArrayOutputStream();
        cut.write(WHOLE, 0, PAGES.get(3));
        cut.write(WHOLE, PAGES.get(4), WHOLE.length - PAGES.get(4));
        assertRightOrSilent(decode(cut.toByteArray()));
        assertTrue(problems.get(0).message().contains("warning: The file is damaged at 0:00: "), problems.toString());
    }

    @Test
    void aTruncatedFileSoundsUpToItsEnd() throws Exception {
        float[] cut = decode(Arrays.copyOf(WHOLE, PAGES.get(4) + 50));
        assertTrue(cut.length > sound.length / 4 && cut.length < sound.length, cut.length + " samples");
        assertArrayEquals(Arrays.copyOf(sound, cut.length), cut, 1e-6f);
        assertEquals(
                folder.resolve("song.ogg")
                        + ": warning: The file is cut short at 0:00; it may have been longer. Copy or download it again.",
                problems.get(0).message());
    }

    @Test
    void bytesBehindTheLastPageDoNotMatter() throws Exception {
        assertArrayEquals(sound, decode(Arrays.copyOf(WHOLE, WHOLE.length + 128)));
        assertEquals(List.of(), problems);
    }

    @Test
    void withoutItsHeadersItCannotBePlayed() {
        byte[] damaged = WHOLE.clone();
        damaged[PAGES.get(1) + 100] ^= 1;
        Refused refused = assertThrows(Refused.class, () -> decode(damaged));
        assertTrue(
                refused.getMessage().contains("looks like OGG Vorbis sound but holds nothing that can be played"),
                refused.getMessage());
    }

    private void assertRightOrSilent(float[] decoded) {
        assertEquals(sound.length, decoded.length, "the timeline shifted");
        int wrong = 0;
        int right = 0;
        for (int i = 0; i < sound.length; i++) {
            boolean isRight = Math.abs(sound[i] - decoded[i]) < 1e-6;
            right += isRight && sound[i] != 0 ? 1 : 0;
            wrong += !isRight && decoded[i] != 0 ? 1 : 0;
        }
        assertTrue(wrong <= 2 * 2 * EDGE_FRAMES, wrong + " samples are neither right nor silent");
        assertTrue(right > sound.length / 4, "only " + right + " samples are left");
    }

    private float[] decode(byte[] bytes) throws Exception {
        try (Song song = SongFile.open(Sounds.file(folder, "song.ogg", bytes), Optional.empty())) {
            float[] stereo = Sounds.samples(song);
            problems = song.problems();
            return stereo;
        }
    }

    private static List<Integer> pages(byte[] file) {
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; i + 4 < file.length; i++) {
            if (file[i] == 'O' && file[i + 1] == 'g' && file[i + 2] == 'g' && file[i + 3] == 'S' && file[i + 4] == 0) {
                starts.add(i);
            }
        }
        return starts;
    }
}
