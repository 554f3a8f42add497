package cuelead.document;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Bytes to text: UTF-8, with or without its mark; UTF-16, as some editors write it; or else windows-1252, as older
 * sheets are.
 */
final class PlainText {
    private static final Charset OLDER = Charset.forName("windows-1252");
    private static final String MARK = "\ufeff";

    private PlainText() {}

    /** Whatever line end a system writes parts the lines. */
    static List<String> lines(String text) {
        return Arrays.asList(text.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1));
    }

    static String decode(byte[] bytes) {
        String text =
                strictly(bytes, wide(bytes).orElse(StandardCharsets.UTF_8)).orElseGet(() -> new String(bytes, OLDER));
        return text.startsWith(MARK) ? text.substring(1) : text;
    }

    private static Optional<String> strictly(byte[] bytes, Charset charset) {
        try {
            return Optional.of(charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException other) {
            return Optional.empty();
        }
    }

    /**
     * UTF-16 by its mark, or because nearly every other byte is zero, as in Western text; the share is the same in no
     * picture or sound.
     */
    private static Optional<Charset> wide(byte[] bytes) {
        if (bytes.length < 2 || bytes.length % 2 != 0) {
            return Optional.empty();
        }
        int[] zeros = new int[2];
        for (int i = 0; i < bytes.length; i++) {
            zeros[i % 2] += bytes[i] == 0 ? 1 : 0;
        }
        int first = (bytes[0] & 0xff) << 8 | (bytes[1] & 0xff);
        int most = bytes.length / 2 * 9 / 10;
        if (first == 0xfffe || (zeros[1] > most && zeros[0] == 0)) {
            return Optional.of(StandardCharsets.UTF_16LE);
        }
        boolean highByteFirst = first == 0xfeff || (zeros[0] > most && zeros[1] == 0);
        return highByteFirst ? Optional.of(StandardCharsets.UTF_16BE) : Optional.empty();
    }
}
