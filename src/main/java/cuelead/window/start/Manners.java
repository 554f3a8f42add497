package cuelead.window.start;

import cuelead.practice.CallsGo;
import cuelead.practice.Wish;
import cuelead.window.frame.Choices;
import cuelead.window.frame.DeviceBox;
import cuelead.window.frame.Host;
import cuelead.window.frame.Wrapping;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** How it is to be heard: where the music goes, where the calls go, which steps. */
final class Manners {
    private static final String USUAL = "the usual loudspeaker";
    private static final List<CallsGo> WAYS =
            List.of(CallsGo.WITH_THE_MUSIC, CallsGo.LEFT, CallsGo.RIGHT, CallsGo.APART);

    private final Host host;
    private final JPanel view = new JPanel(new Wrapping(10));
    private final JComboBox<String> calls = new JComboBox<>(new String[] {
        "with the music",
        "on the left, music on the right",
        "on the right, music on the left",
        "to a loudspeaker of their own"
    });
    private final JComboBox<String> ear;

    Manners(Host host) {
        this.host = host;
        JComboBox<String> music = devices(choices().device(), Choices::withDevice);
        ear = devices(choices().ear(), Choices::withEar);
        ear.setVisible(choices().callsGo() == CallsGo.APART);
        calls.setSelectedIndex(WAYS.indexOf(choices().callsGo()));
        calls.addActionListener(chosen -> {
            CallsGo go = WAYS.get(calls.getSelectedIndex());
            choose(now -> now.withCallsGo(go));
            ear.setVisible(go == CallsGo.APART);
            view.revalidate();
        });
        JCheckBox easier = new JCheckBox("Easier steps", choices().way() == Wish.Way.EASIER);
        easier.setMnemonic('R');
        easier.addActionListener(
                pressed -> choose(now -> now.withWay(easier.isSelected() ? Wish.Way.EASIER : Wish.Way.AS_WRITTEN)));
        label("Music goes to", 'M', music);
        label("Calls go", 'G', calls);
        view.add(ear);
        ear.getAccessibleContext().setAccessibleName("The loudspeaker of the calls");
        view.add(easier);
    }

    JComponent view() {
        return view;
    }

    private Choices choices() {
        return host.inHand().choices();
    }

    private void choose(UnaryOperator<Choices> change) {
        host.inHand().choose(change.apply(choices()));
    }

    private void label(String words, char mnemonic, JComponent of) {
        JLabel label = new JLabel(words);
        label.setDisplayedMnemonic(mnemonic);
        label.setLabelFor(of);
        of.getAccessibleContext().setAccessibleName(words);
        view.add(label);
        view.add(of);
    }

    private JComboBox<String> devices(Optional<String> now, BiFunction<Choices, Optional<String>, Choices> change) {
        return new DeviceBox(
                USUAL, host.means().devices()::names, now, name -> choose(choices -> change.apply(choices, name)));
    }
}
