package cuelead.window.rehearse;

import cuelead.studio.RehearsalScene;
import cuelead.studio.RehearsalView.Order;
import cuelead.studio.RehearsalView.Question;
import cuelead.window.frame.Controls;
import cuelead.window.frame.Palette;
import cuelead.window.frame.Wrapping;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JTextArea;
import javax.swing.Timer;

/** A rehearsal while it goes on: what is asked, what to call, and how loud the microphone is. */
final class DuringPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int LEVEL_MILLIS = 70;
    /** Levels are shown from 60 dB below full scale on. */
    private static final int DECIBELS = 60;

    private static final float TOLD_SIZE = 1.6f;

    private final PromptView prompts = new PromptView();
    private final JPanel controls = new JPanel(new BorderLayout(0, 14));
    private final JTextArea asked = Controls.sentences("What is asked");
    private final JProgressBar level = new JProgressBar(0, DECIBELS);
    private final AtomicInteger heardDb = new AtomicInteger();
    private final Timer timer = new Timer(LEVEL_MILLIS, tick -> showLevel());
    private final JButton goOn;
    private final JButton skip;
    private final JButton stop;

    DuringPanel(Consumer<Order> orders) {
        super(new BorderLayout(0, 12));
        goOn = Controls.button("Play the clicks now", 'N', () -> answer(orders, Order.GO_ON));
        skip = Controls.button("Go on without", 'G', () -> answer(orders, Order.SKIP));
        stop = Controls.button("Stop", 'S', () -> answer(orders, Order.STOP));
        asked.setMargin(new Insets(0, 0, 0, 0));
        asked.setFont(asked.getFont().deriveFont(TOLD_SIZE * asked.getFont().getSize2D()));
        level.getAccessibleContext().setAccessibleName("How loud the microphone is");
        level.setPreferredSize(new Dimension(260, 20));
        JPanel buttons = new JPanel(new Wrapping(12));
        buttons.add(goOn);
        buttons.add(skip);
        buttons.add(stop);
        buttons.add(new JLabel("Microphone"));
        buttons.add(level);
        controls.add(asked);
        controls.add(buttons, BorderLayout.SOUTH);
        add(prompts);
        put(BorderLayout.NORTH);
        setBorder(BorderFactory.createEmptyBorder(12, 28, 8, 28));
    }

    /** What is asked stands above; while the music plays, what to call does. */
    private void put(String place) {
        remove(controls);
        add(controls, place);
        revalidate();
        repaint();
    }

    private void answer(Consumer<Order> orders, Order order) {
        prompts.requestFocusInWindow(); // else "Stop" has it next, and a second Enter breaks off
        goOn.setEnabled(false);
        skip.setEnabled(false);
        orders.accept(order);
    }

    /** Before anything is asked. */
    void begin() {
        prompts.show(Optional.empty());
        put(BorderLayout.NORTH);
        asked.setVisible(true);
        asked.setText("Opening microphone and headphones\u2026");
        goOn.setVisible(false);
        skip.setVisible(false);
        stop.setText("Stop");
        heardDb.set(0);
        timer.start();
    }

    void end() {
        timer.stop();
    }

    void ask(Question question) {
        asked.setText(
                switch (question) {
                    case CLICKS ->
                        "How late is your microphone? Hold one side of the headphones close to it: eight soft clicks are"
                                + " played.";
                    case CLICKS_AGAIN ->
                        "The eight clicks were not heard evenly. Hold one side of the headphones close to the microphone, and"
                                + " be quiet meanwhile.";
                    case BEGIN -> "Put your headphones on. The microphone should move the bar when you speak.";
                });
        goOn.setText(
                switch (question) {
                    case CLICKS -> "Play the clicks now";
                    case CLICKS_AGAIN -> "Play them again now";
                    case BEGIN -> "Begin now";
                });
        goOn.setVisible(true);
        goOn.setEnabled(true);
        skip.setVisible(question != Question.BEGIN);
        skip.setEnabled(true);
        goOn.requestFocusInWindow();
    }

    /** On any thread. */
    void show(RehearsalScene scene) {
        prompts.show(Optional.of(scene));
    }

    /** The music has begun. */
    void playing() {
        goOn.setVisible(false);
        skip.setVisible(false);
        asked.setVisible(false);
        stop.setText("Stop and keep");
        put(BorderLayout.SOUTH);
        prompts.requestFocusInWindow();
    }

    /** On any thread; the highest sample since the last time. */
    void heard(float peak) {
        int db = peak > 0 ? (int) Math.round(DECIBELS + 20 * Math.log10(peak)) : 0;
        heardDb.accumulateAndGet(Math.max(0, Math.min(DECIBELS, db)), Math::max);
    }

    private void showLevel() {
        int fallen = Math.max(0, level.getValue() - 3);
        level.setValue(Math.max(fallen, heardDb.getAndSet(0)));
    }

    void look(Palette palette) {
        prompts.look(palette);
    }
}
