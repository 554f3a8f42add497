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
     * A step sheet to be opened, by the system's own dialog.
     *
     * @param of whose window it stands before
     * @return empty when the user chose none
     */
    public static Optional<Path> sheet(Component of, Host host) {
        return toOpen(of, "Choose a step sheet", usersSheet(host));
    }

    /** Likewise a song. */
    public static Optional<Path> song(Component of, Host host) {
        return toOpen(of, "Choose a song", host.inHand().song().or(() -> usersSheet(host)));
    }

    /** Shows first the folder of a file, or the user's own. */
    private static Optional<Path> toOpen(Component of, String title, Optional<Path> near) {
        FileDialog dialog = dialog(of, title, FileDialog.LOAD);
        dialog.setDirectory(near.map(file -> file.toAbsolutePath().getParent())
                .map(Path::toString)
                .orElse(System.getProperty("user.home")));
        return chosen(dialog);
    }

    /**
     * A file to be written, by the system's own dialog, which asks before one that is there is replaced.
     *
     * @param of    whose window it stands before
     * @param title what it is for
     * @param name  that it may get, in the user's own folder
     * @return empty when the user chose none
     */
    public static Optional<Path> toSave(Component of, String title, String name) {
        FileDialog dialog = dialog(of, title, FileDialog.SAVE);
        dialog.setDirectory(System.getProperty("user.home"));
        dialog.setFile(name);
        return chosen(dialog);
    }

    /** The sheet on the stand, unless it is a copy that Cuelead keeps where no user looks for files. */
    private static Optional<Path> usersSheet(Host host) {
        return host.inHand()
                .sheet()
                .filter(sheet -> !sheet.startsWith(host.means().kept()));
    }

    private static FileDialog dialog(Component of, String title, int mode) {
        return new FileDialog((Frame) SwingUtilities.getWindowAncestor(of), title, mode);
    }

    private static Optional<Path> chosen(FileDialog dialog) {
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
