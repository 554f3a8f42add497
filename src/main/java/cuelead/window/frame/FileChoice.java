package cuelead.window.frame;

import java.awt.Component;
import java.awt.FileDialog;
import java.awt.Frame;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.SwingUtilities;

/** Lets the user choose files and folders. Used on the thread of events. */
public final class FileChoice {
    private FileChoice() {}

    /**
     * A file to be opened, by the system's own dialog.
     *
     * @param of    whose window it stands before
     * @param title what it is for
     * @return empty when the user chose none
     */
    public static Optional<Path> toOpen(Component of, String title) {
        FileDialog dialog = new FileDialog((Frame) SwingUtilities.getWindowAncestor(of), title, FileDialog.LOAD);
        dialog.setVisible(true);
        return dialog.getFile() == null
                ? Optional.empty()
                : Optional.of(Path.of(dialog.getDirectory(), dialog.getFile()));
    }

    /**
     * A folder; the system's own dialog knows only files.
     *
     * @param at    where it begins
     * @param takes the word on the button that takes it
     * @return empty when the user chose none
     */
    public static Optional<Path> folder(Component of, String title, Path at, String takes) {
        JFileChooser chooser = new JFileChooser(at.toFile());
        chooser.setDialogTitle(title);
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        return chooser.showDialog(of, takes) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }
}
