package cuelead.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFTable;

/** Documents as other programs write them, made by the libraries. */
public final class Documents {
    private static final float SIZE = 10;
    private static final float LEADING = 14;
    private static final float MARGIN = 50;
    private static final float GUTTER = 20;
    /** Of capitals, on average, in points. */
    private static final float WIDEST_LETTER = 7;

    static {
        FontMappers.set(new WidthsOnly()); // so that no test searches the system's fonts
    }

    private Documents() {}

    /** A text on a page: left edge and baseline in points from the top left corner. */
    public record Placed(String text, float left, float down) {}

    /** A4 pages of placed texts in Helvetica. */
    public static byte[] pdf(List<List<Placed>> pages) {
        return pdf(pages, "");
    }

    /** The same, locked with a password unless that is empty. */
    public static byte[] pdf(List<List<Placed>> pages, String password) {
        try (PDDocument pdf = new PDDocument()) {
            PDFont font = new PDType1Font(FontName.HELVETICA);
            for (List<Placed> texts : pages) {
                PDPage page = new PDPage(PDRectangle.A4);
                pdf.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(pdf, page)) {
                    for (Placed placed : texts) {
                        content.beginText();
                        content.setFont(font, SIZE);
                        content.newLineAtOffset(placed.left(), PDRectangle.A4.getHeight() - placed.down());
                        content.showText(placed.text());
                        content.endText();
                    }
                }
            }
            if (!password.isEmpty()) {
                StandardProtectionPolicy policy =
                        new StandardProtectionPolicy("owner", password, new AccessPermission());
                policy.setEncryptionKeyLength(128);
                pdf.protect(policy);
            }
            return written(pdf::save);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Lines down one page; the columns that tabs part are as wide as what stands in them. */
    public static List<Placed> down(List<String> lines, float left) {
        List<Float> edges = new ArrayList<>(List.of(left));
        for (int column = 0; column < 9; column++) {
            int at = column;
            int longest = lines.stream()
                    .map(line -> line.split("\t", -1))
                    .filter(cells -> cells.length > at + 1)
                    .mapToInt(cells -> cells[at].length())
                    .max()
                    .orElse(0);
            edges.add(edges.get(column) + GUTTER + longest * WIDEST_LETTER);
        }
        List<Placed> placed = new ArrayList<>();
        for (int row = 0; row < lines.size(); row++) {
            String[] cells = lines.get(row).split("\t", -1);
            for (int column = 0; column < cells.length; column++) {
                if (!cells[column].isBlank()) {
                    placed.add(new Placed(cells[column], edges.get(column), MARGIN + row * LEADING));
                }
            }
        }
        return placed;
    }

    /** Each line is a paragraph; lines with a tab become rows of a table. */
    public static byte[] word(List<String> lines) {
        try (XWPFDocument document = new XWPFDocument()) {
            for (String line : lines) {
                String[] cells = line.split("\t", -1);
                if (cells.length == 1) {
                    document.createParagraph().createRun().setText(line);
                } else {
                    XWPFTable table = document.createTable(1, cells.length);
                    for (int i = 0; i < cells.length; i++) {
                        table.getRow(0).getCell(i).setText(cells[i]);
                    }
                }
            }
            return written(document::write);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Writes a document somewhere. */
    public interface Writes {
        void to(OutputStream out) throws IOException;
    }

    public static byte[] written(Writes document) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.to(bytes);
        return bytes.toByteArray();
    }
}
