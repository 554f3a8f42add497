package cuelead.window.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.window.frame.Palette;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FloorPainterTest {
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 720;

    private static FloorScene scene(String call, int degrees, int count, double beat) {
        return new FloorScene(
                call,
                "",
                "Wall 1",
                "12 o'clock",
                OptionalInt.of(degrees),
                "S1",
                "",
                List.of("1", "2", "3", "4", "5", "6", "7", "8"),
                count,
                List.of(),
                -1,
                "",
                List.of(),
                "",
                false,
                beat);
    }

    /** Two sections of one length: their halves of the wall's line lead to them, all else nowhere. */
    @Test
    void aSectionIsPointedAtInTheLineOfItsWall() {
        FloorScene first = scene("rock", 0, 1, 0);
        FloorScene scene = new FloorScene(
                first.call(),
                "",
                first.wall(),
                first.facing(),
                first.degrees(),
                "S2",
                "",
                first.counts(),
                1,
                List.of(new FloorScene.Block("S1", 8), new FloorScene.Block("S2", 8)),
                1,
                "",
                List.of(),
                "",
                false,
                0);
        FloorPainter painter = new FloorPainter(Palette.DARK, FloorPlan.Motion.STILL);
        int row = (int) (HEIGHT * 0.80);
        assertEquals(OptionalInt.of(-1), painter.sectionsTo(new Point(WIDTH / 4, row), WIDTH, HEIGHT, scene));
        assertEquals(OptionalInt.of(0), painter.sectionsTo(new Point(WIDTH * 3 / 4, row), WIDTH, HEIGHT, scene));
        assertEquals(OptionalInt.empty(), painter.sectionsTo(new Point(WIDTH / 4, 10), WIDTH, HEIGHT, scene));
        assertEquals(OptionalInt.empty(), painter.sectionsTo(new Point(WIDTH / 4, row), WIDTH, HEIGHT, first));
    }

    private static BufferedImage painted(FloorScene scene, FloorPlan.Motion motion) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D on = image.createGraphics();
        FloorPainter painter = new FloorPainter(Palette.DARK, motion);
        painter.paintStill(on, WIDTH, HEIGHT, scene);
        painter.paintMoving(on, WIDTH, HEIGHT, scene);
        on.dispose();
        return image;
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
    }

    /** Rows in which the colour of what is now stands right of the room. */
    private static int rowsOfTheCall(BufferedImage image) {
        int now = Palette.DARK.now().getRGB();
        IntPredicate isOfCall = row -> IntStream.range(WIDTH / 2, WIDTH).anyMatch(x -> image.getRGB(x, row) == now);
        return (int) IntStream.range(0, HEIGHT).filter(isOfCall).count();
    }

    /** ISO 9241-303 as its source tells it: 16 minutes of arc at least; at 6 m these are 28 mm of a screen 174 mm high. */
    @Test
    void aCallIsReadAcrossAHall() {
        int rows = rowsOfTheCall(painted(scene("kick", 0, 0, 0), FloorPlan.Motion.STILL));
        assertTrue(rows * 174.0 / HEIGHT >= 28, rows + " rows");
    }

    @Test
    void theDancersTurnAndTheCountGoesOn() {
        int[] front = pixels(painted(scene("", 0, 0, 0), FloorPlan.Motion.STILL));
        int[] side = pixels(painted(scene("", 90, 0, 0), FloorPlan.Motion.STILL));
        int[] two = pixels(painted(scene("", 0, 1, 0), FloorPlan.Motion.STILL));
        assertTrue(different(front, side) > 500);
        assertTrue(different(front, two) > 500);
    }

    @Test
    void motionCanBeTurnedOff() {
        int[] early = pixels(painted(scene("", 0, 0, 0), FloorPlan.Motion.STILL));
        int[] late = pixels(painted(scene("", 0, 0, 0.9), FloorPlan.Motion.STILL));
        assertEquals(0, different(early, late));
        int[] moved = pixels(painted(scene("", 0, 0, 0), FloorPlan.Motion.WITH_THE_BEAT));
        int[] after = pixels(painted(scene("", 0, 0, 0.9), FloorPlan.Motion.WITH_THE_BEAT));
        assertTrue(different(moved, after) > 50);
    }

    private static long different(int[] one, int[] other) {
        return IntStream.range(0, one.length).filter(i -> one[i] != other[i]).count();
    }
}
