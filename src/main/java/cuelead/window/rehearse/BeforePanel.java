package cuelead.window.rehearse;

import cuelead.rehearse.Progress;
import cuelead.rehearse.Prompts;
import cuelead.window.frame.Controls;
import cuelead.window.frame.DeviceBox;
import cuelead.window.frame.Host;
import cuelead.window.frame.Palette;
import cuelead.window.frame.Wrapping;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;

/** What is chosen before a rehearsal, the takes that are there, and how rehearsals went over the days. */
final class BeforePanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final List<String> AMOUNTS_TOLD =
            List.of("for every call", "fewer from wall to wall", "only for what went wrong the last times", "none");
    private static final String ADVICE = "Put headphones on and call into the microphone while the music plays. What to"
            + " call is shown a beat ahead, and afterwards you see which calls were early, late or missed. Headphones keep"
            + " the music out of the microphone; begin softly, for long loud sound harms hearing.";

    private static final List<Prompts.Amount> AMOUNTS = List.of(Prompts.Amount.values());

    private final JComboBox<String> amount = new JComboBox<>(AMOUNTS_TOLD.toArray(String[]::new));
    private final JCheckBox speaksHard = new JCheckBox("A voice reminds me of hard calls");
    private final JCheckBox measures = new JCheckBox("Measure anew how late the microphone is");
    private final JTextArea where = Controls.sentences("Where takes are kept");
    private final DefaultListModel<Path> takes = new DefaultListModel<>();
    private final JList<Path> list = new JList<>(takes);
    private final ProgressView progress = new ProgressView();
    private final JButton begin;
    private final JButton open;
    private final DeleteButton delete;

    /** What its buttons do. */
    interface Deeds {
        void rehearse();

        void open(Path take);

        void delete(Path take);
    }

    BeforePanel(Host host, Deeds deeds) {
        super(new BorderLayout(28, 0));
        begin = Controls.button("Rehearse", 'R', deeds::rehearse);
        open = Controls.button("Open this take", 'O', () -> chosen(deeds::open));
        delete = new DeleteButton("Delete this take", 'D', () -> chosen(deeds::delete));
        amount.setSelectedIndex(AMOUNTS.indexOf(Prompts.Amount.FEWER));
        amount.getAccessibleContext().setAccessibleName("Prompts");
        speaksHard.setMnemonic('V');
        measures.setMnemonic('M');
        JTextArea advice = Controls.sentences("How to rehearse");
        advice.setText(ADVICE);
        advice.setMargin(new Insets(0, 0, 0, 0));
        where.setMargin(new Insets(0, 0, 0, 0));
        DeviceBox microphone = new DeviceBox(
                "the usual microphone",
                host.means().devices()::microphones,
                host.inHand().choices().microphone(),
                name -> host.inHand().choose(host.inHand().choices().withMicrophone(name)));
        microphone.getAccessibleContext().setAccessibleName("Microphone");
        JPanel left = column(
                Controls.title("Rehearse your own calling", 1.4),
                advice,
                line(new JLabel("Microphone"), microphone),
                line(new JLabel("Prompts"), amount),
                speaksHard,
                measures,
                line(begin),
                where);
        JPanel top = new JPanel(new BorderLayout());
        top.add(left, BorderLayout.NORTH);
        add(top);
        add(right(), BorderLayout.EAST);
        setBorder(BorderFactory.createEmptyBorder(18, 28, 8, 28));
    }

    private JComponent right() {
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new TakeNames());
        list.getAccessibleContext().setAccessibleName("Takes");
        list.addListSelectionListener(event -> choosable());
        JPanel right = new JPanel(new BorderLayout(0, 8));
        right.add(Controls.title("Your takes of this dance", 1.15), BorderLayout.NORTH);
        right.add(new JScrollPane(list));
        JPanel below = column(line(open, delete), progress);
        right.add(below, BorderLayout.SOUTH);
        right.setPreferredSize(new Dimension(430, 300));
        choosable();
        return right;
    }

    private static JPanel column(JComponent... parts) {
        JPanel column = new JPanel();
        column.setLayout(new BoxLayout(column, BoxLayout.Y_AXIS));
        for (JComponent part : parts) {
            part.setAlignmentX(Component.LEFT_ALIGNMENT);
            column.add(part);
            column.add(Box.createVerticalStrut(10));
        }
        return column;
    }

    private static JPanel line(JComponent... parts) {
        JPanel line = new JPanel(new Wrapping(10));
        List.of(parts).forEach(line::add);
        return line;
    }

    private void chosen(Consumer<Path> deed) {
        Optional.ofNullable(list.getSelectedValue()).ifPresent(deed);
    }

    private void choosable() {
        boolean isChosen = list.getSelectedValue() != null;
        open.setEnabled(isChosen);
        delete.reset(isChosen);
    }

    /** The takes that are there, the latest first, and how rehearsals went. */
    void show(List<Path> there, Progress now, Path folder) {
        takes.clear();
        takes.addAll(there);
        if (!there.isEmpty()) {
            list.setSelectedIndex(0);
        }
        progress.show(now);
        where.setText("Takes are kept in " + folder + " and nowhere else; nothing you say leaves this computer. Delete"
                + " them whenever you like.");
        choosable();
    }

    /** Whether there is a dance. */
    void ready(boolean isDance) {
        begin.setEnabled(isDance);
        if (!isDance) {
            where.setText("There is no dance yet: choose a step sheet first.");
        }
    }

    Prompts.Amount amount() {
        return AMOUNTS.get(amount.getSelectedIndex());
    }

    PreparedDance.HardCalls hardCalls() {
        return speaksHard.isSelected() ? PreparedDance.HardCalls.SPOKEN : PreparedDance.HardCalls.SILENT;
    }

    boolean measures() {
        return measures.isSelected();
    }

    void focus() {
        begin.requestFocusInWindow();
    }

    void look(Palette palette) {
        progress.look(palette);
    }
}
