package cuelead.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContrastTest {
    /** WCAG 2.2: 21 is the most, 1 the least; 4.48 for #777777 on white, just under its AA bar, is from memory. */
    @Test
    void isThatOfTheStandard() {
        assertEquals(21, Contrast.ratio(Color.BLACK, Color.WHITE), 1e-9);
        assertEquals(1, Contrast.ratio(Color.RED, Color.RED), 1e-9);
        assertEquals(4.48, Contrast.ratio(new Color(0x777777), Color.WHITE), 0.005);
    }

    @Test
    void allThatIsReadOnTheFloorStandsOut() {
        for (Palette palette : List.of(Palette.DARK, Palette.LIGHT)) {
            for (Color read : List.of(palette.ink(), palette.quiet(), palette.now(), palette.next())) {
                assertTrue(Contrast.ratio(read, palette.ground()) >= 7, read + " on the ground of " + palette);
                assertTrue(Contrast.ratio(read, palette.field()) >= 7, read + " on the field of " + palette);
            }
        }
    }
}
