package cuelead.window.floor;

import cuelead.steer.Ask;
import cuelead.steer.Order;
import java.awt.Insets;
import java.util.function.Consumer;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;

/** Something that goes down and up, with what it is now between the two. */
final class Knob extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int PADDING = 8;

    private final JLabel value;
    private final String name;

    /** @param widest the longest value that it can show, so that nothing moves when it changes */
    Knob(String name, String widest, Order less, Order more, Consumer<Ask> ask) {
        this.name = name;
        setLayout(new BoxLayout(this, BoxLayout.X_AXIS));
        value = new JLabel(name + " " + widest, SwingConstants.CENTER);
        value.setMinimumSize(value.getPreferredSize());
        value.setPreferredSize(value.getPreferredSize());
        value.setMaximumSize(value.getPreferredSize());
        value.setText(name);
        add(button("\u2212", name + ", less", less, ask));
        add(value);
        add(button("+", name + ", more", more, ask));
    }

    private static JButton button(String sign, String does, Order order, Consumer<Ask> ask) {
        JButton button = pressed(sign, does, order);
        button.addActionListener(event -> ask.accept(order));
        return button;
    }

    /** A button for an order that has a key, which therefore need not be reached by others. */
    static JButton pressed(String words, String does, Order order) {
        JButton button = new JButton(words);
        button.setFocusable(false);
        button.setMargin(new Insets(PADDING, PADDING + 2, PADDING, PADDING + 2));
        button.getAccessibleContext().setAccessibleName(does);
        button.setToolTipText(does + ": " + order.key());
        return button;
    }

    void show(String now) {
        value.setText(name + " " + now);
    }
}
