package cuelead.cli;

import cuelead.document.DocumentFile;
import cuelead.document.DocumentText;
import cuelead.report.Refused;
import java.awt.AWTError;
import java.awt.HeadlessException;
import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** The text that was copied last in any program. */
final class Clipping {
    private static final String NAME = "The clipboard";

    private Clipping() {}

    static DocumentText ofSystem() throws Refused {
        try {
            return of(Toolkit.getDefaultToolkit().getSystemClipboard());
        } catch (HeadlessException | AWTError | LinkageError noDesktop) {
            throw new Refused(
                    "There is no clipboard here, since no desktop is running; save the copied text as a file and name"
                            + " that.",
                    noDesktop);
        }
    }

    static DocumentText of(Clipboard clipboard) throws Refused {
        try {
            if (!clipboard.isDataFlavorAvailable(DataFlavor.stringFlavor)) {
                throw new Refused(NAME + " holds no text; copy the step sheet's text first.");
            }
            String text = (String) clipboard.getData(DataFlavor.stringFlavor);
            return DocumentFile.read(NAME, text.getBytes(StandardCharsets.UTF_8));
        } catch (UnsupportedFlavorException | IOException | IllegalStateException busy) {
            throw new Refused(NAME + " cannot be read just now; copy the step sheet's text again.", busy);
        }
    }
}
