package cuelead.window.frame;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.TransferHandler;

/** Takes what is dropped or pasted: files of sheets and songs, and the text of a sheet. */
public final class Drop extends TransferHandler {
    private static final long serialVersionUID = 1L;

    private static final String SONGS = ".*\\.(mp3|wav|wave|flac|ogg|oga|aiff?|aifc|m4a)";

    private final transient Taker taker;

    /** Is given what was dropped. */
    public interface Taker {
        void sheet(Path file);

        void song(Path file);

        /** The text of a sheet. */
        void text(String text);

        /** A sentence about what could not be taken. */
        void told(String sentence);
    }

    public Drop(Taker taker) {
        this.taker = taker;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                || support.isDataFlavorSupported(DataFlavor.stringFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        return take(support.getTransferable());
    }

    /** Takes it, if it can be taken. */
    public boolean take(Transferable dropped) {
        try {
            if (dropped.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
                for (Object file : (List<?>) dropped.getTransferData(DataFlavor.javaFileListFlavor)) {
                    take(((File) file).toPath());
                }
                return true;
            }
            if (dropped.isDataFlavorSupported(DataFlavor.stringFlavor)) {
                taker.text((String) dropped.getTransferData(DataFlavor.stringFlavor));
                return true;
            }
        } catch (UnsupportedFlavorException | IOException broken) {
            // told below
        }
        taker.told("There is no file and no text to be taken; copy the step sheet first, or choose its file.");
        return false;
    }

    private void take(Path file) {
        if (file.toString().toLowerCase(Locale.ROOT).matches(SONGS)) {
            taker.song(file);
        } else {
            taker.sheet(file);
        }
    }
}
