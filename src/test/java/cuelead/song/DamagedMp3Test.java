package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is missing from an MP3, what is left of it stays where it was. */
class DamagedMp3Test {
    private static final byte[] WHOLE = Sounds.resource("stereo-44100-cbr.mp3");
    private static final byte[] NO_TAG = Sounds.resource("stereo-24000-no-tag.mp3");
    /** Where the damage is put: in the middle of the second second. */
    private static final int PLACE = WHOLE.length * 6 / 10;
    /** A decoder needs some frames after a hole until its reservoir is full again. */
    private static final int RECOVERY_FRAMES = 8 * 1_152;

    @TempDir
    private Path folder;

    @SuppressWarnings("ArrayRecordComponent") // nobody writes to it
    private record Decoded(float[] stereo, List<Problem> problems) {}

    @Test
    void zeroedBytesBecomeSilenceAndShiftNothing() throws Exception {
        byte[] damaged = WHOLE.clone();
        Arrays.fill(damaged, PLACE, PLACE + 4_000, (byte) 0);
        assertOnlyAPieceIsMissing(damaged, 4_000 / 12_000.0, "0:01");
    }

    @Test
    void bytesThatWereCutOutAreFilledFromTheTagsCount() throws Exception {
        ByteArrayOutputStream damaged = new ByteArrayOutputStream();
        damaged.write(WHOLE, 0, PLACE);
        damaged.write(WHOLE, PLACE + 4_000, WHOLE.length - PLACE - 4_000);
        assertOnlyAPieceIsMissing(damaged.toByteArray(), 4_000 / 12_000.0, "0:01");
    }

    @Test
    void strewnNoiseNeverShiftsTheEnd() throws Exception {
        byte[] damaged = WHOLE.clone();
        for (int i = 0; i < 300; i++) {
            damaged[PLACE + i] = (byte) (i * 151 + 17);
        }
        assertOnlyAPieceIsMissing(damaged, 0.03, "0:01");
    }

    /** Bytes overwritten at random can decode to anything; it must not hurt, and the rest must stay in its place. */
    @Test
    void noDamageShiftsTheEndOrHurtsTheEars() throws Exception {
        float[] whole = decode(WHOLE).stereo();
        for (int seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            byte[] damaged = WHOLE.clone();
            for (int i = 0; i < 40; i++) {
                damaged[PLACE / 2 + random.nextInt(PLACE / 2)] = (byte) random.nextInt();
            }
            Decoded decoded = decode(damaged);
            assertEquals(whole.length, decoded.stereo().length);
            for (float sample : decoded.stereo()) {
                assertTrue(Math.abs(sample) <= 4, "seed " + seed + ": a sample of " + sample);
            }
            int end = whole.length * 3 / 4;
            assertArrayEquals(
                    Arrays.copyOfRange(whole, end, whole.length),
                    Arrays.copyOfRange(decoded.stereo(), end, whole.length),
                    1e-5f,
                    "seed " + seed);
        }
    }

    @Test
    void aTruncatedFileKeepsThePromisedLength() throws Exception {
        float[] whole = decode(WHOLE).stereo();
        Decoded cut = decode(Arrays.copyOf(WHOLE, PLACE));
        assertEquals(whole.length, cut.stereo().length);
        int good = whole.length / 2;
        assertArrayEquals(Arrays.copyOf(whole, good), Arrays.copyOf(cut.stereo(), good), 1e-6f);
        assertEquals(1, cut.problems().size());
        assertTrue(cut.problems().get(0).message().contains("ends early, at 0:01 of 0:02"), cut.problems() + "");
    }

    @Test
    void aTruncatedFileWithoutTagKeepsWhatIsThere() throws Exception {
        float[] whole = decode(NO_TAG).stereo();
        Decoded cut = decode(Arrays.copyOf(NO_TAG, NO_TAG.length / 2 + 7));
        assertEquals(0.5, (double) cut.stereo().length / whole.length, 0.02);
        assertArrayEquals(Arrays.copyOf(whole, cut.stereo().length), cut.stereo(), 1e-6f);
        assertEquals("truncated", cut.problems().get(0).kind());
    }

    @Test
    void tagsAtBothEndsCostNoFrame() throws Exception {
        ByteArrayOutputStream tagged = new ByteArrayOutputStream();
        tagged.writeBytes(new byte[] {'I', 'D', '3', 4, 0, 0, 0, 0, 2, 3});
        // A tag may hold what looks like the beginning of a frame.
        byte[] tag = new byte[2 * 128 + 3];
        System.arraycopy(WHOLE, 0, tag, 9, 100);
        tagged.writeBytes(tag);
        tagged.writeBytes(WHOLE);
        byte[] id3v1 = new byte[128];
        System.arraycopy("TAG".getBytes(java.nio.charset.StandardCharsets.US_ASCII), 0, id3v1, 0, 3);
        tagged.writeBytes(id3v1);
        Decoded decoded = decode(tagged.toByteArray());
        assertArrayEquals(decode(WHOLE).stereo(), decoded.stereo());
        assertEquals(List.of(), decoded.problems());
    }

    private void assertOnlyAPieceIsMissing(byte[] damaged, double missingSeconds, String where) throws Exception {
        float[] whole = decode(WHOLE).stereo();
        Decoded decoded = decode(damaged);
        assertEquals(whole.length, decoded.stereo().length, "the timeline shifted");
        int firstBad = Arrays.mismatch(whole, decoded.stereo());
        int recovered = firstBad + 2 * (int) (44_100 * missingSeconds) + 2 * RECOVERY_FRAMES;
        assertTrue(firstBad > whole.length / 2, "damage before its place: " + firstBad);
        assertTrue(recovered < whole.length, "nothing is left to be compared");
        assertArrayEquals(
                Arrays.copyOfRange(whole, recovered, whole.length),
                Arrays.copyOfRange(decoded.stereo(), recovered, whole.length),
                1e-5f);
        assertEquals("damaged", decoded.problems().get(0).kind());
        assertTrue(decoded.problems().get(0).sentence().contains("damaged at " + where), decoded.problems() + "");
    }

    private Decoded decode(byte[] bytes) throws Exception {
        try (Song song = SongFile.open(Sounds.file(folder, "song.mp3", bytes), Optional.empty())) {
            float[] stereo = Sounds.samples(song);
            return new Decoded(stereo, song.problems());
        }
    }
}
