package cuelead.window.start;

import cuelead.report.Refused;
import cuelead.steer.Caution;
import cuelead.time.Tempo;
import cuelead.window.frame.Controls;
import cuelead.window.frame.Course;
import cuelead.window.frame.Drop;
import cuelead.window.frame.FileChoice;
import cuelead.window.frame.Host;
import cuelead.window.frame.InHand;
import cuelead.window.frame.Page;
import cuelead.window.frame.PageName;
import cuelead.window.frame.PastedSheets;
import cuelead.window.frame.Recent;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingWorker;

/** Where a dance and its music are chosen. Used on the thread of events. */
public final class StartPage implements Page, Drop.Taker {
    private static final int SLOWEST_CLICKS = 40;
    private static final int FASTEST_CLICKS = 240;

    private final JPanel page = new JPanel(new BorderLayout());
    private final JPanel chosen = new JPanel(new GridBagLayout());
    private final JLabel dance = Controls.title("No step sheet yet: choose one, paste it, or drop it here.", 1.6);
    private final JLabel facts = Controls.title(" ", 1.15);
    private final JTextArea findings = Controls.sentences("What was found in the sheet");
    private final JLabel music = new JLabel();
    private final JSpinner clicks = new JSpinner(new SpinnerNumberModel(104, SLOWEST_CLICKS, FASTEST_CLICKS, 1));
    private final JButton toSong;
    private final JButton toClicks;
    private final JButton walkthrough;
    private final JButton seeSheet;
    private final JButton seeSong;
    private final RecentDances recents;
    private final Host host;
    private final PastedSheets pasted;

    /**
     * An empty page.
     *
     * @param lately the dances that lay on the stand, the last one first
     */
    public StartPage(Host host, Supplier<List<Recent>> lately) {
        this.host = host;
        Path sheets = host.means().sheets();
        pasted = new PastedSheets(sheets);
        recents = new RecentDances(lately, sheets, this::take);
        toSong = Controls.button("Practise with the song", 'P', () -> host.practise(Course.TO_THE_SONG));
        toClicks = Controls.button("Practise to clicks", 'C', () -> host.practise(Course.TO_CLICKS));
        walkthrough = Controls.button("Walk it through", 'W', () -> host.practise(Course.WALKTHROUGH));
        seeSheet = Controls.button("See the sheet", 'E', () -> host.turnTo(PageName.SHEET));
        seeSong = Controls.button("See the song", 'N', () -> host.turnTo(PageName.SONG));
        clicks.setMaximumSize(clicks.getPreferredSize());
        clicks.setValue((int) Math.round(host.inHand().choices().clicks().beatsPerMinute()));
        clicks.getAccessibleContext().setAccessibleName("Beats a minute of the clicks");
        Controls.takenAsTyped(clicks);
        clicks.addChangeListener(changed -> host.inHand()
                .choose(host.inHand().choices().withClicks(new Tempo(((Number) clicks.getValue()).doubleValue()))));
        findings.setMargin(new Insets(8, 10, 8, 10));
        Drop drop = new Drop(this);
        JButton hearDemo = Controls.button("Hear the demo", 'D', this::demo);
        hearDemo.setEnabled(host.means().demo().isPresent());
        row(0, dance, 0);
        row(1, facts, 0);
        row(
                2,
                Controls.wrapped(
                        Controls.button(
                                "Choose a step sheet\u2026",
                                'S',
                                () -> FileChoice.sheet(page, host).ifPresent(this::sheet)),
                        Controls.button(
                                "Paste a step sheet",
                                'V',
                                () -> drop.take(
                                        page.getToolkit().getSystemClipboard().getContents(this))),
                        hearDemo,
                        seeSheet),
                0);
        JScrollPane scroll = new JScrollPane(findings);
        scroll.setPreferredSize(new Dimension(300, 90));
        row(3, scroll, 1);
        row(4, music, 0);
        row(
                5,
                Controls.wrapped(
                        Controls.button(
                                "Choose a song\u2026",
                                'O',
                                () -> FileChoice.song(page, host).ifPresent(this::song)),
                        seeSong),
                0);
        row(6, Controls.wrapped(toSong, toClicks, clicks, new JLabel("beats a minute"), walkthrough), 0);
        row(7, new Manners(host).view(), 0);
        JTextArea cautions = Controls.sentences("Cautions");
        cautions.setText(String.join(" ", Caution.OF_A_CLASS));
        row(8, cautions, 0);
        page.add(chosen);
        page.add(recents.view(), BorderLayout.EAST);
        page.setBorder(BorderFactory.createEmptyBorder(4, 12, 0, 16));
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
        recents.refresh();
        enabled();
    }

    private void demo() {
        host.means().demo().ifPresent(file -> {
            host.inHand().takeSheet(file);
            read(file, read -> host.practise(Course.TO_THE_SONG));
        });
    }

    private void row(int at, Component part, double grows) {
        GridBagConstraints place = new GridBagConstraints();
        place.gridy = at;
        place.weightx = 1;
        place.weighty = grows;
        place.fill = grows > 0 ? GridBagConstraints.BOTH : GridBagConstraints.HORIZONTAL;
        place.anchor = GridBagConstraints.LINE_START;
        place.insets = new Insets(6, 16, 6, 16);
        chosen.add(part, place);
    }

    private void take(Recent recent) {
        sheet(recent.sheet());
        recent.song().ifPresent(this::song);
    }

    @Override
    public void text(String text) {
        try {
            sheet(pasted.keep(text));
        } catch (Refused refused) {
            host.tell(refused.getMessage());
        }
    }

    @Override
    public void sheet(Path file) {
        host.tell("");
        host.inHand().takeSheet(file);
        read(file, read -> read.tempo().ifPresent(this::clicksAt));
    }

    /** A new sheet brings its own tempo, which the user may change. */
    private void clicksAt(double beatsPerMinute) {
        clicks.setValue((int) Math.max(SLOWEST_CLICKS, Math.min(FASTEST_CLICKS, Math.round(beatsPerMinute))));
    }

    private void read(Path file) {
        read(file, read -> {});
    }

    /** Reads it beside everything else. */
    private void read(Path file, Consumer<ReadDance> then) {
        dance.setText(host.inHand().title());
        facts.setText("Reading\u2026");
        findings.setText("");
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
                        ReadDance read = get();
                        show(read);
                        then.accept(read);
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
        host.inHand().understood(read.title(), read.song(), read.isDance());
        recents.refresh();
        enabled();
    }

    @Override
    public void song(Path file) {
        host.inHand().takeSong(file);
        recents.refresh();
        enabled();
    }

    private void enabled() {
        InHand inHand = host.inHand();
        String named = inHand.namedSong();
        toSong.setEnabled(inHand.isDance() && inHand.hasSong());
        toClicks.setEnabled(inHand.isDance());
        walkthrough.setEnabled(inHand.isDance());
        seeSheet.setVisible(host.has(PageName.SHEET));
        seeSong.setVisible(host.has(PageName.SONG));
        seeSheet.setEnabled(inHand.sheet().isPresent());
        seeSong.setEnabled(inHand.hasSong());
        music.setText("Music: "
                + inHand.song()
                        .map(file -> String.valueOf(file.getFileName()))
                        .orElse(named.isEmpty() ? "none yet; choose a song, or drop it here" : named));
    }

    @Override
    public void told(String sentence) {
        host.tell(sentence);
    }
}
