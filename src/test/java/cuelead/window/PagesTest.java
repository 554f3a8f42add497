package cuelead.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.window.floor.FloorPage;
import cuelead.window.frame.Page;
import cuelead.window.frame.PageName;
import cuelead.window.rehearse.RehearsePage;
import cuelead.window.sheet.SheetPage;
import cuelead.window.song.SongPage;
import cuelead.window.start.StartPage;
import cuelead.window.tracks.TracksPage;
import cuelead.window.words.WordsPage;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What holds for all that can be used on any page. */
class PagesTest {
    @TempDir
    private Path temp;

    private final Map<PageName, Page> pages = new EnumMap<>(PageName.class);

    @BeforeEach
    void open() {
        FakeHost host = new FakeHost(temp);
        pages.put(PageName.DANCE, new StartPage(host, List::of));
        pages.put(PageName.SHEET, new SheetPage(host));
        pages.put(PageName.SONG, new SongPage(host));
        pages.put(PageName.REHEARSE, new RehearsePage(host));
        pages.put(PageName.FLOOR, new FloorPage(host, false, () -> {}, still -> {}));
        pages.put(PageName.WORDS, new WordsPage(host));
        pages.put(PageName.TRACKS, new TracksPage(host));
    }

    /** Parts of spinners and lists that open are theirs. */
    private static void controls(Component part, List<Component> into) {
        boolean isControl = part instanceof AbstractButton
                || part instanceof JTextComponent
                || part instanceof JSpinner
                || part instanceof JComboBox<?>
                || part instanceof JList<?>
                || part instanceof JTable
                || part instanceof JSlider;
        if (isControl) {
            into.add(part);
        } else if (part instanceof Container container) {
            for (Component inner : container.getComponents()) {
                // the arrows of bars that scroll have no names in any program
                if (!(inner instanceof javax.swing.JScrollBar)) {
                    controls(inner, into);
                }
            }
        }
    }

    private static List<Component> controls(Page page) {
        List<Component> all = new ArrayList<>();
        controls(page.view(), all);
        return all;
    }

    @Test
    void everyControlHasANameThatCanBeReadAloud() {
        TreeSet<String> nameless = new TreeSet<>();
        pages.forEach((name, page) -> {
            for (Component control : controls(page)) {
                String spoken = control.getAccessibleContext().getAccessibleName();
                if (spoken == null || spoken.isBlank()) {
                    nameless.add(name + ": " + control.getClass().getSimpleName());
                }
            }
            assertTrue(!controls(page).isEmpty(), name + " has nothing to use");
        });
        assertEquals(new TreeSet<String>(), nameless);
    }

    /** A button that keys cannot step to is one whose order has a key; its tip tells it. */
    @Test
    void everyControlIsReachedByKeys() {
        TreeSet<String> unreached = new TreeSet<>();
        pages.forEach((name, page) -> {
            for (Component control : controls(page)) {
                boolean tellsItsKey = control instanceof AbstractButton button
                        && button.getToolTipText() != null
                        && button.getToolTipText().contains(": ");
                if (!control.isFocusable() && !tellsItsKey) {
                    unreached.add(name + ": " + control.getAccessibleContext().getAccessibleName());
                }
            }
        });
        assertEquals(new TreeSet<String>(), unreached);
    }

    @Test
    void noTwoButtonsOfAPageHaveTheSameKey() {
        pages.forEach((name, page) -> {
            List<Integer> keys = controls(page).stream()
                    .filter(AbstractButton.class::isInstance)
                    .map(button -> ((AbstractButton) button).getMnemonic())
                    .filter(key -> key != 0)
                    .toList();
            assertEquals(keys.stream().distinct().toList(), keys, name + " has a key twice");
            assertTrue(!keys.contains((int) 'B'), name + " takes the key of breaking off");
        });
    }
}
