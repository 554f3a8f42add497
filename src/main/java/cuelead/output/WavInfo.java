package cuelead.output;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

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
        Map<String, byte[]> texts = new LinkedHashMap<>();
        texts.put("INAM", text(tags.title()));
        tags.wholeBeatsPerMinute().ifPresent(tempo -> texts.put("ICMT", text(tempo + " beats a minute")));
        return bytes(texts);
    }

    /** @param texts by the four letters of their kind */
    static ByteBuffer chunk(Map<String, String> texts) {
        Map<String, byte[]> encoded = new LinkedHashMap<>();
        texts.forEach((name, words) -> encoded.put(name, text(words)));
        return bytes(encoded);
    }

    private static ByteBuffer bytes(Map<String, byte[]> texts) {
        int content = TYPE_BYTES
                + texts.values().stream()
                        .mapToInt(text -> HEAD_BYTES + even(text.length))
                        .sum();
        ByteBuffer bytes = ByteBuffer.allocate(HEAD_BYTES + content).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put(ascii("LIST")).putInt(content).put(ascii("INFO"));
        texts.forEach((name, text) -> put(name, text, bytes));
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
