package cuelead.window.start;

import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.steer.Caution;
import cuelead.time.Tempo;
import cuelead.window.frame.Controls;
import cuelead.window.frame.Drop;
import cuelead.window.frame.Host;
import cuelead.window.frame.InHand;
import cuelead.window.frame.Page;
import cuelead.window.frame.PastedSheets;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FileDialog;
import java.awt.Frame;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;

/** Where a dance and its music are chosen. Used on the thread of events. */
public final class StartPage implements Page, Drop.Taker {
    private final JPanel page = new JPanel(new GridBagLayout());
    private final JLabel dance = Controls.title("No step sheet yet: choose one, paste it, or drop it here.", 1.6);
    private final JLabel facts = Controls.title(" ", 1.15);
    private final JTextArea findings = Controls.sentences("What was found in the sheet");
    private final JLabel music = new JLabel();
    private final JSpinner tempo = new JSpinner(new SpinnerNumberModel(104, 40, 240, 1));
    private final JButton toSong = Controls.button("Practise with the song", 'P', this::practiseSong);
    private final JButton toClicks = Controls.button("Practise to clicks", 'C', this::practiseClicks);
    private final Host host;
    private final Consumer<Wish> practise;
    private final PastedSheets pasted;
    /** In the sheet; may be empty. */
    private String namedSong = "";

    private boolean isDance;

    /**
     * An empty page.
     *
     * @param practise is told what is to be practised
     */
    public StartPage(Host host, Consumer<Wish> practise) {
        this.host = host;
        this.practise = practise;
        pasted = new PastedSheets(host.means().kept().resolve("sheets"));
        tempo.setMaximumSize(tempo.getPreferredSize());
        tempo.getAccessibleContext().setAccessibleName("Beats a minute of the clicks");
        findings.setMargin(new Insets(8, 10, 8, 10));
        JButton chooseSheet = Controls.button(
                "Choose a step sheet\u2026",
                'S',
                () -> file("Choose a step sheet").ifPresent(this::sheet));
        JButton chooseSong = Controls.button(
                "Choose a song\u2026", 'O', () -> file("Choose a song").ifPresent(this::song));
        Drop drop = new Drop(this);
        JButton paste = Controls.button(
                "Paste a step sheet",
                'V',
                () -> drop.take(page.getToolkit().getSystemClipboard().getContents(this)));
        JButton hearDemo = Controls.button("Hear the demo", 'D', this::demo);
        hearDemo.setEnabled(host.means().demo().isPresent());
        row(0, dance, 0);
        row(1, facts, 0);
        row(2, Controls.line(chooseSheet, paste, hearDemo), 0);
        JScrollPane scroll = new JScrollPane(findings);
        scroll.setPreferredSize(new Dimension(400, 120));
        row(3, scroll, 1);
        row(4, music, 0);
        row(5, Controls.line(chooseSong), 0);
        row(6, Controls.line(toSong, toClicks, tempo, new JLabel("beats a minute")), 0);
        row(7, new JLabel("<html>" + String.join(" ", Caution.OF_A_CLASS) + "</html>"), 0);
        page.setTransferHandler(drop);
        findings.setTransferHandler(drop);
        enabled();
    }

    @Override
    public JComponent view() {
        return page;
    }

    @Override
    public void enter() {
        host.inHand().sheet().ifPresent(this::read);
        enabled();
    }

    private void demo() {
        host.means().demo().ifPresent(file -> {
            sheet(file);
            practise.accept(host.inHand().choices().wish(file, Optional.empty(), Optional.empty()));
        });
    }

    private void practiseSong() {
        InHand inHand = host.inHand();
        inHand.sheet().ifPresent(file -> practise.accept(inHand.choices().wish(file, inHand.song(), Optional.empty())));
    }

    private void practiseClicks() {
        InHand inHand = host.inHand();
        Tempo clicks = new Tempo(((Number) tempo.getValue()).doubleValue());
        inHand.sheet()
                .ifPresent(file -> practise.accept(inHand.choices().wish(file, Optional.empty(), Optional.of(clicks))));
    }

    private void row(int at, Component part, double grows) {
        GridBagConstraints place = new GridBagConstraints();
        place.gridy = at;
        place.weightx = 1;
        place.weighty = grows;
        place.fill = grows > 0 ? GridBagConstraints.BOTH : GridBagConstraints.HORIZONTAL;
        place.anchor = GridBagConstraints.LINE_START;
        place.insets = new Insets(7, 28, 7, 28);
        page.add(part, place);
    }

    private Optional<Path> file(String title) {
        FileDialog dialog = new FileDialog((Frame) SwingUtilities.getWindowAncestor(page), title, FileDialog.LOAD);
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
            host.tell(refused.getMessage());
        }
    }

    /** Takes a sheet. */
    @Override
    public void sheet(Path file) {
        host.tell("");
        host.inHand().takeSheet(file);
        read(file);
    }

    /** Reads it beside everything else. */
    private void read(Path file) {
        dance.setText(String.valueOf(file.getFileName()));
        facts.setText("Reading\u2026");
        findings.setText("");
        namedSong = "";
        isDance = false;
        enabled();
        new SwingWorker<ReadDance, Void>() {
            @Override
            protected ReadDance doInBackground() {
                return ReadDance.read(file);
            }

            @Override
            protected void done() {
                try {
                    if (host.inHand().sheet().equals(Optional.of(file))) {
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
        isDance = read.isDance();
        host.inHand().name(read.title());
        enabled();
    }

    @Override
    public void song(Path file) {
        host.inHand().takeSong(file);
        enabled();
    }

    private void enabled() {
        Optional<Path> song = host.inHand().song();
        toSong.setEnabled(isDance && (song.isPresent() || !namedSong.isEmpty()));
        music.setText("Music: "
                + song.map(file -> String.valueOf(file.getFileName()))
                        .orElse(namedSong.isEmpty() ? "none yet; choose a song, or drop it here" : namedSong));
        toClicks.setEnabled(isDance);
    }

    @Override
    public void told(String sentence) {
        host.tell(sentence);
    }
}
