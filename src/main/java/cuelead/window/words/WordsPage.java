package cuelead.window.words;

import cuelead.steer.WordDesk.Phase;
import cuelead.window.frame.Choices;
import cuelead.window.frame.Controls;
import cuelead.window.frame.DeviceBox;
import cuelead.window.frame.FileChoice;
import cuelead.window.frame.Host;
import cuelead.window.frame.InHand;
import cuelead.window.frame.Page;
import cuelead.window.frame.Palette;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;

/** The page on which the words of a dance are heard and recorded. Used on the thread of events. */
public final class WordsPage implements Page {
    private static final float TOLD_SIZE = 1.25f;
    private static final String CAUTION =
            "Nothing that you record leaves this computer, and the microphone listens only"
                    + " while this page is in front. Clicks can be loud in an earphone: begin softly.";

    private final Host host;
    private final JPanel page = new JPanel(new BorderLayout(16, 0));
    private final WordList list = new WordList(
            word -> ask(words -> words.goTo(word)),
            () -> sound(WordsAtDesk::recordOrNot),
            () -> ask(WordsAtDesk::keep));
    private final BigWord word = new BigWord();
    private final JTextArea told = Controls.sentences("What is done with the word");
    private final TakeView take = new TakeView(
            seconds -> sound(words -> words.markAt(seconds)),
            laterSeconds -> sound(words -> words.nudge(laterSeconds)));
    private final JProgressBar level = new JProgressBar(0, WordsScene.FULL_LEVEL);
    private final JButton play = Controls.button("Play", 'P', () -> sound(WordsAtDesk::play));
    private final JButton record = Controls.button("Record", 'R', () -> sound(WordsAtDesk::recordOrNot));
    private final JButton keep = Controls.button("Keep", 'K', () -> ask(WordsAtDesk::keep));
    private final JButton takeBack = Controls.button("Undo", 'U', () -> ask(WordsAtDesk::takeBack));
    private final JButton row = Controls.button("All missing ones in a row", 'A', () -> sound(WordsAtDesk::rowOrNot));
    private final JButton earlier =
            Controls.button("Mark earlier", 'E', () -> sound(words -> words.nudge(-TakeView.STEP_SECONDS)));
    private final JButton later =
            Controls.button("Mark later", 'L', () -> sound(words -> words.nudge(TakeView.STEP_SECONDS)));
    private final JCheckBox uses = new JCheckBox("Call with my words");
    private final JTextArea caution = Controls.sentences("Of recordings");
    private final JLabel count = Controls.title(" ", 1.15);
    private Path folder;
    private Optional<WordsRoom> room = Optional.empty();
    private boolean isFront;
    private Optional<Phase> shownPhase = Optional.empty();

    /** With no word in hand. */
    public WordsPage(Host host) {
        this.host = host;
        folder = choices().ownWords().orElse(host.means().kept().resolve("words"));
        JPanel left = new JPanel(new BorderLayout(0, 8));
        left.add(count, BorderLayout.NORTH);
        left.add(list.view());
        page.add(left, BorderLayout.WEST);
        page.add(desk());
        page.setBorder(BorderFactory.createEmptyBorder(10, 28, 4, 24));
        look(host.palette());
        show(Optional.empty());
        host.inHand().listen(() -> {
            if (isFront) {
                open();
            }
        });
    }

    private JComponent desk() {
        told.setFont(told.getFont().deriveFont(TOLD_SIZE * told.getFont().getSize2D()));
        told.setMargin(new Insets(0, 0, 0, 0));
        caution.setMargin(new Insets(0, 0, 0, 0));
        level.setPreferredSize(new Dimension(160, 18));
        level.getAccessibleContext().setAccessibleName("How loud the microphone is");
        JPanel upper = new JPanel(new BorderLayout(0, 6));
        upper.add(word);
        JPanel below = column(
                told,
                Controls.wrapped(record, keep, play, row, takeBack),
                take,
                Controls.wrapped(earlier, later, new JLabel("Microphone level"), level),
                Controls.wrapped(new JLabel("Microphone"), microphone(), uses, otherFolder()),
                caution);
        upper.add(below, BorderLayout.SOUTH);
        return upper;
    }

    private static JPanel column(JComponent... parts) {
        JPanel column = new JPanel();
        column.setLayout(new BoxLayout(column, BoxLayout.Y_AXIS));
        for (JComponent part : parts) {
            part.setAlignmentX(Component.LEFT_ALIGNMENT);
            column.add(part);
            column.add(Box.createVerticalStrut(8));
        }
        return column;
    }

    private JComboBox<String> microphone() {
        JComboBox<String> box = new DeviceBox(
                "the usual microphone",
                host.means().devices()::microphones,
                choices().microphone(),
                name -> {
                    host.inHand().choose(choices().withMicrophone(name));
                    room.ifPresent(open -> open.choose(choices()));
                });
        box.getAccessibleContext().setAccessibleName("Microphone");
        return box;
    }

