package cuelead.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * One font for all that a PDF does not bring along: nothing is drawn, only read. So the fonts of the system are never
 * searched, which takes seconds and leaves a file in the user's home.
 */
final class WidthsOnly implements FontMapper {
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    /** Read when the first PDF needs it. */
    private static final class Stand {
        private static final TrueTypeFont IN = read();

        private static TrueTypeFont read() {
            try (InputStream in = FontMapper.class.getResourceAsStream(FONT)) {
                return new TTFParser().parse(new RandomAccessReadBuffer(in));
            } catch (IOException missing) {
                throw new UncheckedIOException("the font of the PDF library is missing", missing);
            }
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(Stand.IN, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(Stand.IN, true);
    }

    @Override
    public CIDFontMapping getCIDFont(String baseFont, PDFontDescriptor descriptor, PDCIDSystemInfo info) {
        return new CIDFontMapping(null, Stand.IN, true);
    }
}
