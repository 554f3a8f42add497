package cuelead.output;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Reads the tags of a file as the public descriptions lay them out, apart from what writes them. */
final class WrittenTags {
    private WrittenTags() {}

    /** RIFF (1991): chunks of a name, a length and as many bytes, padded to an even number; INFO is a list of them. */
    static Map<String, String> ofWav(byte[] file) {
        ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        if (bytes.getInt(4) != file.length - 8) {
            throw new AssertionError("RIFF says " + bytes.getInt(4) + " of " + file.length);
        }
        Map<String, String> tags = new TreeMap<>();
        bytes.position(12);
        while (bytes.hasRemaining()) {
            String name = letters(bytes, 4);
            int length = bytes.getInt();
            if (name.equals("LIST")) {
                bytes.position(bytes.position() + 4);
            } else if (name.startsWith("I")) {
                tags.put(name, text(bytes, length - 1, StandardCharsets.UTF_8));
                bytes.position(bytes.position() + 1 + length % 2);
            } else {
                bytes.position(bytes.position() + length + length % 2);
            }
        }
        return tags;
    }

    /** RFC 9639, sections 8.1 and 8.6. */
    static Map<String, String> ofFlac(byte[] file) {
        ByteBuffer bytes = ByteBuffer.wrap(file, 4, file.length - 4);
        Map<String, String> tags = new TreeMap<>();
        boolean isLast = false;
        while (!isLast) {
            int head = bytes.getInt();
            isLast = head < 0;
            int end = bytes.position() + (head & 0xff_ffff);
            if ((head >> 24 & 0x7f) == 4) {
                bytes.order(ByteOrder.LITTLE_ENDIAN);
                bytes.position(bytes.position() + 4 + bytes.getInt(bytes.position()));
                for (int fields = bytes.getInt(); fields > 0; fields--) {
                    String[] field =
                            text(bytes, bytes.getInt(), StandardCharsets.UTF_8).split("=", 2);
                    tags.put(field[0], field[1]);
                }
                bytes.order(ByteOrder.BIG_ENDIAN);
            }
            bytes.position(end);
        }
        return tags;
    }

    /** ID3v2.3.0, sections 3.1, 3.3 and 4.2. */
    static Map<String, String> ofMp3(byte[] file) {
        ByteBuffer bytes = ByteBuffer.wrap(file);
        if (!letters(bytes, 3).equals("ID3") || bytes.get() != 3) {
            throw new AssertionError("no ID3v2.3");
        }
        int end = 10 + (file[6] << 21 | file[7] << 14 | file[8] << 7 | file[9]);
        Map<String, String> tags = new TreeMap<>();
        for (bytes.position(10); bytes.position() < end; ) {
            String name = letters(bytes, 4);
            int length = bytes.getInt() - 1;
            bytes.getShort();
            Charset letters = bytes.get() == 0 ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_16;
            tags.put(name, text(bytes, length, letters));
        }
        if ((ByteBuffer.wrap(file).getShort(end) & 0xffe0) != 0xffe0) {
            throw new AssertionError("no MPEG frame behind the tag");
        }
        return tags;
    }

    private static String letters(ByteBuffer bytes, int count) {
        return text(bytes, count, StandardCharsets.ISO_8859_1);
    }

    private static String text(ByteBuffer bytes, int count, Charset letters) {
        byte[] text = new byte[count];
        bytes.get(text);
        return new String(text, letters);
    }
}
