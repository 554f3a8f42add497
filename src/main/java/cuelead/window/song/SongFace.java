package cuelead.window.song;

import cuelead.window.frame.Controls;
import cuelead.window.frame.Drop;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;

/** What is seen of the page: the rows, what was found out, and the buttons. Used on the thread of events. */
final class SongFace {
    private static final int FACTS_WIDTH = 280;

    private final JPanel page = new JPanel(new BorderLayout(14, 6));
    private final SongView rows = new SongView();
    private final JLabel name = Controls.title(" ", 1.25);
    private final JLabel where = new JLabel(" ");
    private final JTextArea facts = Controls.sentences("What was found out about the song");
    private final JButton find;
    private final SongActions actions;

    /** What can be wanted, but for what is an order. */
    interface Wanted {
        void chooseSong();

        void findBeats();

        /** Clicks or calls are wanted, or no longer. */
        void soundOtherwise();
    }

    SongFace(Consumer<SongOrder> asked, Wanted wanted, Drop.Taker taker) {
        find = Controls.button("Find the beats", 'F', wanted::findBeats);
        actions = new SongActions(asked, wanted::soundOtherwise);
        JButton choose = Controls.button("Choose a song\u2026", 'O', wanted::chooseSong);
        JComponent top = Controls.line(name, Box.createHorizontalGlue(), choose, find);
        name.setMinimumSize(new Dimension(40, 10));
        JScrollPane factsScroll = bare(facts);
        factsScroll.setPreferredSize(new Dimension(FACTS_WIDTH, 100));
        JPanel below = new JPanel(new BorderLayout(0, 6));
        below.add(where, BorderLayout.NORTH);
        below.add(actions);
        page.add(top, BorderLayout.NORTH);
        page.add(bare(rows));
        page.add(factsScroll, BorderLayout.EAST);
        page.add(below, BorderLayout.SOUTH);
        page.setBorder(BorderFactory.createEmptyBorder(6, 28, 2, 28));
        Drop drop = new Drop(taker);
        page.setTransferHandler(drop);
        facts.setTransferHandler(drop);
    }

    private static JScrollPane bare(JComponent inside) {
        JScrollPane scroll = new JScrollPane(inside);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        return scroll;
    }

    JComponent page() {
        return page;
    }

    SongView rows() {
        return rows;
    }

    SongActions actions() {
        return actions;
    }

    void name(String file) {
        name.setText(file);
    }

    /** A sentence about what is selected, or what to do; also read aloud where that is wanted. */
    void where(String sentence) {
        where.setText(sentence.isEmpty() ? " " : sentence);
        rows.getAccessibleContext().setAccessibleDescription(sentence);
    }

    /** @param isWanted whether one is on the stand, known or not */
    void show(Optional<SongInHand> song, boolean isWanted) {
        song.ifPresentOrElse(
                now -> {
                    rows.show(Rows.of(now.hearing(), now.timeline()));
                    facts.setText(String.join("\n\n", SongFactLines.of(now)));
                },
                () -> facts.setText(
                        isWanted
                                ? "The beats of this song are not known yet. Where they are not being found already,"
                                        + " press \"Find the beats\"."
                                : "Choose a song, or drop it here: its beats are found, and can be put right by ear."));
        facts.setCaretPosition(0);
        find.setEnabled(isWanted);
    }

    /** What can be done now. */
    void enable(Optional<SongInHand> song) {
        for (SongOrder order : SongOrder.values()) {
            actions.enable(order, song.isPresent());
        }
        boolean isDance = song.flatMap(SongInHand::dance).isPresent();
        actions.enable(SongOrder.BEGINS_HERE, isDance);
        actions.enable(SongOrder.UNDO, song.filter(SongInHand::canTakeBack).isPresent());
        actions.enable(SongOrder.REDO, song.filter(SongInHand::canDoAgain).isPresent());
        actions.enableCalls(isDance);
    }
}
