package cuelead.listing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The letters of a font that goes into the file, so that they look the same everywhere. */
final class PdfLetters implements Letters {
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String STAND_IN = "\u25a1";

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsInEm;

    PdfLetters() {
        try (InputStream in = PdfLetters.class.getResourceAsStream(FONT)) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(in));
            // ligatures would be letters of their own where the text is searched
            font.setEnableGsub(false);
            glyphs = font.getUnicodeCmapLookup();
            unitsInEm = font.getUnitsPerEm();
        } catch (IOException missing) {
            throw new UncheckedIOException("the font of the PDF library is missing", missing);
        }
    }

    TrueTypeFont font() {
        return font;
    }

    @Override
    public String printable(String text) {
        StringBuilder known = new StringBuilder();
        text.codePoints().forEach(letter -> known.append(printable(letter)));
        return known.toString();
    }

    private String printable(int letter) {
        if (Character.isWhitespace(letter) || Character.isSpaceChar(letter)) {
            return " ";
        }
        int kind = Character.getType(letter);
        if (kind == Character.CONTROL || kind == Character.FORMAT) {
            return "";
        }
        String itself = Character.toString(letter);
        if (has(itself)) {
            return itself;
        }
        String simpler = Normalizer.normalize(itself, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
        return !simpler.isEmpty() && has(simpler) ? simpler : STAND_IN;
    }

    private boolean has(String text) {
        return text.codePoints().allMatch(letter -> glyphs.getGlyphId(letter) != 0);
    }

    @Override
    public double widthPoints(String printable, double sizePoints) {
        return printable
                .codePoints()
                .mapToDouble(letter -> advance(letter) / unitsInEm * sizePoints)
                .sum();
    }

    private double advance(int letter) {
        try {
            return font.getAdvanceWidth(glyphs.getGlyphId(letter));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
