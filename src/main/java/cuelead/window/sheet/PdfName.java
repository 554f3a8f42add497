package cuelead.window.sheet;

import cuelead.listing.SheetForm;
import java.util.Locale;

/** Names of PDF files. */
final class PdfName {
    private static final String ENDING = ".pdf";

    private PdfName() {}

    /** {@code lamp-on-the-quay-call-sheet.pdf}: letters and digits that every system takes. */
    static String of(String title, SheetForm form) {
        String name = (title + " " + form.word())
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{Nd}]+", "-")
                .replaceAll("^-|-$", "");
        return name + ENDING;
    }

    /** With the ending, where it has another or none. */
    static String ending(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith(ENDING) ? name : name + ENDING;
    }
}
