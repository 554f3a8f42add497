package cuelead.window.words;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

class BigWordTest {
    private static final int WIDTH = 400;
    private static final int HEIGHT = 120;

    private static int[] painted(String... words) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        BigWord view = new BigWord();
        view.setSize(WIDTH, HEIGHT);
        for (String word : words) {
            view.show(word, false);
            Graphics2D on = image.createGraphics();
            view.paint(on);
            on.dispose();
        }
        return image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
    }

    @Test
    void nothingIsLeftOfTheWordBefore() {
        assertArrayEquals(painted("one"), painted("waltz", "one"));
    }
}
