package cuelead.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.Box;
import javax.swing.JPanel;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class WrappingTest {
    private static final int GAP = 5;

    /** Nothing lies over another or outside, as long as each is narrower than the place. */
    @Property(tries = 200)
    void allLiesWithinItsPlaceAndApart(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 100) Integer> widths,
            @ForAll @IntRange(min = 100, max = 500) int width) {
        JPanel place = new JPanel(new Wrapping(GAP));
        for (int each : widths) {
            place.add(Box.createRigidArea(new Dimension(each, 10 + each % 7)));
        }
        place.setSize(width, 10);
        place.setSize(width, place.getPreferredSize().height);
        place.doLayout();
        for (int i = 0; i < place.getComponentCount(); i++) {
            Component part = place.getComponent(i);
            assertTrue(part.getX() >= 0 && part.getX() + part.getWidth() <= width, "outside");
            assertTrue(part.getY() >= 0 && part.getY() + part.getHeight() <= place.getHeight(), "below");
            for (int j = 0; j < i; j++) {
                assertTrue(!part.getBounds().intersects(place.getComponent(j).getBounds()), "over another");
            }
        }
    }

    @Property(tries = 20)
    void oneLineIsAsWideAsItsParts(@ForAll @Size(min = 1, max = 9) List<@IntRange(min = 1, max = 50) Integer> widths) {
        JPanel place = new JPanel(new Wrapping(GAP));
        widths.forEach(each -> place.add(Box.createRigidArea(new Dimension(each, 10))));
        int all = widths.stream().mapToInt(Integer::intValue).sum() + GAP * (widths.size() - 1);
        assertEquals(new Dimension(all, 10), place.getPreferredSize());
    }

    @Example
    void aPlaceThatGotTheHeightOfOneLineAsksForMoreOnce() throws Exception {
        AtomicInteger asked = new AtomicInteger();
        JPanel place = new JPanel(new Wrapping(GAP)) {
            private static final long serialVersionUID = 1L;

            @Override
            public void revalidate() {
                asked.incrementAndGet();
            }
        };
        for (int i = 0; i < 3; i++) {
            place.add(Box.createRigidArea(new Dimension(60, 10)));
        }
        asked.set(0);
        place.setSize(100, place.getPreferredSize().height);
        place.doLayout();
        place.doLayout();
        EventQueue.invokeAndWait(() -> {});
        assertEquals(1, asked.get());
    }
}