    private JButton otherFolder() {
        uses.setMnemonic('C');
        uses.addActionListener(pressed -> use(uses.isSelected()));
        return Controls.button(
                "Another folder\u2026",
                'F',
                () -> FileChoice.folder(page, "The folder of your words", folder, "Take this folder")
                        .ifPresent(this::take));
    }

    private void take(Path other) {
        folder = other;
        use(true);
        open();
    }

    private void use(boolean isUsed) {
        host.inHand().choose(choices().withOwnWords(isUsed ? Optional.of(folder) : Optional.empty()));
        uses.setSelected(isUsed);
    }

    private Choices choices() {
        return host.inHand().choices();
    }

    private void ask(WordsAtDesk.Order order) {
        room.ifPresent(open -> {
            host.tell("");
            open.ask(order);
        });
    }

    /** The same where something is heard. */
    private void sound(WordsAtDesk.Order order) {
        host.hushOthers(this);
        ask(order);
    }

    @Override
    public JComponent view() {
        return page;
    }

    @Override
    public void enter() {
        isFront = true;
        list.takeFocus();
        open();
    }

    /** The dance may be another one. */
    private void open() {
        InHand inHand = host.inHand();
        uses.setSelected(choices().ownWords().isPresent());
        caution.setText("Your words are kept in " + folder + ". " + CAUTION);
        Optional<Path> sheet = inHand.sheet().filter(file -> inHand.isDance());
        if (sheet.isEmpty()) {
            closeRoom();
            told.setText("There is no dance yet: choose a step sheet first.");
        } else if (room.filter(open -> open.isOf(sheet.get(), folder)).isEmpty()) {
            closeRoom();
            told.setText("Looking for the words of the dance\u2026");
            room = Optional.of(new WordsRoom(sheet.get(), folder, choices(), host.means(), new Watching()));
        }
    }

    /** What is shown is that of the room that is open now. */
    private final class Watching implements WordsRoom.Watcher {
        @Override
        public void shown(WordsScene scene) {
            SwingUtilities.invokeLater(() -> {
                if (isNow()) {
                    show(Optional.of(scene));
                }
            });
        }

        @Override
        public void told(String sentence) {
            SwingUtilities.invokeLater(() -> {
                if (isNow()) {
                    host.tell(sentence);
                    if (!record.isEnabled()) {
                        told.setText("");
                    }
                }
            });
        }

        @Override
        public void recorded(long words) {
            SwingUtilities.invokeLater(() -> {
                if (isNow() && words == 1) {
                    use(true);
                }
            });
        }

        private boolean isNow() {
            return room.filter(open -> open.isWatchedBy(this)).isPresent();
        }
    }

    private void show(Optional<WordsScene> scene) {
        scene.ifPresentOrElse(now -> list.show(now.words(), now.at()), list::clear);
        Optional<Phase> phase = scene.map(WordsScene::phase);
        boolean isTaking = phase.filter(now -> now == Phase.WAITING || now == Phase.COUNT_IN || now == Phase.TAKING)
                .isPresent();
        if (phase.equals(Optional.of(Phase.JUDGED)) && !phase.equals(shownPhase)) {
            list.takeFocus(); // where Enter keeps it
        }
        shownPhase = phase;
        boolean isRow = scene.filter(WordsScene::isRow).isPresent();
        boolean isMarked = scene.flatMap(WordsScene::mark).isPresent() && !isTaking;
        word.show(scene.map(WordsScene::word).orElse(""), phase.equals(Optional.of(Phase.TAKING)));
        told.setText(scene.map(WordsScene::told).orElse(""));
        level.setValue(scene.map(WordsScene::level).orElse(0));
        take.show(
                isTaking ? Optional.empty() : scene.flatMap(WordsScene::shape),
                isMarked
                        ? OptionalDouble.of(scene.get().mark().orElseThrow().centreSeconds())
                        : OptionalDouble.empty());
        record.setText(isTaking ? "Stop" : phase.equals(Optional.of(Phase.JUDGED)) ? "Record again" : "Record");
        row.setText(isRow ? "Stop the row" : "All missing ones in a row");
        record.setEnabled(scene.isPresent());
        play.setEnabled(scene.isPresent() && !isTaking);
        keep.setEnabled(scene.filter(now -> now.can().keep()).isPresent());
        takeBack.setEnabled(
                scene.filter(now -> now.can().takeBack() && !isTaking).isPresent());
        row.setEnabled(isRow
                || scene.filter(now -> now.recorded() < now.words().size()).isPresent());
        earlier.setEnabled(isMarked);
        later.setEnabled(isMarked);
        count.setText(scene.map(now -> now.recorded() + " of " + now.words().size() + " words recorded")
                .orElse("Words"));
    }

    /** The microphone listens no more. */
    @Override
    public void leave() {
        isFront = false;
        closeRoom();
    }

    private void closeRoom() {
        room.ifPresent(WordsRoom::close);
        room = Optional.empty();
        show(Optional.empty());
    }

    @Override
    public void fallSilent() {
        room.ifPresent(WordsRoom::fallSilent);
    }

    @Override
    public void close() {
        leave();
    }

    @Override
    public void look(Palette palette) {
        word.look(palette);
        take.look(palette);
    }
}
