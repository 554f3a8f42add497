package cuelead.window.sheet;

import cuelead.dance.Dance;
import cuelead.listing.Paper;
import cuelead.listing.PaperPrint;
import cuelead.listing.SheetForm;
import cuelead.output.DataFile;
import cuelead.report.Refused;
import cuelead.sheet.SheetNotes;
import cuelead.window.frame.Controls;
import cuelead.window.frame.FileChoice;
import cuelead.window.frame.Host;
import java.awt.print.PrinterJob;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javax.print.PrintServiceLookup;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;

/** Puts a dance on paper, or into a PDF file. */
final class PaperButtons {
    private static final String NO_PRINTER =
            "There is no printer on this computer; save a PDF file, and print that where there is one.";

    private static final List<SheetForm> FORMS = List.of(SheetForm.CALL_SHEET, SheetForm.STEP_SHEET);

    private final Host host;
    private final Supplier<Understood> understood;
    private final JComboBox<String> form = new JComboBox<>(new String[] {"Call sheet", "Step sheet"});
    private final JButton print = Controls.button("Print\u2026", 'P', this::print);
    private final JButton save = Controls.button("Save as PDF\u2026", 'F', this::save);

    PaperButtons(Host host, Supplier<Understood> understood) {
        this.host = host;
        this.understood = understood;
        form.getAccessibleContext().setAccessibleName("What is printed");
        print.setToolTipText("Control and P");
    }

    JComponent view() {
        return Controls.line(form, print, save);
    }

    void enable(boolean isDance) {
        form.setEnabled(isDance);
        print.setEnabled(isDance);
        save.setEnabled(isDance);
    }

    private SheetForm form() {
        return FORMS.get(form.getSelectedIndex());
    }

    private String title(Dance dance) {
        return dance.header().title().isBlank() ? "Dance" : dance.header().title();
    }

    void print() {
        understood
                .get()
                .dance()
                .ifPresent(dance -> print(dance, understood.get().notes()));
    }

    private void print(Dance dance, SheetNotes notes) {
        SheetForm what = form();
        host.work(
                "Looking for printers",
                progress -> PrintServiceLookup.lookupPrintServices(null, null).length,
                found -> {
                    if (found == 0) {
                        host.tell(NO_PRINTER);
                        return;
                    }
                    PrinterJob printer = PrinterJob.getPrinterJob();
                    String name = title(dance) + ", " + what.word();
                    printer.setJobName(name);
                    if (printer.printDialog()) {
                        host.work(
                                "Printing",
                                progress -> {
                                    Paper paper = PaperPrint.paperOf(printer, Paper.of(Locale.getDefault()));
                                    PaperPrint.print(what.pdf(dance, notes, paper), printer, name);
                                    return what;
                                },
                                done -> host.tell("The " + done.word() + " is with the printer."));
                    }
                });
    }

    private void save() {
        understood.get().dance().ifPresent(dance -> save(dance, understood.get().notes()));
    }

    private void save(Dance dance, SheetNotes notes) {
        SheetForm what = form();
        FileChoice.toSave(save, "Save the " + what.word() + " as PDF", PdfName.of(title(dance), what))
                .ifPresent(file -> save(file, what, dance, notes));
    }

    private void save(Path chosen, SheetForm what, Dance dance, SheetNotes notes) {
        Path file = chosen.resolveSibling(PdfName.ending(chosen.getFileName().toString()));
        // the dialog has asked about the name that was chosen only
        if (!file.equals(chosen) && Files.exists(file)) {
            host.tell("There is a file " + file + " already; choose that one to replace it, or another name.");
            return;
        }
        host.work("Writing " + file.getFileName(), progress -> written(file, what, dance, notes), host::tell);
    }

    private static String written(Path file, SheetForm what, Dance dance, SheetNotes notes) throws Refused {
        DataFile.write(file, ByteBuffer.wrap(what.pdf(dance, notes, Paper.of(Locale.getDefault()))));
        return "The " + what.word() + " is in " + file + ".";
    }
}
