package cuelead.window.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.steer.Ask;
import cuelead.steer.KeyHelp;
import cuelead.steer.Order;
import cuelead.time.Tempo;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JSpinner;
import org.junit.jupiter.api.Test;

class FloorControlsTest {
    private final List<Ask> asked = new ArrayList<>();
    private final FloorControls controls = new FloorControls(asked::add);

    private static void buttons(Container within, List<AbstractButton> into) {
        for (Component part : within.getComponents()) {
            if (part instanceof AbstractButton button) {
                into.add(button);
            } else if (part instanceof Container container && !isOfItsOwn(part)) {
                buttons(container, into);
            }
        }
    }

    /** Their arrows are parts of them and have no names. */
    private static boolean isOfItsOwn(Component part) {
        return part instanceof JSpinner || part instanceof JComboBox<?>;
    }

    private List<AbstractButton> buttons() {
        List<AbstractButton> all = new ArrayList<>();
        buttons(controls, all);
        return all;
    }

    /** Each of them gives one order that has a key, and the key sheet tells it. */
    @Test
    void whatAHandCanAskAKeyCanToo() {
        Set<Order> told = KeyHelp.PRACTICE.lines().stream()
                .flatMap(line -> line.orders().stream())
                .collect(Collectors.toSet());
        for (Order order : controls.orders()) {
            assertTrue(told.contains(order), order + " has no key");
        }
        EnumSet<Order> withoutButton = EnumSet.allOf(Order.class);
        withoutButton.removeAll(controls.orders());
        buttons().stream()
                .filter(button ->
                        button.getText().equals("+") || button.getText().equals("\u2212"))
                .forEach(AbstractButton::doClick);
        asked.stream().filter(Order.class::isInstance).forEach(withoutButton::remove);
        // the mouse has a field for the tempo and the room for walls; the display's delay is for keys
        assertEquals(
                EnumSet.of(Order.SLOWER, Order.FASTER, Order.SOONER, Order.LATER, Order.WALL_AGAIN), withoutButton);
    }

    @Test
    void allButtonsTellWhatTheyDo() {
        for (AbstractButton button : buttons()) {
            assertFalse(button.getAccessibleContext().getAccessibleName().isBlank(), button.getText());
        }
    }

    @Test
    void theTempoIsAskedForInBeatsAMinute() {
        controls.begin(new Tempo(120), List.of());
        asked.clear();
        buttons().stream().filter(button -> button.getText().equals("Steady")).forEach(AbstractButton::doClick);
        buttons().stream().filter(button -> button.getText().equals("Full")).forEach(AbstractButton::doClick);
        assertEquals(List.of(new Ask.AtTempo(new Tempo(96)), new Ask.AtTempo(new Tempo(120))), asked);
    }
}
