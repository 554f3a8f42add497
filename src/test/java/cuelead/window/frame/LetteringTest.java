package cuelead.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.font.FontRenderContext;
import java.util.List;
import org.junit.jupiter.api.Test;

class LetteringTest {
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    @Test
    void shortWordsAreAsLargeAsWished() {
        Lettering.Set set = Lettering.line("rock", Lettering.Weight.BOLD, 50, 20, 1000, CONTEXT);
        assertEquals(50, set.font().getSize2D());
        assertEquals(List.of("rock"), set.lines());
    }

    @Test
    void longOnesFitTheirWidth() {
        Lettering.Set set = Lettering.line("kick ball change", Lettering.Weight.BOLD, 100, 10, 200, CONTEXT);
        assertTrue(Lettering.width("kick ball change", set.font(), CONTEXT) <= 201, set.toString());
        assertTrue(set.font().getSize2D() < 100);
    }

    @Test
    void whatFitsInASmallerSizeIsNotCut() {
        for (String words : List.of("vine right", "wall one", "shuffle back", "step turn", "kick ball change")) {
            for (int width = 150; width < 900; width++) {
                Lettering.Set set = Lettering.line(words, Lettering.Weight.BOLD, 300, 0, width, CONTEXT);
                assertEquals(List.of(words), set.lines(), () -> words);
            }
        }
    }

    @Test
    void whatWouldBeTooSmallIsCut() {
        Lettering.Set set =
                Lettering.line("a heading that goes on and on", Lettering.Weight.PLAIN, 40, 30, 200, CONTEXT);
        assertEquals(30, set.font().getSize2D());
        assertTrue(set.lines().get(0).endsWith("\u2026"), set.toString());
        assertTrue(Lettering.width(set.lines().get(0), set.font(), CONTEXT) <= 200);
    }

    @Test
    void severalLinesMayBeLarger() {
        Lettering.Set set = Lettering.lines("shuffle right", Lettering.Weight.BOLD, 200, 2, 500, 400, CONTEXT);
        assertEquals(List.of("shuffle", "right"), set.lines());
        assertTrue(set.height(CONTEXT) <= 400, "" + set.height(CONTEXT));
    }
}
