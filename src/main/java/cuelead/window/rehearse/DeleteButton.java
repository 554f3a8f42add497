package cuelead.window.rehearse;

import cuelead.window.frame.Controls;
import java.awt.BorderLayout;
import javax.swing.JButton;
import javax.swing.JPanel;

/** Deletes something when it is pressed a second time: the first time it asks. */
final class DeleteButton extends JPanel {
    private static final long serialVersionUID = 1L;

    private final String words;
    private final JButton button;
    private boolean isAsking;

    DeleteButton(String words, char mnemonic, Runnable deletes) {
        this.words = words;
        setLayout(new BorderLayout());
        button = Controls.button(words, mnemonic, () -> press(deletes));
        add(button);
    }

    private void press(Runnable deletes) {
        isAsking = !isAsking;
        if (isAsking) {
            button.setText("Really delete it?");
        } else {
            button.setText(words);
            deletes.run();
        }
    }

    /** Asks from the beginning. */
    void reset(boolean isEnabled) {
        isAsking = false;
        button.setText(words);
        button.setEnabled(isEnabled);
    }
}
