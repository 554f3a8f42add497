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

/** Reads a step sheet from a file: UTF-8, with or without its mark, or else windows-1252 as older sheets are. */
public final class SheetFile {
    private static final long LARGEST_BYTES = 1 << 20;
    private static final Charset OLDER = Charset.forName("windows-1252");

    private SheetFile() {}

    /**
     * Reads a file.
     *
     * @throws Refused when there is no such file, it is a folder, cannot be read, or is too large for a step sheet
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
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException older) {
            text = new String(bytes, OLDER);
        }
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }
}
