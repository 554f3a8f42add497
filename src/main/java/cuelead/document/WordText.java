package cuelead.document;

import cuelead.report.Refused;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.poi.xwpf.usermodel.IBodyElement;
import org.apache.poi.xwpf.usermodel.IRunElement;
import org.apache.poi.xwpf.usermodel.XWPFAbstractFootnoteEndnote;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.apache.poi.xwpf.usermodel.XWPFSDT;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;

/** The text of a Word document (.docx): paragraphs, lists with their numbers, tables, and the footnotes at the end. */
final class WordText {
    private static final Pattern FOOTNOTE_MARK = Pattern.compile("\\[(footnoteRef|endnoteRef):\\d+]");

    private final WordNumbers numbers;
    private final List<String> lines = new ArrayList<>();

    private WordText(XWPFDocument document) {
        numbers = new WordNumbers(document);
    }

    static List<String> lines(String name, byte[] bytes) throws Refused {
        try (XWPFDocument document = new XWPFDocument(new ByteArrayInputStream(bytes))) {
            WordText text = new WordText(document);
            text.add(document.getBodyElements());
            document.getFootnotes().forEach(text::note);
            return text.lines;
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            // a damaged document can fail anywhere in the library, and in any way
            throw Unreadable.damaged(name, "Word document", broken);
        }
    }

    private void add(List<IBodyElement> elements) {
        for (IBodyElement element : elements) {
            if (element instanceof XWPFParagraph paragraph) {
                lines.addAll(linesOf(paragraph));
            } else if (element instanceof XWPFTable table) {
                lines.addAll(linesOf(table));
            } else if (element instanceof XWPFSDT control) {
                lines.addAll(split(control.getContent().getText()));
            }
        }
    }

    private void note(XWPFAbstractFootnoteEndnote note) {
        List<String> text =
                note.getParagraphs().stream().flatMap(p -> linesOf(p).stream()).toList();
        if (!text.stream().allMatch(String::isBlank)) {
            lines.addAll(text);
        }
    }

    private List<String> linesOf(XWPFParagraph paragraph) {
        StringBuilder text = new StringBuilder();
        for (IRunElement run : paragraph.getIRuns()) {
            boolean isDeleted =
                    run instanceof XWPFRun written && (written.getCTR().sizeOfDelTextArray() > 0 || written.isVanish());
            text.append(isDeleted ? "" : run);
        }
        String plain = FOOTNOTE_MARK.matcher(text).replaceAll("");
        return split(numbers.before(paragraph, plain) + plain);
    }

    private List<String> linesOf(XWPFTable table) {
        List<String> rows = new ArrayList<>();
        for (XWPFTableRow row : table.getRows()) {
            rows.addAll(
                    Cells.lines(row.getTableCells().stream().map(this::linesOf).toList()));
        }
        return rows;
    }

    private List<String> linesOf(XWPFTableCell cell) {
        List<String> inside = new ArrayList<>();
        for (IBodyElement element : cell.getBodyElements()) {
            if (element instanceof XWPFParagraph paragraph) {
                inside.addAll(linesOf(paragraph));
            } else if (element instanceof XWPFTable table) {
                inside.addAll(linesOf(table));
            }
        }
        return inside;
    }

    /** Soft line breaks part lines as paragraphs do. */
    private static List<String> split(String text) {
        return PlainText.lines(Breaks.plain(text.replace('\u000b', '\n'))).stream()
                .map(String::stripTrailing)
                .toList();
    }
}
