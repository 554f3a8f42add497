package cuelead.document;

import cuelead.document.DocumentText.Line;
import cuelead.report.Refused;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/** The text of a PDF: page after page, as it lies on the page, without what is printed on each of them. */
final class PdfText {
    private static final int MOST_PAGES = 40;
    /** As much text as a page number or a scanner's mark. */
    private static final int FEW_LETTERS = 12;

    private PdfText() {}

    static List<Line> lines(String name, byte[] bytes) throws Refused {
        FontMappers.set(new WidthsOnly());
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            if (pdf.getNumberOfPages() > MOST_PAGES) {
                throw Unreadable.tooManyPages(name, pdf.getNumberOfPages(), MOST_PAGES);
            }
            PdfGlyphs glyphs = PdfGlyphs.of(pdf);
            checkText(name, glyphs);
            return lines(glyphs.pages());
        } catch (InvalidPasswordException locked) {
            throw Unreadable.locked(name);
        } catch (IOException | RuntimeException | StackOverflowError broken) {
            // a damaged PDF can fail anywhere in the library, and in any way
            throw Unreadable.damaged(name, "PDF", broken);
        }
    }

    private static void checkText(String name, PdfGlyphs glyphs) throws Refused {
        if (glyphs.unknown() * 3 > glyphs.shown()) {
            throw Unreadable.noLetters(name);
        }
        long letters = glyphs.pages().stream()
                .flatMap(List::stream)
                .filter(glyph -> !glyph.isSpace())
                .count();
        if (letters < FEW_LETTERS) {
            throw Unreadable.picturesOnly(name);
        }
    }

    private static List<Line> lines(List<List<Glyph>> pages) {
        List<List<PageRow>> rows = pages.stream().map(PageLayout::rows).toList();
        List<List<PageRow>> body = RunningHeads.without(rows);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < body.size(); i++) {
            int page = i + 1;
            List<String> texts = body.get(i).stream().map(PageRow::text).toList();
            Breaks.mended(texts).forEach(text -> lines.add(new Line(Breaks.plain(text), page)));
        }
        return lines;
    }
}
