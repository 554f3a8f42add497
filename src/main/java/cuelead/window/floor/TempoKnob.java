package cuelead.window.floor;

import cuelead.lesson.Pace;
import cuelead.steer.Ask;
import cuelead.steer.Order;
import cuelead.time.Tempo;
import java.awt.Insets;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;

/** How fast it goes: in beats a minute, or as it is taught, walking, steady and full. */
final class TempoKnob extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int SLOWEST = 20;
    private static final int FASTEST = 320;

    private final JSpinner beats = new JSpinner(new SpinnerNumberModel(104, SLOWEST, FASTEST, 1));
    private final transient Consumer<Ask> ask;
    private transient Optional<Tempo> full = Optional.empty();
    private boolean isShowing;

    TempoKnob(Consumer<Ask> ask) {
        this.ask = ask;
        setLayout(new BoxLayout(this, BoxLayout.X_AXIS));
        beats.setMaximumSize(beats.getPreferredSize());
        beats.getAccessibleContext().setAccessibleName("Beats a minute");
        beats.setToolTipText("Slower, faster: " + Order.SLOWER.key() + ", " + Order.FASTER.key());
        beats.addChangeListener(changed -> {
            if (!isShowing) {
                ask.accept(new Ask.AtTempo(new Tempo(((Number) beats.getValue()).doubleValue())));
            }
        });
        add(beats);
        add(new JLabel(" beats a minute "));
        share("Walk", Pace.WALK);
        share("Steady", Pace.STEADY);
        share("Full", Pace.FULL);
    }

    private void share(String words, Pace pace) {
        JButton button = new JButton(words);
        button.setMargin(new Insets(8, 8, 8, 8));
        button.getAccessibleContext().setAccessibleName(words + " tempo");
        button.addActionListener(pressed -> full.ifPresent(tempo -> ask.accept(new Ask.AtTempo(pace.at(tempo)))));
        add(button);
    }

    /** What full speed is from now on. */
    void full(Tempo tempo) {
        full = Optional.of(tempo);
        show(tempo.beatsPerMinute());
    }

    void show(double beatsPerMinute) {
        isShowing = true;
        beats.setValue((int) Math.round(Math.max(SLOWEST, Math.min(FASTEST, beatsPerMinute))));
        isShowing = false;
    }
}
