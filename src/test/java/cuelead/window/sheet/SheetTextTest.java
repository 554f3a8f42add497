package cuelead.window.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.window.frame.Palette;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class SheetTextTest {
    private final List<String> typed = new ArrayList<>();
    private final SheetText text = new SheetText(Palette.LIGHT, typed::add);

    @Test
    void onlyWhatTheUserTypesIsTold() {
        text.begin("one\ntwo\nthree");
        assertEquals(List.of(), typed);
        text.append("!");
        text.put("one\n2\nthree!");
        assertEquals(List.of("one\ntwo\nthree!"), typed);
        assertEquals("one\n2\nthree!", text.getText());
    }

    /** Whatever is put there, the caret stays at what it stood before; on the thread of events, as carets want. */
    @Test
    void theCaretStaysWhereItWas() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            text.begin("one\ntwo\nthree");
            text.setCaretPosition("one\ntwo\nth".length());
            text.put("one\ntwo  \"out\"\nthree");
        });
        assertEquals("one\ntwo  \"out\"\nth".length(), text.getCaretPosition());
        assertEquals(3, text.line());
        SwingUtilities.invokeAndWait(() -> text.put("one\ntwo\nthree"));
        assertEquals("one\ntwo\nth".length(), text.getCaretPosition());
    }

    @Test
    void aMarkedLineIsSeenWithAllItsRows() {
        text.setSize(160, 400);
        text.begin("one\n" + "a long line that is wrapped ".repeat(4) + "\nthree");
        text.goTo(2);
        Rectangle marked = text.placeOf(2);
        assertTrue(marked.height > text.placeOf(1).height, marked.toString());
        assertEquals(text.placeOf(3).y, marked.y + marked.height, 1);
        assertEquals(2, text.lineAt(marked.y + 1));
        BufferedImage picture = new BufferedImage(160, 400, BufferedImage.TYPE_INT_RGB);
        text.paint(picture.getGraphics());
        assertEquals(Palette.LIGHT.field(), new Color(picture.getRGB(158, marked.y + marked.height - 2)));
        assertEquals(Palette.LIGHT.ground(), new Color(picture.getRGB(158, marked.y - 2)));
    }
}
