package cuelead.document;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** The letters of each page of a PDF, which the library hands over one by one; letters printed twice count once. */
final class PdfGlyphs extends PDFTextStripper {
    private final List<List<Glyph>> pages = new ArrayList<>();
    private long shown;
    private long unknown;

    private PdfGlyphs() {
        setSuppressDuplicateOverlappingText(true);
        setShouldSeparateByBeads(false);
    }

    static PdfGlyphs of(PDDocument pdf) throws IOException {
        PdfGlyphs glyphs = new PdfGlyphs();
        glyphs.writeText(pdf, Writer.nullWriter());
        return glyphs;
    }

    List<List<Glyph>> pages() {
        return pages;
    }

    /** How many shapes are drawn with fonts. */
    long shown() {
        return shown;
    }

    /** How many of them stand for no known letter. */
    long unknown() {
        return unknown;
    }

    @Override
    protected void showGlyph(Matrix place, PDFont font, int code, Vector displacement) throws IOException {
        shown++;
        if (font.toUnicode(code) == null) {
            unknown++;
        }
        super.showGlyph(place, font, code, displacement);
    }

    /** Takes the letters of the page instead of writing them. Text across the usual direction is left out. */
    @Override
    protected void writePage() {
        List<TextPosition> all =
                charactersByArticle.stream().flatMap(List::stream).toList();
        Map<Float, Long> directions =
                all.stream().collect(Collectors.groupingBy(TextPosition::getDir, Collectors.counting()));
        float usual = directions.entrySet().stream()
                .max(Map.Entry.<Float, Long>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .map(Map.Entry::getKey)
                .orElse(0f);
        pages.add(all.stream()
                .filter(letter -> letter.getDir() == usual)
                .map(PdfGlyphs::glyph)
                .toList());
    }

    private static Glyph glyph(TextPosition letter) {
        double left = letter.getXDirAdj();
        double right = left + letter.getWidthDirAdj();
        double size = Math.max(1, Math.abs(letter.getFontSizeInPt()));
        return new Glyph(letter.getUnicode(), left, right, letter.getYDirAdj(), size);
    }
}
