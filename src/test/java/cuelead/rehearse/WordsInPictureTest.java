package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WordsInPictureTest {
    private final WordsInPicture words = new WordsInPicture(1, 10);

    @Test
    void whatWouldCoverAnotherGoesOneLineFurther() {
        assertEquals(100, words.place("touch", 20, 100, 3).orElseThrow().y());
        assertTrue(words.place("touch", 24, 100, 3).orElseThrow().y() > 110);
        assertEquals(100, words.place("touch", 40, 100, 3).orElseThrow().y());
    }

    @Test
    void downwardsWhereItIsAskedFor() {
        words.place("touch", 20, -100, -2);
        assertTrue(words.place("touch", 20, -100, -2).orElseThrow().y() < -110);
        assertTrue(words.place("touch", 20, -100, -2).isEmpty());
    }

    @Test
    void marksAreKeptFree() {
        words.keepFree(20, 100);
        assertTrue(words.place("touch", 21, 100, 1).isEmpty());
    }

    @Test
    void rowsThatFitBesideTheEdge() {
        assertEquals(3, words.rowsWithin(28.5));
        assertEquals(1, words.rowsWithin(16));
        assertEquals(0, words.rowsWithin(2));
    }
}
