package cuelead.output;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The metadata block of type 4 of a FLAC file (RFC 9639, section 8.6): {@code TITLE}, and {@code BPM} for the tempo,
 * which no standard names but players know (common practice, no source).
 */
final class VorbisComment {
    private static final int HEAD_BYTES = 4;
    private static final int LAST_BLOCK = 0x80;
    private static final int TYPE = 4;
    private static final String VENDOR = "Cuelead";

    private VorbisComment() {}

    /** The block with its head, marked as the last one. */
    static byte[] block(TrackTags tags) {
        List<byte[]> fields = new ArrayList<>(List.of(utf8("TITLE=" + tags.title())));
        tags.wholeBeatsPerMinute().ifPresent(tempo -> fields.add(utf8("BPM=" + tempo)));
        byte[] vendor = utf8(VENDOR);
        int content = 2 * Integer.BYTES + vendor.length;
        for (byte[] field : fields) {
            content += Integer.BYTES + field.length;
        }
        ByteBuffer bytes = ByteBuffer.allocate(HEAD_BYTES + content);
        bytes.putInt((LAST_BLOCK | TYPE) << 24 | content);
        bytes.order(ByteOrder.LITTLE_ENDIAN); // within this block only (section 8.6)
        bytes.putInt(vendor.length).put(vendor).putInt(fields.size());
        fields.forEach(field -> bytes.putInt(field.length).put(field));
        return bytes.array();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
