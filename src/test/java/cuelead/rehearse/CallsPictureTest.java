package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class CallsPictureTest {
    private static Review review(double errorSeconds) {
        List<PlannedCall> plan = List.of(MatchingTest.planned("step", 5), MatchingTest.planned("rock", 7));
        HeardWord step = MatchingTest.heard("step", 5 + errorSeconds);
        return new Review(new Matching(plan, List.of(step), 0.08).calls());
    }

    private BufferedImage drawn(Review review) throws Exception {
        return ImageIO.read(new ByteArrayInputStream(CallsPicture.of(review).png()));
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
    void whatWasMissedAndWhatWasSaidBesidesLieInLanesOfTheirOwn() throws Exception {
        List<PlannedCall> plan = List.of(MatchingTest.planned("step", 5), MatchingTest.planned("rock", 9));
        HeardWord besides = MatchingTest.heard("okay", 7);
        BufferedImage picture = drawn(new Review(new Matching(plan, List.of(besides), 0).calls()));
        int besidesColour = 0xFF8D4E00;
        assertTrue(isIn(picture, besidesColour, 0, picture.getHeight() / 4));
        assertTrue(!isIn(picture, besidesColour, picture.getHeight() / 4, picture.getHeight() - 60));
    }

    private static boolean isIn(BufferedImage picture, int colour, int fromRow, int toRow) {
        for (int y = fromRow; y < toRow; y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if (picture.getRGB(x, y) == colour) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void whatWasMissedHasItsWordInASmallPictureToo() throws Exception {
        BufferedImage rock = small("rock");
        BufferedImage kick = small("kick");
        int lowest = 0;
        for (int y = 0; y < rock.getHeight(); y++) {
            for (int x = 0; x < rock.getWidth(); x++) {
                lowest = rock.getRGB(x, y) == kick.getRGB(x, y) ? lowest : y;
            }
        }
        assertTrue(lowest > 0, "the word is not there");
        int axis = 260;
        assertTrue(lowest < axis, "the word lies in the axis: " + lowest);
    }

    private static BufferedImage small(String missed) {
        List<PlannedCall> plan = List.of(
                MatchingTest.planned("step", 1), MatchingTest.planned(missed, 30), MatchingTest.planned("step", 60));
        List<HeardWord> heard = List.of(MatchingTest.heard("step", 1), MatchingTest.heard("step", 60));
        Review review = new Review(new Matching(plan, heard, 0.08).calls());
        BufferedImage image = new BufferedImage(1_100, 340, BufferedImage.TYPE_INT_RGB);
        CallsPicture.of(review, Look.PAPER, 1_100, 340).paint(image.createGraphics(), 1_100, 340);
        return image;
    }

    @Test
    void timesAreMinutesAndSecondsBeforeTheSongToo() {
        assertEquals("0:05", CallsPicture.minutes(5));
        assertEquals("2:40", CallsPicture.minutes(160));
        assertEquals("-0:05", CallsPicture.minutes(-5));
    }

    @Test
    void aReviewOfNothingCanBeDrawn() throws Exception {
        assertEquals(760, drawn(new Review(List.of())).getHeight());
    }
}
