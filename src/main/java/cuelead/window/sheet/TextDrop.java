package cuelead.window.sheet;

import cuelead.window.frame.Drop;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.InputEvent;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Within a text, words go where they are put, as in any text; files are taken as sheets and songs. */
final class TextDrop extends TransferHandler {
    private static final long serialVersionUID = 1L;

    private final TransferHandler words;
    private final Drop files;

    /** @param words what a text does without this */
    TextDrop(TransferHandler words, Drop files) {
        this.words = words;
        this.files = files;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor) || words.canImport(support);
    }

    @Override
    public boolean importData(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                ? files.importData(support)
                : words.importData(support);
    }

    @Override
    public int getSourceActions(JComponent from) {
        return words.getSourceActions(from);
    }

    @Override
    public void exportAsDrag(JComponent from, InputEvent trigger, int action) {
        words.exportAsDrag(from, trigger, action);
    }

    @Override
    public void exportToClipboard(JComponent from, Clipboard clipboard, int action) {
        words.exportToClipboard(from, clipboard, action);
    }
}
