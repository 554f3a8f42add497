package cuelead.song;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.ByteArrayOutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is no song gets one clear sentence; what can still be used plays with one warning. */
class BadSongFileTest {
    private static final byte[] MP3 = Sounds.resource("stereo-44100-cbr.mp3");
    private static final String CHOOSE = "choose an MP3, WAV, AIFF, OGG, FLAC or M4A file.";

    @TempDir
    private Path folder;

    @Test
    void aMissingFile() {
        assertRefused(
                folder.resolve("gone.mp3"), " is not there: look for a slip in its name, or give its whole path.");
    }

    @Test
    void aFolder() {
        assertRefused(folder, " is a folder: name one of the sound files in it.");
    }

    @Test
    void anEmptyFile() throws Exception {
        assertRefused(file("empty.mp3", new byte[0]), " is empty (0 bytes): copy or download it again.");
    }

    @Test
    void aFileThatMayNotBeRead() throws Exception {
        Path file = file("locked.mp3", MP3);
        assumeFalse(file.toFile().setReadable(false) && Files.isReadable(file), "this user may read everything");
        assertRefused(file, " may not be read by you: change its permissions, or copy it elsewhere.");
    }

    @Test
    void theSentenceForAFileThatMayNotBeRead() {
        Path file = folder.resolve("locked.mp3");
        Refused refused = Refusals.unreadable(file, new AccessDeniedException(file.toString()));
        assertEquals(
                file + " may not be read by you: change its permissions, or copy it elsewhere.", refused.getMessage());
    }

    @Test
    void aTextThatIsNamedMp3() throws Exception {
        assertRefused(
                file("words.mp3", "five, six, seven, eight".getBytes(US_ASCII)),
                " is not a sound file, it looks like text: " + CHOOSE);
    }

    @Test
    void otherKindsOfFileAreNamed() throws Exception {
        assertRefused(
                file("sheet.mp3", "%PDF-1.7 and so on".getBytes(US_ASCII)),
                " is not a sound file, it looks like a PDF document: " + CHOOSE);
        byte[] noise = new byte[5_000];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) ((i * i * 31) >> 4);
        }
        assertRefused(file("noise.mp3", noise), " is not a sound file, it looks like data of no known kind: " + CHOOSE);
    }

    @Test
    void aHeaderWithoutSound() throws Exception {
        byte[] header = Arrays.copyOf(Sounds.wav(8_000, 1, 100), 40);
        assertRefused(
                file("cut.wav", header),
                " looks like WAV sound but holds nothing that can be played: copy or download it again, or " + CHOOSE);
    }

    @Test
    void anMp3OfAFreeBitRate() throws Exception {
        // LAME's --freeformat begins so: MPEG 1, layer III, bit rate index 0, 44.1 kHz, joint stereo.
        byte[] free = new byte[2_000];
        byte[] header = {(byte) 0xff, (byte) 0xfb, 0, 0x64};
        System.arraycopy(header, 0, free, 0, 4);
        assertRefused(
                file("free.mp3", free),
                " is MP3 sound of a free bit rate, which few programs can read: "
                        + "convert it to an MP3 of a usual bit rate, or to FLAC or WAV.");
    }

    @Test
    void anHour() throws Exception {
        // Its header alone tells the length: 3,600 s of 8,000 frames of 1 byte.
        byte[] wav = Sounds.wav(1, 8_000, 1, 8, new byte[100]);
        java.nio.ByteBuffer.wrap(wav).order(java.nio.ByteOrder.LITTLE_ENDIAN).putInt(40, 3_600 * 8_000);
        assertRefused(
                file("hour.wav", wav),
                " is 60:00 long, and the most is 20:00: "
                        + "cut the wanted piece out of the recording with a sound editor and open that.");
    }

    @Test
    void aLongMp3() throws Exception {
        ByteArrayOutputStream repeated = new ByteArrayOutputStream();
        byte[] twoSeconds = Sounds.resource("stereo-24000-no-tag.mp3");
        for (int i = 0; i < 605; i++) {
            repeated.writeBytes(twoSeconds);
        }
        Path file = file("long.mp3", repeated.toByteArray());
        String message = refusal(file);
        assertTrue(message.matches(".*long\\.mp3 is 2\\d:\\d\\d long, and the most is 20:00: cut .*"), message);
    }

    @Test
    void aSongThatIsTooBigForTheMemory() throws Exception {
        Path file = file("big.wav", Sounds.wav(8_000, 1, 8_000));
        Refused refused = assertThrows(
                Refused.class, () -> SongFile.open(file, Optional.empty(), new Limits(1_200, () -> 63_999)));
        assertEquals(
                file + " needs 0 MB of memory and only 0 MB are free: "
                        + "give Java more (java -Xmx1g), or cut the song out of the recording.",
                refused.getMessage());
        SongFile.open(file, Optional.empty(), new Limits(1_200, () -> 64_000)).close();
    }

    @Test
    void aWavThatIsNamedMp3PlaysWithOneWarning() throws Exception {
        assertPlaysWithWarning(
                file("tune.mp3", Sounds.wav(8_000, 1, 4_000)),
                4_000,
                ": warning: The file's name ends in .mp3, but it holds WAV sound. "
                        + "Rename it, so that other programs can play it too.");
    }

    @Test
    void anMp3ThatIsNamedWavPlaysWithOneWarning() throws Exception {
        assertPlaysWithWarning(
                file("tune.wav", MP3),
                64_000,
                ": warning: The file's name ends in .wav, but it holds MP3 sound. "
                        + "Rename it, so that other programs can play it too.");
    }

    @Test
    void anMp3WithoutAnyEndingPlaysWithoutWarning() throws Exception {
        try (Song song = SongFile.open(file("tune", MP3), Optional.empty())) {
            Sounds.samples(song);
            assertEquals(List.of(), song.problems());
        }
    }

    @Test
    void aTruncatedWavKeepsItsLength() throws Exception {
        byte[] wav = Sounds.wav(8_000, 1, 40_000);
        assertPlaysWithWarning(
                file("cut.wav", Arrays.copyOf(wav, wav.length / 2)),
                40_000,
                ": warning: The file ends early, at 0:02 of 0:05; the rest is silent. Copy or download it again.");
    }

    private void assertPlaysWithWarning(Path file, int frames, String warning) throws Exception {
        try (Song song = SongFile.open(file, Optional.empty())) {
            assertEquals(2 * frames, Sounds.samples(song).length);
            assertEquals(
                    List.of(file + warning),
                    song.problems().stream().map(Problem::message).toList());
        }
    }

    private static void assertRefused(Path file, String sentence) {
        assertEquals(file + sentence, refusal(file));
    }

    private static String refusal(Path file) {
        return assertThrows(Refused.class, () -> SongFile.open(file, Optional.empty()))
                .getMessage();
    }

    private Path file(String name, byte[] bytes) throws Exception {
        return Sounds.file(folder, name, bytes);
    }
}
