package cuelead.document;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Opens a file of any kind that may hold a step sheet. */
public final class DocumentFile {
    private static final long LARGEST_DOCUMENT_BYTES = 32 << 20;
    private static final int LARGEST_TEXT_BYTES = 1 << 20;

    private DocumentFile() {}

    /**
     * Reads a file.
     *
     * @throws Refused when there is no such file, it is no ordinary file, cannot be read, is too large for a step
     *                 sheet, or holds no text
     */
    public static DocumentText read(Path file) throws Refused {
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
            long bytes = Files.size(file);
            if (bytes > LARGEST_DOCUMENT_BYTES) {
                throw Unreadable.tooLarge(file.toString(), bytes, LARGEST_DOCUMENT_BYTES);
            }
            return read(file.toString(), Files.readAllBytes(file));
        } catch (IOException unreadable) {
            throw new Refused(file + " cannot be read; check that you may read it.", unreadable);
        }
    }

    /**
     * Reads the content of a file.
     *
     * @param name as the user named it, for the sentence
     * @throws Refused when it is too large for a step sheet, or holds no text
     */
    public static DocumentText read(String name, byte[] bytes) throws Refused {
        DocumentKind kind = DocumentKind.of(bytes);
        return switch (kind) {
            case PDF -> new DocumentText(kind, PdfText.lines(name, bytes));
            case WORD -> DocumentText.ofOnePiece(kind, some(name, WordText.lines(name, bytes)));
            case COMPOUND -> DocumentText.ofOnePiece(kind, some(name, OldWordText.lines(name, bytes)));
            case WEB_PAGE -> DocumentText.ofOnePiece(kind, some(name, WebPageText.lines(bytes)));
            case WEB_ARCHIVE -> DocumentText.ofOnePiece(kind, some(name, WebArchive.lines(name, bytes)));
            case PLAIN_TEXT -> DocumentText.ofOnePiece(kind, plainLines(name, bytes));
            case PICTURE, RICH_TEXT, OPEN_DOCUMENT, OTHER_ARCHIVE, SAFARI_ARCHIVE -> throw Unreadable.kind(name, kind);
        };
    }

    private static List<String> plainLines(String name, byte[] bytes) throws Refused {
        if (bytes.length > LARGEST_TEXT_BYTES) {
            throw Unreadable.tooLarge(name, bytes.length, LARGEST_TEXT_BYTES);
        }
        return PlainText.lines(PlainText.decode(bytes));
    }

    private static List<String> some(String name, List<String> lines) throws Refused {
        if (lines.stream().allMatch(String::isBlank)) {
            throw Unreadable.noText(name);
        }
        return lines;
    }
}
