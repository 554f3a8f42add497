package cuelead.sheet;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads a step sheet from a file: UTF-8, with or without its mark; UTF-16, as some editors write it; or else
 * windows-1252, as older sheets are.
 */
public final class SheetFile {
    private static final long LARGEST_BYTES = 1 << 20;
    private static final Charset OLDER = Charset.forName("windows-1252");
    private static final String MARK = "\ufeff";

    private SheetFile() {}

    /**
     * Reads a file.
     *
     * @throws Refused when there is no such file, it is no ordinary file, cannot be read, or is too large for a step
     *                 sheet
     */
    public static ReadSheet read(Path file) throws Refused {
        return SheetReader.read(file.toString(), text(file));
    }

    private static String text(Path file) throws Refused {
        if (!Files.exists(file)) {
            throw new Refused("There is no file " + file + "; check its name and folder.");
        }
        if (Files.isDirectory(file)) {
            throw new Refused(file + " is a folder; name the step sheet in it.");
        }
        if (!Files.isRegularFile(file)) {
            throw new Refused(file + " is no ordinary file; name a step sheet.");
        }
        try {
            long size = Files.size(file);
            if (size > LARGEST_BYTES) {
                throw new Refused(file + " is too large for a step sheet (" + size / 1024
                        + " kB, at most 1024); is it the right file?");
            }
            return decode(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            throw new Refused(file + " cannot be read; check that you may read it.", unreadable);
        }
    }

    private static String decode(byte[] bytes) {
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
