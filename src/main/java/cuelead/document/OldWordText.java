package cuelead.document;

import cuelead.report.Refused;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.OldFileFormatException;
import org.apache.poi.hwpf.HWPFDocument;
import org.apache.poi.hwpf.converter.AbstractWordUtils;
import org.apache.poi.hwpf.usermodel.Paragraph;
import org.apache.poi.hwpf.usermodel.Range;
import org.apache.poi.hwpf.usermodel.Table;
import org.apache.poi.hwpf.usermodel.TableRow;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** The text of a document of Word 97 to 2003 (.doc). A newer one with a password has the same wrapping. */
final class OldWordText {
    private static final String STREAM = "WordDocument";
    private static final int FLAGS = 11;
    private static final int ENCRYPTED = 1;

    private final AbstractWordUtils.NumberingState numbers = new AbstractWordUtils.NumberingState();

    private OldWordText() {}

    static List<String> lines(String name, byte[] bytes) throws Refused {
        try (POIFSFileSystem wrapping = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
            DirectoryNode inside = wrapping.getRoot();
            if (inside.hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
                throw Unreadable.locked(name);
            }
            if (!inside.hasEntryCaseInsensitive(STREAM)) {
                throw Unreadable.notWord(name);
            }
            if (isLocked(inside)) {
                throw Unreadable.locked(name);
            }
            try (HWPFDocument document = new HWPFDocument(inside)) {
                return new OldWordText().linesOf(document.getRange());
            }
        } catch (EncryptedDocumentException locked) {
            throw Unreadable.locked(name);
        } catch (OldFileFormatException older) {
            throw Unreadable.tooOld(name, older);
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            // a damaged document can fail anywhere in the library, and in any way
            throw Unreadable.damaged(name, "Word document", broken);
        }
    }

    /** The bit fEncrypted of the head ([MS-DOC] 2.5.2). */
    private static boolean isLocked(DirectoryNode inside) throws IOException {
        try (InputStream head = inside.createDocumentInputStream(STREAM)) {
            byte[] bytes = head.readNBytes(FLAGS + 1);
            return bytes.length > FLAGS && (bytes[FLAGS] & ENCRYPTED) != 0;
        }
    }

    private List<String> linesOf(Range range) {
        List<String> lines = new ArrayList<>();
        int endOfTable = -1;
        for (int i = 0; i < range.numParagraphs(); i++) {
            Paragraph paragraph = range.getParagraph(i);
            if (paragraph.getStartOffset() < endOfTable) {
                continue;
            }
            if (paragraph.isInTable()) {
                Table table = range.getTable(paragraph);
                endOfTable = table.getEndOffset();
                lines.addAll(linesOf(table));
            } else {
                lines.addAll(linesOf(paragraph));
            }
        }
        return lines;
    }

    private List<String> linesOf(Table table) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < table.numRows(); i++) {
            TableRow row = table.getRow(i);
            List<List<String>> cells = new ArrayList<>();
            for (int j = 0; j < row.numCells(); j++) {
                List<String> cell = new ArrayList<>();
                for (int k = 0; k < row.getCell(j).numParagraphs(); k++) {
                    cell.addAll(linesOf(row.getCell(j).getParagraph(k)));
                }
                cells.add(cell);
            }
            lines.addAll(Cells.lines(cells));
        }
        return lines;
    }

    private List<String> linesOf(Paragraph paragraph) {
        String text = Range.stripFields(paragraph.text())
                .replace('\u000b', '\n')
                .replace('\f', '\n')
                .replaceAll("[\u0000-\u0008\u000e-\u001f]", "")
                .replaceFirst("[\r\n]+$", "");
        String plain = Breaks.plain(text);
        return PlainText.lines(number(paragraph, plain) + plain).stream()
                .map(String::stripTrailing)
                .toList();
    }

    private String number(Paragraph paragraph, String text) {
        if (!paragraph.isInList()) {
            return "";
        }
        String label = AbstractWordUtils.getBulletText(numbers, paragraph.getList(), (char) paragraph.getIlvl())
                .strip();
        boolean isNumber = label.matches("\\w+[.)]?.*") && !ListNumber.hasOwn(text) && !text.isBlank();
        return isNumber ? label + " " : "";
    }
}
