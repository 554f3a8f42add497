package cuelead.window.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.listing.SheetForm;
import org.junit.jupiter.api.Test;

class PdfNameTest {
    @Test
    void aFileIsNamedAfterItsDance() {
        assertEquals("lamp-on-the-quay-call-sheet.pdf", PdfName.of("LAMP ON THE QUAY", SheetForm.CALL_SHEET));
        assertEquals("r\u00eaver-a-b-step-sheet.pdf", PdfName.of("../R\u00eaver: a/b?", SheetForm.STEP_SHEET));
    }

    @Test
    void theEndingIsAddedOnce() {
        assertEquals("a.PDF", PdfName.ending("a.PDF"));
        assertEquals("a.txt.pdf", PdfName.ending("a.txt"));
    }
}
