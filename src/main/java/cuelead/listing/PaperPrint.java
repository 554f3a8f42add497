package cuelead.listing;

import cuelead.report.Refused;
import java.awt.print.PageFormat;
import java.awt.print.PrinterAbortException;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/** Puts on paper what {@link SheetForm#pdf} made, so that both look the same. */
public final class PaperPrint {
    private PaperPrint() {}

    /** The paper that a printer holds; that of the country where it does not tell. */
    public static Paper paperOf(PrinterJob printer, Paper otherwise) {
        PageFormat format = printer.defaultPage();
        try {
            return new Paper(
                    Math.min(format.getWidth(), format.getHeight()), Math.max(format.getWidth(), format.getHeight()));
        } catch (IllegalArgumentException tooSmall) {
            return otherwise;
        }
    }

    /**
     * Prints it; some seconds.
     *
     * @throws Refused when the printer does not take it
     */
    public static void print(byte[] pdf, PrinterJob printer, String name) throws Refused {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            printer.setPageable(new PDFPageable(document));
            printer.setJobName(name);
            printer.print();
        } catch (PrinterAbortException brokenOff) {
            throw new Refused("The printing was broken off.", brokenOff);
        } catch (PrinterException refusal) {
            throw new Refused(
                    "The printer does not take it (" + refusal.getMessage()
                            + "); see whether it is on and has paper, or save a PDF file instead.",
                    refusal);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
