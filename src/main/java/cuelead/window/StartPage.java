package cuelead.window;

import cuelead.report.Refused;
import cuelead.steer.Caution;
import cuelead.time.Tempo;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FileDialog;
import java.awt.Font;
import java.awt.Frame;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.nio.file.Path;
import java.util.List;
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

/** Where a dance and its music are chosen. Used on the thread of events. */
final class StartPage extends JPanel implements Drop.Taker {
    private static final long serialVersionUID = 1L;

    private final JLabel dance = new JLabel("No step sheet yet: choose one, paste it, or drop it here.");
    private final JLabel facts = new JLabel(" ");
    private final JTextArea findings = new JTextArea();
    private final JLabel music = new JLabel();
    private final JSpinner tempo = new JSpinner(new SpinnerNumberModel(104, 40, 240, 1));
    private final JButton toSong = button("Practise with the song", 'P');
    private final JButton toClicks = button("Practise to clicks", 'C');
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JButton stop = button("Break it off", 'B');
    private final JTextArea told = new JTextArea();

    private final transient PastedSheets pasted;
    private transient Optional<Path> sheet = Optional.empty();
    private transient Optional<Path> song = Optional.empty();
    /** In the sheet; may be empty. */
    private String namedSong = "";

    /**
     * An empty page.
     *
     * @param demo     its sheet, where it is there
     * @param practise is told what is to be practised
     * @param breakOff makes an end of what is being made ready
     * @param pasted   where pasted sheets are kept
     */
    StartPage(Optional<Path> demo, Consumer<Chosen> practise, Runnable breakOff, PastedSheets pasted) {
        this.pasted = pasted;

        setLayout(new GridBagLayout());
        title(dance, 1.6f);
        title(facts, 1.15f);
        for (JTextArea text : List.of(findings, told)) {
            text.setEditable(false);
            text.setLineWrap(true);
            text.setWrapStyleWord(true);
            text.setOpaque(false);
        }
        findings.getAccessibleContext().setAccessibleName("What was found in the sheet");
        told.getAccessibleContext().setAccessibleName("What happened");
        tempo.setMaximumSize(tempo.getPreferredSize());
        tempo.getAccessibleContext().setAccessibleName("Beats a minute of the clicks");
        progress.setStringPainted(true);
        progress.setPreferredSize(new Dimension(420, 24));
        progress.setMaximumSize(progress.getPreferredSize());
        findings.setMargin(new Insets(8, 10, 8, 10));
        stop.addActionListener(pressed -> breakOff.run());
        idle();
        JButton chooseSheet = button("Choose a step sheet\u2026", 'S');
        JButton chooseSong = button("Choose a song\u2026", 'O');
        JButton paste = button("Paste a step sheet", 'V');
        Drop drop = new Drop(this);
        paste.addActionListener(
                pressed -> drop.take(getToolkit().getSystemClipboard().getContents(this)));
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
        row(2, line(chooseSheet, paste, hearDemo), 0);
        JScrollPane scroll = new JScrollPane(findings);
        scroll.setPreferredSize(new Dimension(400, 120));
        row(3, scroll, 1);
        row(4, music, 0);
        row(5, line(chooseSong), 0);
        row(6, line(toSong, toClicks, tempo, new JLabel("beats a minute")), 0);
        row(7, line(stop, progress), 0);
        row(8, told, 0);
        row(9, new JLabel("<html>" + String.join(" ", Caution.OF_A_CLASS) + "</html>"), 0);
        setTransferHandler(drop);
        findings.setTransferHandler(drop);
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

    @Override
    public void text(String text) {
        try {
            sheet(pasted.keep(text));
        } catch (Refused refused) {
            told(refused.getMessage());
        }
    }

    /** Takes a sheet, and reads it beside everything else. */
    @Override
    public void sheet(Path file) {
        sheet = Optional.of(file);
        dance.setText(String.valueOf(file.getFileName()));
        facts.setText("Reading\u2026");
        findings.setText("");
        told("");
        namedSong = "";
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
        namedSong = read.song();
        if (!read.isDance()) {
            sheet = Optional.empty();
        }
        enabled();
    }

    @Override
    public void song(Path file) {
        song = Optional.of(file);
        enabled();
    }

    private void enabled() {
        toSong.setEnabled(sheet.isPresent() && (song.isPresent() || !namedSong.isEmpty()));
        music.setText("Music: "
                + song.map(file -> String.valueOf(file.getFileName()))
                        .orElse(namedSong.isEmpty() ? "none yet; choose a song, or drop it here" : namedSong));
        toClicks.setEnabled(sheet.isPresent());
    }

    /** Tells a sentence; an empty one takes the last away. */
    @Override
    public void told(String sentence) {
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
}
