package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cuelead.report.Refused;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EarTest {
    private static final int HEADER_BYTES = 44;
    private static final int RATE = 8_000;
    private static final int MIX_SECONDS = 60 * 60;

    @TempDir
    private Path folder;

    /** An evening's mix can be listened to, though it is too long to practise with. */
    @Test
    void aLongMixHasALength() throws IOException, Refused {
        Path mix = folder.resolve("mix.wav");
        writeSilence(mix);
        assertEquals(MIX_SECONDS, Ear.lengthSeconds(mix), 1e-6);
        assertThrows(Refused.class, () -> SongFile.open(mix, Optional.empty()));
    }

    /** One channel of 8 bits; the file has holes, so it takes no room. */
    private static void writeSilence(Path file) throws IOException {
        int bytes = RATE * MIX_SECONDS;
        ByteBuffer header = ByteBuffer.allocate(HEADER_BYTES).order(ByteOrder.LITTLE_ENDIAN);
        header.put(ascii("RIFF")).putInt(HEADER_BYTES - 8 + bytes).put(ascii("WAVE"));
        header.put(ascii("fmt ")).putInt(16).putShort((short) 1).putShort((short) 1);
        header.putInt(RATE).putInt(RATE).putShort((short) 1).putShort((short) 8);
        header.put(ascii("data")).putInt(bytes);
        try (RandomAccessFile out = new RandomAccessFile(file.toFile(), "rw")) {
            out.write(header.array());
            out.setLength(HEADER_BYTES + (long) bytes);
        }
    }

    private static byte[] ascii(String word) {
        return word.getBytes(StandardCharsets.US_ASCII);
    }
}
