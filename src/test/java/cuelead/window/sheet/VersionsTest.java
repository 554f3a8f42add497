package cuelead.window.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class VersionsTest {
    @Test
    void whatIsTypedWithoutAPauseIsTakenBackAtOnce() {
        Versions versions = new Versions("a");
        versions.typed("ab");
        versions.typed("abc");
        versions.pause();
        versions.typed("abcd");
        assertEquals("abc", versions.undo());
        assertEquals("a", versions.undo());
        assertFalse(versions.canUndo());
        assertEquals("a", versions.undo());
    }

    @Test
    void aNewEditForgetsWhatWasTakenBack() {
        Versions versions = new Versions("a");
        versions.edited("b");
        versions.undo();
        assertTrue(versions.canRedo());
        versions.typed("ac");
        assertFalse(versions.canRedo());
        assertEquals("ac", versions.redo());
    }

    /** Whatever is done: all the way back is the beginning, all the way on again is what was last. */
    @Test
    void backAndOnAgainLosesNothing() {
        Random dice = new Random(11);
        Versions versions = new Versions("first");
        List<String> known = new ArrayList<>(List.of("first"));
        for (int i = 0; i < 200; i++) {
            known.add("text " + i);
            switch (dice.nextInt(4)) {
                case 0 -> versions.edited("text " + i);
                case 1 -> versions.typed("text " + i);
                case 2 -> versions.pause();
                default -> {
                    versions.undo();
                    versions.redo();
                }
            }
            assertTrue(known.contains(versions.now()));
        }
        String last = versions.now();
        List<String> back = new ArrayList<>();
        while (versions.canUndo()) {
            back.add(0, versions.now());
            versions.undo();
        }
        assertEquals("first", versions.now());
        List<String> again = new ArrayList<>();
        while (versions.canRedo()) {
            again.add(versions.redo());
        }
        assertEquals(back, again);
        assertEquals(last, versions.now());
    }
}
