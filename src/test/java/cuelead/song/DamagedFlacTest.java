package cuelead.song;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Whatever is missing from a FLAC file, what is left of it stays where it was, and nothing is printed. */
class DamagedFlacTest {
    private static final byte[] WHOLE = Sounds.resource("stereo-22050.flac");
    private static final float[] SOUND = decode(WHOLE).stereo();
    /** The end of the first metadata block, which tells rate and length (RFC 9639, section 8.2). */
    private static final int INFO_END = 42;

    private static final int PLACE = WHOLE.length / 2;

    @SuppressWarnings("ArrayRecordComponent") // nobody writes to it
    private record Decoded(float[] stereo, List<Problem> problems) {}

    @Test
    void oneFalseBitSilencesItsFrameAndNoOther() {
        byte[] damaged = WHOLE.clone();
        damaged[PLACE] ^= 4;
        Decoded decoded = decode(damaged);
        assertEveryFrameIsRightOrSilent(decoded);
        assertEquals(1, decoded.problems().size());
        assertTrue(
                decoded.problems()
                        .get(0)
                        .message()
                        .matches(".*warning: The file is damaged at 0:00: 0\\.[012]\\d s of sound are missing.*"),
                decoded.problems() + "");
    }

    @Test
    void bytesThatWereCutOutLeaveASilence() {
        Decoded decoded =
                decode(joined(Arrays.copyOf(WHOLE, PLACE), Arrays.copyOfRange(WHOLE, PLACE + 300, WHOLE.length)));
        assertEveryFrameIsRightOrSilent(decoded);
        assertEquals("damaged", decoded.problems().get(0).kind());
    }

    @Test
    void aPieceThatComesTwiceIsHeardOnce() {
        Decoded decoded =
                decode(joined(Arrays.copyOf(WHOLE, PLACE), Arrays.copyOfRange(WHOLE, PLACE / 2, WHOLE.length)));
        assertArrayEquals(SOUND, decoded.stereo());
    }

    @Test
    void aTruncatedFileKeepsThePromisedLength() {
        Decoded decoded = decode(Arrays.copyOf(WHOLE, PLACE));
        assertEveryFrameIsRightOrSilent(decoded);
        assertTrue(
                decoded.problems().get(0).message().contains("The file ends early, at 0:00 of 0:01"),
                decoded.problems() + "");
    }

    @Test
    void damagedTagsCostNoSound() {
        byte[] damaged = WHOLE.clone();
        Arrays.fill(damaged, INFO_END, INFO_END + 4, (byte) 0x6e);
        Decoded decoded = decode(damaged);
        assertArrayEquals(SOUND, decoded.stereo());
        assertEquals(List.of(), decoded.problems());
    }

    @Test
    void foreignTagsAtBothEndsCostNoSound() {
        byte[] front = Arrays.copyOf(new byte[] {'I', 'D', '3', 4, 0, 0, 0, 0, 8, 0}, 10 + 8 * 128);
        byte[] behind = Arrays.copyOf("TAG".getBytes(US_ASCII), 128);
        Decoded decoded = decode(joined(joined(front, WHOLE), behind));
        assertArrayEquals(SOUND, decoded.stereo());
        assertEquals(List.of(), decoded.problems());
    }

    @Test
    void aLengthThatIsNotToldIsCounted() {
        byte[] piped = WHOLE.clone();
        piped[21] &= (byte) 0xf0;
        Arrays.fill(piped, 22, 26, (byte) 0);
        assertArrayEquals(SOUND, decode(piped).stereo());
    }

    @Test
    void withoutItsFirstBlockItCannotBePlayed() {
        byte[] damaged = WHOLE.clone();
        Arrays.fill(damaged, 8, INFO_END, (byte) 0);
        assertCannotBePlayed(damaged);
        assertCannotBePlayed(Arrays.copyOf(WHOLE, INFO_END));
        assertCannotBePlayed(Arrays.copyOf(WHOLE, 5));
    }

    @Property(tries = 60, seed = "20261125")
    void everyFrameIsRightOrSilentWhateverIsOverwritten(
            @ForAll Random random, @ForAll @IntRange(min = 1, max = 400) int most) {
        byte[] damaged = WHOLE.clone();
        for (int burst = 0; burst < 3; burst++) {
            byte[] noise = new byte[1 + random.nextInt(most)];
            random.nextBytes(noise);
            int at = INFO_END + random.nextInt(WHOLE.length - INFO_END - noise.length);
            System.arraycopy(noise, 0, damaged, at, noise.length);
        }
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        PrintStream out = System.out;
        PrintStream err = System.err;
        System.setOut(new PrintStream(printed, true, US_ASCII));
        System.setErr(System.out);
        try {
            assertEveryFrameIsRightOrSilent(decode(damaged));
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
        assertEquals("", printed.toString(US_ASCII));
    }

    private static void assertEveryFrameIsRightOrSilent(Decoded decoded) {
        assertEquals(SOUND.length, decoded.stereo().length, "the timeline shifted");
        int silent = 0;
        for (int i = 0; i < SOUND.length; i++) {
            if (decoded.stereo()[i] != SOUND[i]) {
                assertEquals(0f, decoded.stereo()[i], "sample " + i);
                silent++;
            }
        }
        assertTrue(silent < SOUND.length, "nothing is left");
        assertEquals(silent > 0, !decoded.problems().isEmpty(), "silence and warnings go together");
    }

    private static void assertCannotBePlayed(byte[] bytes) {
        IllegalStateException refused = assertThrows(IllegalStateException.class, () -> decode(bytes));
        assertTrue(refused.getCause() instanceof Refused);
        assertTrue(
                refused.getCause()
                        .getMessage()
                        .matches(".*\\.flac looks like FLAC sound but holds nothing that can be played: .*"),
                refused.getCause().getMessage());
    }

    private static byte[] joined(byte[] front, byte[] behind) {
        byte[] both = Arrays.copyOf(front, front.length + behind.length);
        System.arraycopy(behind, 0, both, front.length, behind.length);
        return both;
    }

    private static Decoded decode(byte[] bytes) {
        try {
            Path file = Files.createTempFile("song", ".flac");
            try (Song song = SongFile.open(Files.write(file, bytes), Optional.empty())) {
                float[] stereo = Sounds.samples(song);
                return new Decoded(stereo, song.problems());
            } finally {
                Files.delete(file);
            }
        } catch (java.io.IOException | Refused broken) {
            throw new IllegalStateException(broken);
        }
    }
}
