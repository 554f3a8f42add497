package cuelead.window.tracks;

import cuelead.lesson.Pace;
import cuelead.time.Tempo;
import cuelead.window.frame.Controls;
import cuelead.window.frame.Wrapping;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;

/** How fast: any of the usual paces, and a tempo of one's own. */
final class Paces {
    private final JCheckBox walk = new JCheckBox("Walk (65 %)");
    private final JCheckBox steady = new JCheckBox("Steady (80 %)", true);
    private final JCheckBox full = new JCheckBox("Full");
    private final JCheckBox own = new JCheckBox("Beats a minute:");
    private final JSpinner tempo = new JSpinner(new SpinnerNumberModel(90, 30, 240, 1));
    private final JPanel view = new JPanel(new Wrapping(12));

    /** @param changed is called when others are chosen */
    Paces(Runnable changed) {
        walk.setMnemonic('K');
        steady.setMnemonic('T');
        full.setMnemonic('U');
        own.setMnemonic('M');
        tempo.getAccessibleContext().setAccessibleName("Beats a minute of your own");
        for (JCheckBox box : List.of(walk, steady, full, own)) {
            box.addActionListener(pressed -> changed.run());
            view.add(box);
        }
        view.add(tempo);
        Controls.takenAsTyped(tempo);
        tempo.addChangeListener(turned -> {
            own.setSelected(true);
            changed.run();
        });
    }

    JComponent view() {
        return view;
    }

    /** Those chosen, the slowest usual one first. */
    List<Pace> chosen() {
        List<Pace> all = new ArrayList<>();
        if (walk.isSelected()) {
            all.add(Pace.WALK);
        }
        if (steady.isSelected()) {
            all.add(Pace.STEADY);
        }
        if (full.isSelected()) {
            all.add(Pace.FULL);
        }
        if (own.isSelected()) {
            all.add(new Pace.Beats(new Tempo(((Number) tempo.getValue()).doubleValue())));
        }
        return all;
    }
}
