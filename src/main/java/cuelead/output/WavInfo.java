package cuelead.output;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * The {@code LIST} chunk of type {@code INFO} of a WAV file: title ({@code INAM}) and a comment with the tempo
 * ({@code ICMT}), texts that end in a zero ("Multimedia programming interface and data specifications 1.0", 1991, "List
 * chunk"). The specification names no characters; players take UTF-8 (common practice, no source).
 */
final class WavInfo {
    private static final int HEAD_BYTES = 8;
    private static final int TYPE_BYTES = 4;

    private WavInfo() {}

    static ByteBuffer chunk(TrackTags tags) {
        byte[] title = text(tags.title());
        byte[] comment = text(tags.wholeBeatsPerMinute() + " beats a minute");
        int content = TYPE_BYTES + 2 * HEAD_BYTES + even(title.length) + even(comment.length);
        ByteBuffer bytes = ByteBuffer.allocate(HEAD_BYTES + content).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put(ascii("LIST")).putInt(content).put(ascii("INFO"));
        put("INAM", title, bytes);
        put("ICMT", comment, bytes);
        return bytes.flip();
    }

    private static void put(String name, byte[] text, ByteBuffer into) {
        into.put(ascii(name)).putInt(text.length).put(text);
        into.position(into.position() + text.length % 2);
    }

    private static int even(int length) {
        return length + length % 2;
    }

    private static byte[] text(String words) {
        return (words + '\0').getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] ascii(String fourLetters) {
        return fourLetters.getBytes(StandardCharsets.US_ASCII);
    }
}
