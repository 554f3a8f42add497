package cuelead.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

import javax.swing.JFormattedTextField;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import org.junit.jupiter.api.Test;

class ControlsTest {
    @Test
    void aNumberIsTakenAsSoonAsItIsTyped() {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(104, 40, 240, 1));
        Controls.takenAsTyped(spinner);
        JFormattedTextField field = ((JSpinner.DefaultEditor) spinner.getEditor()).getTextField();
        field.setText("72");
        assertEquals(72, spinner.getValue());
        field.setText("7"); // on the way to another one
        assertEquals(72, spinner.getValue());
    }
}
