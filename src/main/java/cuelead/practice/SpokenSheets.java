package cuelead.practice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;

/**
 * Which sheets have been spoken before by a voice, an empty file each: whether their words will be remembered, told
 * before they are read. It is a hint only: where it is wrong or lost, a start takes longer.
 */
final class SpokenSheets {
    private final Path folder;

    /** @param folder made when the first sheet is noted */
    SpokenSheets(Path folder) {
        this.folder = folder;
    }

    boolean has(Path sheet) {
        try {
            return Files.exists(mark(sheet));
        } catch (IOException unreadable) {
            return false; // whoever reads it tells
        }
    }

    void note(Path sheet) {
        try {
            Path mark = mark(sheet);
            if (!Files.exists(mark)) {
                Files.createDirectories(folder);
                Files.createFile(mark);
            }
        } catch (IOException costsTimeOnly) {
            // the next start loads the voice beforehand once more
        }
    }

    /** Named after what the sheet holds. */
    private Path mark(Path sheet) throws IOException {
        CRC32 crc = new CRC32();
        crc.update(Files.readAllBytes(sheet));
        return folder.resolve(Long.toHexString(crc.getValue()) + ".sheet");
    }
}
