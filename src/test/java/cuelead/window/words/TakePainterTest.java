package cuelead.window.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;
import cuelead.window.frame.Palette;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TakePainterTest {
    private static final int WIDTH = 400;
    private static final int HEIGHT = 100;

    /** Two seconds, loud from 0.5 s to 1 s. */
    private static TakeShape shape() {
        float[] samples = new float[16_000];
        Arrays.fill(samples, 4_000, 8_000, -0.25f);
        return new TakeShape(new MonoSound(samples, new SampleRate(8_000)));
    }

    private static BufferedImage painted(OptionalDouble mark) {
        BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D on = picture.createGraphics();
        new TakePainter(Palette.LIGHT).paint(on, WIDTH, HEIGHT, shape(), mark);
        on.dispose();
        return picture;
    }

    private static int colour(java.awt.Color colour) {
        return colour.getRGB() | 0xff000000;
    }

    /** A quarter of the picture is 0.5 s; what is loudest fills the height. */
    @Test
    void loudnessIsDrawnWhereItIsHeard() {
        BufferedImage picture = painted(OptionalDouble.empty());
        assertEquals(colour(Palette.LIGHT.field()), picture.getRGB(90, 20));
        assertEquals(colour(Palette.LIGHT.quiet()), picture.getRGB(110, 20));
        assertEquals(colour(Palette.LIGHT.quiet()), picture.getRGB(190, 80));
        assertEquals(colour(Palette.LIGHT.field()), picture.getRGB(210, 80));
    }

    @Test
    void theMarkStandsAtItsSecond() {
        BufferedImage picture = painted(OptionalDouble.of(1.5));
        assertEquals(colour(Palette.LIGHT.now()), picture.getRGB(300, 90));
        assertEquals(colour(Palette.LIGHT.field()), picture.getRGB(290, 90));
    }

    @Test
    void aPlaceIsAMomentWithinTheTake() {
        TakeShape shape = shape();
        assertEquals(1.5, TakePainter.secondsAt(300, WIDTH, shape), 1e-9);
        assertEquals(300, TakePainter.xAt(1.5, WIDTH, shape), 1e-9);
        assertEquals(0, TakePainter.secondsAt(-20, WIDTH, shape));
        assertEquals(2, TakePainter.secondsAt(1_000, WIDTH, shape));
    }
}
