package cuelead.sheet;

import cuelead.document.DocumentFile;
import cuelead.document.DocumentText;
import cuelead.report.Refused;
import java.nio.file.Path;

/** Reads a step sheet from a file: text, PDF, Word or a saved web page. */
public final class SheetFile {
    private SheetFile() {}

    /**
     * Reads a file that names no figures but those of the table.
     *
     * @throws Refused as below
     */
    public static ReadSheet read(Path file) throws Refused {
        return read(file, OwnFigures.NONE);
    }

    /**
     * Reads a file. The lines of its problems are those of its text.
     *
     * @param own figures and local names beside those of the table
     * @throws Refused when there is no such file, it cannot be read, is too large for a step sheet, or holds no text
     */
    public static ReadSheet read(Path file, OwnFigures own) throws Refused {
        return read(file.toString(), DocumentFile.read(file), own);
    }

    /**
     * Reads an open document.
     *
     * @param name as the user named it, for the problems
     */
    public static ReadSheet read(String name, DocumentText document) {
        return read(name, document, OwnFigures.NONE);
    }

    /**
     * Reads an open document that may name figures of its reader's own.
     *
     * @param name as the user named it, for the problems
     * @param own  figures and local names beside those of the table
     */
    public static ReadSheet read(String name, DocumentText document, OwnFigures own) {
        return SheetReader.read(name, document.text(), own);
    }
}
