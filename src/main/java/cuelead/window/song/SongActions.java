package cuelead.window.song;

import cuelead.window.frame.Controls;
import cuelead.window.frame.Wrapping;
import java.awt.Insets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;

/** The buttons below the rows. Used on the thread of events. */
final class SongActions extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int GAP = 6;

    private final Map<SongOrder, JButton> buttons = new EnumMap<>(SongOrder.class);
    private final JCheckBox clicks = new JCheckBox("Clicks", true);
    private final JCheckBox calls = new JCheckBox("Calls", false);

    /**
     * All of them.
     *
     * @param asked   is given what a button orders
     * @param sounded is called when clicks or calls are wanted or no longer
     */
    SongActions(Consumer<SongOrder> asked, Runnable sounded) {
        super(new Wrapping(GAP));
        button(SongOrder.PLAY, asked);
        check(clicks, 'C', "A click on every beat, a high one on 1", sounded);
        check(calls, 'L', "The calls of the dance", sounded);
        List.of(SongOrder.values()).stream()
                .filter(order -> order != SongOrder.PLAY)
                .forEach(order -> button(order, asked));
    }

    private void button(SongOrder order, Consumer<SongOrder> asked) {
        JButton button = Controls.button(order.words(), order.mnemonic(), () -> asked.accept(order));
        button.setMargin(new Insets(7, 10, 7, 10));
        button.setToolTipText(order.tip());
        buttons.put(order, button);
        add(button);
    }

    private void check(JCheckBox box, char mnemonic, String tip, Runnable changed) {
        box.setMnemonic(mnemonic);
        box.setToolTipText(tip);
        box.addActionListener(pressed -> changed.run());
        add(box);
    }

    boolean isClicked() {
        return clicks.isSelected();
    }

    boolean isCalled() {
        return calls.isSelected() && calls.isEnabled();
    }

    void enable(SongOrder order, boolean isPossible) {
        buttons.get(order).setEnabled(isPossible);
    }

    void enableCalls(boolean isPossible) {
        calls.setEnabled(isPossible);
    }

    /** What pressing it does now. */
    void name(SongOrder order, String words) {
        buttons.get(order).setText(words);
        buttons.get(order).setMnemonic(order.mnemonic());
    }
}
