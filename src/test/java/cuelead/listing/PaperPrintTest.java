package cuelead.listing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.report.Refused;
import cuelead.sheet.SheetNotes;
import cuelead.sheet.SheetReader;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import org.junit.jupiter.api.Test;

/** With a printer of the test's own. */
class PaperPrintTest {
    private static final Paper PAPER = new Paper(420, 420);

    private static byte[] pdf() {
        Dance dance = SheetReader.read(
                        "",
                        "SIDES\n\n1-4 Step R to side, touch L, step L to side, touch R\n"
                                .replace("SIDES", "A very long name of a dance ".repeat(40)))
                .dance()
                .orElseThrow();
        return SheetForm.CALL_SHEET.pdf(dance, SheetNotes.NONE, PAPER);
    }

    @Test
    void everyPageIsHandedOverInItsSize() throws Refused {
        FakePrinter printer = new FakePrinter(false);
        PaperPrint.print(pdf(), printer, "Sides");
        assertEquals("Sides", printer.getJobName());
        assertTrue(printer.pages > 1, printer.pages + " pages");
        assertEquals(420, printer.width, 0.5);
    }

    @Test
    void aPrinterThatDoesNotWorkIsToldInASentence() {
        Refused refused = assertThrows(Refused.class, () -> PaperPrint.print(pdf(), new FakePrinter(true), "Sides"));
        assertTrue(refused.getMessage().contains("out of paper"), refused.getMessage());
    }

    @Test
    void paperStandsUpright() {
        assertEquals(new Paper(500, 700), PaperPrint.paperOf(new FakePrinter(false), Paper.A4));
    }

    private static final class FakePrinter extends PrinterJob {
        private final boolean isBroken;
        private Pageable document;
        private String name = "";
        private int pages;
        private double width;

        FakePrinter(boolean isBroken) {
            this.isBroken = isBroken;
        }

        @Override
        public void print() throws PrinterException {
            if (isBroken) {
                throw new PrinterException("out of paper");
            }
            pages = document.getNumberOfPages();
            width = document.getPageFormat(0).getWidth();
        }

        @Override
        public PageFormat defaultPage(PageFormat page) {
            java.awt.print.Paper lying = new java.awt.print.Paper();
            lying.setSize(500, 700);
            PageFormat format = new PageFormat();
            format.setPaper(lying);
            format.setOrientation(PageFormat.LANDSCAPE);
            return format;
        }

        @Override
        public void setPageable(Pageable pages) {
            document = pages;
        }

        @Override
        public void setJobName(String jobName) {
            name = jobName;
        }

        @Override
        public String getJobName() {
            return name;
        }

        @Override
        public void setPrintable(Printable painter) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void setPrintable(Printable painter, PageFormat format) {
            throw new UnsupportedOperationException();
        }

        @Override
        public boolean printDialog() {
            return true;
        }

        @Override
        public PageFormat pageDialog(PageFormat page) {
            return page;
        }

        @Override
        public PageFormat validatePage(PageFormat page) {
            return page;
        }

        @Override
        public void setCopies(int copies) {}

        @Override
        public int getCopies() {
            return 1;
        }

        @Override
        public String getUserName() {
            return "";
        }

        @Override
        public void cancel() {}

        @Override
        public boolean isCancelled() {
            return false;
        }
    }
}
