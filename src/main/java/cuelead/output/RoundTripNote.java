package cuelead.output;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How late a recording is against the song, written into its WAV file as a comment ({@link WavInfo}) that stands before the
 * samples and always has the same length, so that it can be written while the file grows.
 */
public final class RoundTripNote {
    private static final Pattern FOUND = Pattern.compile("cuelead round trip +(-?[0-9.]{1,12}) ms");
    private static final int DATA_HEAD_BYTES = 8;
    private static final int FIRST_BYTES = 512;
    private static final double MILLIS_A_SECOND = 1_000;

    private RoundTripNote() {}

    static int headerBytes() {
        return WavHeader.BYTES + chunk(0).remaining();
    }

    /** All that stands before the samples. */
    static ByteBuffer withNote(WavHeader header, int dataBytes, double roundTripSeconds) {
        ByteBuffer note = chunk(roundTripSeconds);
        ByteBuffer plain = header.bytes(dataBytes, note.remaining());
        int before = plain.remaining() - DATA_HEAD_BYTES;
        return ByteBuffer.allocate(plain.remaining() + note.remaining())
                .put(plain.slice(0, before))
                .put(note)
                .put(plain.slice(before, DATA_HEAD_BYTES))
                .flip();
    }

    private static ByteBuffer chunk(double seconds) {
        return WavInfo.chunk(
                Map.of("ICMT", String.format(Locale.ROOT, "cuelead round trip %9.3f ms", MILLIS_A_SECOND * seconds)));
    }

    /** The one in a file; empty where there is none. */
    public static OptionalDouble seconds(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            String first = new String(in.readNBytes(FIRST_BYTES), StandardCharsets.ISO_8859_1);
            Matcher note = FOUND.matcher(first);
            return note.find()
                    ? OptionalDouble.of(Double.parseDouble(note.group(1)) / MILLIS_A_SECOND)
                    : OptionalDouble.empty();
        } catch (IOException | NumberFormatException none) {
            return OptionalDouble.empty(); // whoever reads the sound says what is wrong with the file
        }
    }
}
