package cuelead.window.frame;

import java.awt.Component;
import java.awt.Font;
import java.awt.Insets;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.text.DefaultFormatter;

/** The usual controls, large enough for a hand that is in a hurry. */
public final class Controls {
    private static final int BETWEEN = 12;

    private Controls() {}

    /**
     * A button.
     *
     * @param mnemonic with Alt presses it
     */
    public static JButton button(String words, char mnemonic, Runnable pressed) {
        JButton button = new JButton(words);
        button.setMnemonic(mnemonic);
        button.setMargin(new Insets(8, 16, 8, 16));
        button.addActionListener(event -> pressed.run());
        return button;
    }

    /** Bold words, so much larger than usual. */
    public static JLabel title(String words, double larger) {
        JLabel label = new JLabel(words);
        Font font = label.getFont();
        label.setFont(font.deriveFont(Font.BOLD, (float) (font.getSize2D() * larger)));
        return label;
    }

    /** A number is taken as soon as it is typed: a key that presses a button leaves the field where it is. */
    public static void takenAsTyped(JSpinner spinner) {
        JFormattedTextField field = ((JSpinner.DefaultEditor) spinner.getEditor()).getTextField();
        ((DefaultFormatter) field.getFormatter()).setCommitsOnValidEdit(true);
    }

    /** Parts side by side. */
    public static JComponent line(Component... parts) {
        JPanel line = new JPanel();
        line.setLayout(new BoxLayout(line, BoxLayout.X_AXIS));
        for (Component part : parts) {
            line.add(part);
            line.add(Box.createHorizontalStrut(BETWEEN));
        }
        return line;
    }

    /** Parts side by side, on as many lines as they need. */
    public static JComponent wrapped(Component... parts) {
        JPanel lines = new JPanel(new Wrapping(BETWEEN));
        for (Component part : parts) {
            lines.add(part);
        }
        return lines;
    }

    /** Sentences that are read only. */
    public static JTextArea sentences(String accessibleName) {
        JTextArea text = new JTextArea();
        text.setEditable(false);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setOpaque(false);
        text.setMargin(new Insets(0, 0, 0, 0));
        text.getAccessibleContext().setAccessibleName(accessibleName);
        return text;
    }
}
