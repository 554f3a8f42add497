package cuelead.report;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A small text file that a user writes by hand, such as a lesson. */
public final class UserText {
    /** Longer files are something else. */
    private static final long MOST_BYTES = 1_000_000;

    private static final char BYTE_ORDER_MARK = '\ufeff';

    private UserText() {}

    /**
     * Reads a whole file: UTF-8, or UTF-16 where a byte-order mark says so. The mark is left out.
     *
     * @param what it holds, as a sentence begins: "The lesson"
     * @throws Refused when it cannot be read, or is no text
     */
    public static String read(Path file, String what) throws Refused {
        String which = what + " in " + file + " cannot be read: ";
        if (Files.isDirectory(file)) {
            throw new Refused(which + "this is a folder. Name a text file.");
        }
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new Refused(which + "it is far too long. Name the text file that you mean.");
            }
            String text = decoded(Files.readAllBytes(file));
            if (text.indexOf('\0') >= 0) {
                throw new Refused(which + "this is no text file. Save it as plain text.");
            }
            return text;
        } catch (NoSuchFileException missing) {
            throw new Refused(which + "there is no such file. Check its name and folder.", missing);
        } catch (CharacterCodingException noText) {
            throw new Refused(which + "this is no text file (UTF-8). Save it as plain text, UTF-8.", noText);
        } catch (IOException unreadable) {
            throw new Refused(which + "the system does not give it. Check that you may open it.", unreadable);
        }
    }

    private static String decoded(byte[] bytes) throws CharacterCodingException {
        String text = charset(bytes).newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static Charset charset(byte[] bytes) {
        boolean isBigEndian = bytes.length > 1 && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF;
        boolean isLittleEndian = bytes.length > 1 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE;
        return isBigEndian || isLittleEndian ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    }
}
