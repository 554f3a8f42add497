package cuelead.listing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Writes blocks of rows as a PDF file: at the foot of each page its number, and the title. */
final class PdfSheet implements AutoCloseable {
    private static final double FOOT_POINTS = 9;
    private static final double FOOT_LINE_POINTS = 12;
    /** Of two lines, and what parts them from the text. */
    private static final double FOOT_HEIGHT_POINTS = 34;
    /** The font has no bold letters; theirs are drawn with a stroke around them. */
    private static final double BOLD_STROKE = 0.028;
    /** 5.7 to 1 on white. */
    private static final float QUIET_GREY = 0.4f;

    private final Paper paper;
    private final String title;
    private final PdfLetters letters = new PdfLetters();
    private final PDDocument document = new PDDocument();
    private final PDType0Font font;

    PdfSheet(Paper paper, String title) {
        this.paper = paper;
        this.title = title;
        try {
            font = PDType0Font.load(document, letters.font(), true);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCreator("Cuelead");
    }

    RowMaker rows() {
        return new RowMaker(letters, paper.textWidthPoints());
    }

    /** Of the text of a page. */
    double heightPoints() {
        return paper.heightPoints() - 2 * Paper.MARGIN_POINTS - FOOT_HEIGHT_POINTS;
    }

    /**
     * The file's bytes.
     *
     * @param caution for the foot of the first page
     */
    byte[] written(List<List<PrintedRow>> blocks, Optional<String> caution) {
        List<List<PrintedPages.Placed>> pages = PrintedPages.of(blocks, heightPoints());
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            for (int i = 0; i < pages.size(); i++) {
                String number = pages.size() == 1 ? "" : "page " + (i + 1) + " of " + pages.size();
                write(pages.get(i), number, i == 0 ? caution.orElse("") : "");
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void write(List<PrintedPages.Placed> rows, String number, String caution) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) paper.widthPoints(), (float) paper.heightPoints()));
        document.addPage(page);
        try (PDPageContentStream on = new PDPageContentStream(document, page)) {
            for (PrintedPages.Placed placed : rows) {
                for (PrintedRow.Words words : placed.row().words()) {
                    write(on, words, placed.topPoints());
                }
            }
            double foot = paper.heightPoints() - 2 * Paper.MARGIN_POINTS;
            write(on, foot(0, caution), foot - FOOT_LINE_POINTS);
            write(on, foot(0, title), foot);
            double numberX = paper.textWidthPoints() - letters.widthPoints(number, FOOT_POINTS);
            write(on, foot(numberX, number), foot);
        }
    }

    private PrintedRow.Words foot(double x, String text) {
        return new PrintedRow.Words(x, 0, letters.printable(text), FOOT_POINTS, Letters.Face.QUIET);
    }

    private void write(PDPageContentStream on, PrintedRow.Words words, double topPoints) throws IOException {
        if (words.text().isBlank()) {
            return;
        }
        boolean isBold = words.face() == Letters.Face.BOLD;
        float grey = words.face() == Letters.Face.QUIET ? QUIET_GREY : 0;
        on.beginText();
        on.setFont(font, (float) words.sizePoints());
        on.setNonStrokingColor(grey);
        on.setStrokingColor(grey);
        on.setRenderingMode(isBold ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        on.setLineWidth((float) (words.sizePoints() * BOLD_STROKE));
        on.newLineAtOffset((float) (Paper.MARGIN_POINTS + words.xPoints()), (float)
                (paper.heightPoints() - Paper.MARGIN_POINTS - topPoints - words.basePoints()));
        on.showText(words.text());
        on.endText();
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
