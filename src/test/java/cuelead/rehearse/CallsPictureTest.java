package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CallsPictureTest {
    @TempDir
    private Path temp;

    private static Review review(double errorSeconds) {
        List<PlannedCall> plan = List.of(MatchingTest.planned("step", 5), MatchingTest.planned("rock", 7));
        HeardWord step = MatchingTest.heard("step", 5 + errorSeconds);
        return new Review(new Matching(plan, List.of(step), 0.08).calls());
    }

    private BufferedImage drawn(Review review) throws Exception {
        Path file = temp.resolve("calls.png");
        CallsPicture.of(review).write(file);
        return ImageIO.read(file.toFile());
    }

    @Test
    void itIsAPictureAndShowsWhereTheCallsLie() throws Exception {
        BufferedImage late = drawn(review(0.2));
        BufferedImage early = drawn(review(-0.2));
        assertEquals(1_400, late.getWidth());
        int different = 0;
        for (int x = 0; x < late.getWidth(); x++) {
            for (int y = 0; y < late.getHeight(); y++) {
                different += late.getRGB(x, y) == early.getRGB(x, y) ? 0 : 1;
            }
        }
        assertTrue(different > 50, "pixels that differ: " + different);
    }

    @Test
    void aReviewOfNothingCanBeDrawn() throws Exception {
        assertEquals(700, drawn(new Review(List.of())).getHeight());
    }

    @Test
    void whereItCannotBeWrittenOneSentenceSaysSo() {
        CallsPicture picture = CallsPicture.of(review(0));
        assertThrows(Refused.class, () -> picture.write(temp.resolve("none").resolve("calls.png")));
    }
}
