package cuelead.output;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Title ({@code TIT2}) and tempo ({@code TBPM}) before an MP3 file, as ID3v2.3 ("ID3 tag version 2.3.0", informal
 * standard, id3.org 1999, sections 3.1, 3.3 and 4.2.1).
 */
final class Id3Tag {
    private static final int HEAD_BYTES = 10;
    private static final byte LATIN = 0;
    private static final byte UNICODE = 1;

    private Id3Tag() {}

    static ByteBuffer bytes(TrackTags tags) {
        byte[] title = frame("TIT2", tags.title());
        byte[] tempo =
                tags.wholeBeatsPerMinute().map(known -> frame("TBPM", known)).orElse(new byte[0]);
        int content = title.length + tempo.length;
        ByteBuffer bytes = ByteBuffer.allocate(HEAD_BYTES + content);
        bytes.put("ID3".getBytes(StandardCharsets.ISO_8859_1)).put((byte) 3).put((byte) 0);
        bytes.put((byte) 0).putInt(sevenBitsAByte(content));
        return bytes.put(title).put(tempo).flip();
    }

    private static byte[] frame(String name, String text) {
        boolean isLatin = StandardCharsets.ISO_8859_1.newEncoder().canEncode(text);
        Charset letters = isLatin ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_16; // with its byte order mark
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        content.write(isLatin ? LATIN : UNICODE);
        content.writeBytes(text.getBytes(letters));
        ByteBuffer bytes = ByteBuffer.allocate(HEAD_BYTES + content.size());
        bytes.put(name.getBytes(StandardCharsets.ISO_8859_1)).putInt(content.size());
        return bytes.putShort((short) 0).put(content.toByteArray()).array();
    }

    /** So that no byte of a length looks like the beginning of sound. */
    private static int sevenBitsAByte(int length) {
        return (length & 0x7f) | (length & 0x3f80) << 1 | (length & 0x1fc000) << 2 | (length & 0xfe00000) << 3;
    }
}
