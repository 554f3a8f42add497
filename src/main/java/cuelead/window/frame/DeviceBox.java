package cuelead.window.frame;

import cuelead.output.DeviceName;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComboBox;
import javax.swing.SwingUtilities;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/** One of the devices that are there, or the usual one. Names are looked up when they are wanted, for that takes its time. */
public final class DeviceBox extends JComboBox<String> {
    private static final long serialVersionUID = 1L;

    private final transient Supplier<List<DeviceName>> names;

    /**
     * With one chosen.
     *
     * @param usual  what the usual one is called
     * @param names  of those that are there now; asked beside the thread of events
     * @param now    the one that is chosen; empty = the usual one
     * @param chosen is given another one when it is chosen
     */
    public DeviceBox(
            String usual, Supplier<List<DeviceName>> names, Optional<String> now, Consumer<Optional<String>> chosen) {
        this.names = names;
        addItem(usual);
        now.ifPresent(this::addItem);
        setSelectedIndex(getItemCount() - 1);
        addActionListener(event -> {
            String name = (String) getSelectedItem();
            if (name != null) {
                chosen.accept(name.equals(usual) ? Optional.empty() : Optional.of(name));
            }
        });
        addPopupMenuListener(new PopupMenuListener() {
            @Override
            public void popupMenuWillBecomeVisible(PopupMenuEvent opening) {
                Thread looking = new Thread(DeviceBox.this::lookUp, "cuelead-devices");
                looking.setDaemon(true);
                looking.start();
            }

            @Override
            public void popupMenuWillBecomeInvisible(PopupMenuEvent closing) {}

            @Override
            public void popupMenuCanceled(PopupMenuEvent closing) {}
        });
    }

    private void lookUp() {
        List<String> there = names.get().stream().map(DeviceName::told).toList();
        SwingUtilities.invokeLater(
                () -> there.stream().filter(name -> !contains(name)).forEach(this::addItem));
    }

    private boolean contains(String name) {
        for (int i = 0; i < getItemCount(); i++) {
            if (getItemAt(i).equals(name)) {
                return true;
            }
        }
        return false;
    }
}
