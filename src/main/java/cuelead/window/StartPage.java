package cuelead.window;

import cuelead.time.Tempo;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FileDialog;
import java.awt.Font;
import java.awt.Frame;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;
import javax.swing.TransferHandler;

/** Where a dance and its music are chosen. Used on the thread of events. */
final class StartPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final String CAUTION =
            "Begin softly: long loud sound harms hearing. Keep the floor clear, and take turns only as fast as is safe for you.";

    private final JLabel dance = new JLabel("No step sheet yet: choose one, or drop it here.");
    private final JLabel facts = new JLabel(" ");
    private final JTextArea findings = new JTextArea();
    private final JLabel music = new JLabel("Music: the song that the sheet names");
    private final JSpinner tempo = new JSpinner(new SpinnerNumberModel(104, 40, 240, 1));
    private final JButton toSong = button("Practise with the song", 'P');
    private final JButton toClicks = button("Practise to clicks", 'C');
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JButton stop = button("Break it off", 'B');
    private final JTextArea told = new JTextArea();

    private transient Optional<Path> sheet = Optional.empty();
    private transient Optional<Path> song = Optional.empty();

    /**
     * An empty page.
     *
     * @param demo     its sheet, where it is there
     * @param practise is told what is to be practised
     * @param breakOff makes an end of what is being made ready
     */
    StartPage(Optional<Path> demo, Consumer<Chosen> practise, Runnable breakOff) {
        setLayout(new GridBagLayout());
        title(dance, 1.6f);
        title(facts, 1.15f);
        for (JTextArea text : List.of(findings, told)) {
            text.setEditable(false);
            text.setLineWrap(true);
            text.setWrapStyleWord(true);
            text.setOpaque(false);
            text.setBorder(null);
        }
        findings.getAccessibleContext().setAccessibleName("What was found in the sheet");
        told.getAccessibleContext().setAccessibleName("What happened");
        tempo.getAccessibleContext().setAccessibleName("Beats a minute of the clicks");
        progress.setStringPainted(true);
        progress.setPreferredSize(new Dimension(420, 24));
        stop.addActionListener(pressed -> breakOff.run());
        idle();
        JButton chooseSheet = button("Choose a step sheet\u2026", 'S');
        JButton chooseSong = button("Choose a song\u2026", 'O');
        JButton hearDemo = button("Hear the demo", 'D');
        chooseSheet.addActionListener(pressed -> file("Choose a step sheet").ifPresent(this::sheet));
        chooseSong.addActionListener(pressed -> file("Choose a song").ifPresent(this::song));
        hearDemo.setEnabled(demo.isPresent());
        hearDemo.addActionListener(pressed -> demo.ifPresent(file -> {
            song = Optional.empty();
            sheet(file);
            practise.accept(new Chosen(file, Optional.empty(), Optional.empty()));
        }));
        toSong.addActionListener(
                pressed -> sheet.ifPresent(file -> practise.accept(new Chosen(file, song, Optional.empty()))));
        toClicks.addActionListener(pressed -> sheet.ifPresent(file -> practise.accept(new Chosen(
                file, Optional.empty(), Optional.of(new Tempo(((Number) tempo.getValue()).doubleValue()))))));
        row(0, dance, 0);
        row(1, facts, 0);
        row(2, line(chooseSheet, hearDemo), 0);
        JScrollPane scroll = new JScrollPane(findings);
        scroll.setPreferredSize(new Dimension(400, 120));
        row(3, scroll, 1);
        row(4, music, 0);
        row(5, line(chooseSong), 0);
        row(6, line(toSong, toClicks, tempo, new JLabel("beats a minute")), 0);
        row(7, line(stop, progress), 0);
        row(8, told, 0);
        row(9, new JLabel("<html>" + CAUTION + "</html>"), 0);
        setTransferHandler(new Drop());
        enabled();
    }

    private static JButton button(String words, char mnemonic) {
        JButton button = new JButton(words);
        button.setMnemonic(mnemonic);
        button.setMargin(new Insets(8, 16, 8, 16));
        return button;
    }

    private static void title(JLabel label, float larger) {
        Font font = label.getFont();
        label.setFont(font.deriveFont(Font.BOLD, font.getSize2D() * larger));
    }

    private static JComponent line(Component... parts) {
        JPanel line = new JPanel();
        line.setLayout(new BoxLayout(line, BoxLayout.X_AXIS));
        for (Component part : parts) {
            if (part instanceof JComponent component) {
                component.setMaximumSize(component.getPreferredSize());
            }
            line.add(part);
            line.add(Box.createHorizontalStrut(12));
        }
        return line;
    }

    private void row(int at, Component part, double grows) {
        GridBagConstraints place = new GridBagConstraints();
        place.gridy = at;
        place.weightx = 1;
        place.weighty = grows;
        place.fill = grows > 0 ? GridBagConstraints.BOTH : GridBagConstraints.HORIZONTAL;
        place.anchor = GridBagConstraints.LINE_START;
        place.insets = new Insets(7, 28, 7, 28);
        add(part, place);
    }

    private Optional<Path> file(String title) {
        FileDialog dialog = new FileDialog((Frame) SwingUtilities.getWindowAncestor(this), title, FileDialog.LOAD);
        dialog.setVisible(true);
        return dialog.getFile() == null
                ? Optional.empty()
                : Optional.of(Path.of(dialog.getDirectory(), dialog.getFile()));
    }

    /** Takes a sheet, and reads it beside everything else. */
    void sheet(Path file) {
        sheet = Optional.of(file);
        dance.setText(String.valueOf(file.getFileName()));
        facts.setText("Reading\u2026");
        findings.setText("");
        told("");
        enabled();
        new SwingWorker<ReadDance, Void>() {
            @Override
            protected ReadDance doInBackground() {
                return ReadDance.read(file);
            }

            @Override
            protected void done() {
                try {
                    if (sheet.equals(Optional.of(file))) {
                        show(get());
                    }
                } catch (InterruptedException stopped) {
                    Thread.currentThread().interrupt();
                } catch (ExecutionException mistake) {
                    throw new IllegalStateException(mistake.getCause());
                }
            }
        }.execute();
    }

    private void show(ReadDance read) {
        dance.setText(read.title());
        facts.setText(read.facts());
        findings.setText(
                read.findings().isEmpty()
                        ? "Nothing was found to be wrong with it."
                        : String.join("\n\n", read.findings()));
        findings.setCaretPosition(0);
        if (!read.isDance()) {
            sheet = Optional.empty();
        }
        enabled();
    }

    private void song(Path file) {
        song = Optional.of(file);
        music.setText("Music: " + file.getFileName());
    }

    private void enabled() {
        toSong.setEnabled(sheet.isPresent());
        toClicks.setEnabled(sheet.isPresent());
    }

    /** Tells a sentence; an empty one takes the last away. */
    void told(String sentence) {
        told.setText(sentence);
    }

    /** Shows how far work has come, 0 to 1. */
    void at(String work, double done) {
        stop.setVisible(true);
        progress.setVisible(true);
        progress.setString(work);
        progress.setValue((int) Math.round(100 * done));
    }

    void idle() {
        stop.setVisible(false);
        progress.setVisible(false);
    }

    /** Files that are dropped: sheets and songs. */
    private final class Drop extends TransferHandler {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean canImport(TransferSupport support) {
            return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
        }

        @Override
        public boolean importData(TransferSupport support) {
            try {
                for (Object dropped :
                        (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor)) {
                    Path file = ((File) dropped).toPath();
                    if (file.toString().toLowerCase(Locale.ROOT).matches(".*\\.(mp3|wav|flac|ogg|aiff?)")) {
                        song(file);
                    } else {
                        sheet(file);
                    }
                }
                return true;
            } catch (UnsupportedFlavorException | IOException broken) {
                told("What was dropped could not be taken; choose the file with the button.");
                return false;
            }
        }
    }
}
