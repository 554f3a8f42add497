package cuelead.document;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/**
 * The smallest document of Word 97 that holds paragraphs ([MS-DOC] 2.4: FIB, one piece of text, one page of properties
 * each for letters and paragraphs, one section, one style). The library can read but not make such a file.
 */
final class OldWordFile {
    private static final int TEXT_AT = 0x600;
    private static final int PAGE = 512;
    private static final int FIRST_FACT = 154;

    private final byte[] text;
    private final ByteBuffer main;
    private final ByteBuffer table = little(4096);
    private final List<Integer> ends = new ArrayList<>();

    private OldWordFile(List<String> paragraphs) {
        text = (String.join("\r", paragraphs) + "\r").getBytes(Charset.forName("windows-1252"));
        for (int i = 0; i < text.length; i++) {
            if (text[i] == '\r') {
                ends.add(TEXT_AT + i + 1);
            }
        }
        main = little(TEXT_AT + 8 * PAGE);
    }

    static byte[] of(List<String> paragraphs) {
        return new OldWordFile(paragraphs).bytes();
    }

    private byte[] bytes() {
        head();
        main.put(TEXT_AT, text);
        int letters = (TEXT_AT + text.length + PAGE - 1) / PAGE;
        letterPage(letters * PAGE);
        paragraphPage((letters + 1) * PAGE);
        fact(1, this::style);
        fact(6, this::section);
        fact(12, () -> pages(letters));
        fact(13, () -> pages(letters + 1));
        fact(15, () -> table.putInt(0));
        fact(31, () -> table.position(table.position() + 600));
        fact(33, this::piece);
        try (POIFSFileSystem wrapping = new POIFSFileSystem()) {
            wrapping.createDocument(stream(main), "WordDocument");
            wrapping.createDocument(stream(table), "1Table");
            return Documents.written(wrapping::writeFilesystem);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private void head() {
        main.putShort(0, (short) 0xa5ec).putShort(2, (short) 0xc1).putShort(10, (short) 0x0200);
        main.putShort(12, (short) 0xbf).putInt(24, TEXT_AT).putInt(28, TEXT_AT + text.length);
        main.putShort(32, (short) 14).putShort(62, (short) 22).putInt(64, main.capacity());
        main.putInt(76, text.length).putShort(152, (short) 93);
    }

    /** Writes to the table stream, and where that is to the head. */
    private void fact(int number, Runnable writes) {
        int from = table.position();
        writes.run();
        main.putInt(FIRST_FACT + 8 * number, from).putInt(FIRST_FACT + 8 * number + 4, table.position() - from);
    }

    private void style() {
        table.putShort((short) 18).putShort((short) 1).putShort((short) 10).putShort((short) 1);
        table.putShort((short) 91).putShort((short) 15).putShort((short) 0);
        table.putShort((short) 0).putShort((short) 0).putShort((short) 0);
        table.putShort((short) 34);
        table.putShort((short) 0)
                .putShort((short) 0xfff1)
                .putShort((short) 2)
                .putShort((short) 34)
                .putShort((short) 0);
        table.putShort((short) 6);
        "Normal".chars().forEach(letter -> table.putShort((short) letter));
        table.putShort((short) 0).putShort((short) 2).putShort((short) 0).putShort((short) 0);
    }

    private void section() {
        table.putInt(0)
                .putInt(text.length)
                .putShort((short) 0)
                .putInt(-1)
                .putShort((short) 0)
                .putInt(0);
    }

    private void pages(int number) {
        table.putInt(TEXT_AT).putInt(TEXT_AT + text.length).putInt(number);
    }

    private void piece() {
        table.put((byte) 2).putInt(16).putInt(0).putInt(text.length);
        table.putShort((short) 0).putInt(TEXT_AT * 2 | 0x4000_0000).putShort((short) 0);
    }

    private void letterPage(int at) {
        main.putInt(at, TEXT_AT).putInt(at + 4, TEXT_AT + text.length).put(at + PAGE - 1, (byte) 1);
    }

    /** All paragraphs share one entry: the style, and nothing else. */
    private void paragraphPage(int at) {
        int runs = ends.size();
        int shared = PAGE - 8;
        main.putInt(at, TEXT_AT).put(at + PAGE - 1, (byte) runs);
        for (int i = 0; i < runs; i++) {
            main.putInt(at + 4 * (i + 1), ends.get(i));
            main.put(at + 4 * (runs + 1) + 13 * i, (byte) (shared / 2));
        }
        main.put(at + shared, (byte) 2).putShort(at + shared + 1, (short) 0);
    }

    private static InputStream stream(ByteBuffer content) {
        byte[] bytes = new byte[content.capacity()];
        content.get(0, bytes);
        return new ByteArrayInputStream(bytes);
    }

    private static ByteBuffer little(int bytes) {
        return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }
}
