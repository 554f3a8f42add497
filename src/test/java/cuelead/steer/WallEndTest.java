package cuelead.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.plan.Timeline;
import java.util.List;
import org.junit.jupiter.api.Test;

/** At 120 beats a minute, count 1 at 8 s: wall 1 is 8 to 12 s, then a tag of 2 counts, then walls of 4 s. */
class WallEndTest {
    private static final String SHEET = """
            SMALL
            Count: 8   Wall: 2
            Intro: 16 counts

            [1-8] SIDES AND A HALF
            1-2 Step right to side, step left beside right
            3-4 Step right to side, step left beside right
            5-6 Step right to side, step left beside right
            7-8 Step right forward, pivot 1/2 left (weight on left)

            Tag: after wall 1
            1-2 Step right to side, step left beside right

            Restart: wall 3 after count 4
            """;

    private static String endAt(Timeline timeline, double songSeconds) {
        return DancePlace.at(timeline, songSeconds).atWallEnd();
    }

    @Test
    void tagsRestartsWallsAndTheMusicsEnd() {
        Timeline timeline = Calls.timeline(SHEET, 21.1);
        assertEquals("wall 1 facing 12 o'clock (front)", endAt(timeline, 1));
        assertEquals("in 8 counts: tag of 2 counts, then wall 2 facing 6 o'clock (back)", endAt(timeline, 8.1));
        assertEquals("in 1 count: wall 2 facing 6 o'clock (back)", endAt(timeline, 12.6));
        assertEquals("in 1 count: wall 3 facing 12 o'clock (front)", endAt(timeline, 16.9));
        assertEquals("in 3 counts: restart after count 4, wall 4 facing 12 o'clock (front)", endAt(timeline, 17.6));
        assertEquals("the music ends on count 5 of this wall", endAt(timeline, 19.1));
    }

    @Test
    void theTagIsAPlaceOfItsOwn() {
        DancePlace place = DancePlace.at(Calls.timeline(SHEET, 21.1), 12.6);
        assertEquals("Tag after wall 1", place.wall());
        assertEquals("2", place.count());
        assertEquals(new Eight(List.of("1", "2"), 1), place.eight());
    }

    @Test
    void anEightThatIsBrokenOffShowsOnlyWhatIsDanced() {
        DancePlace place = DancePlace.at(Calls.timeline(SHEET, 21.1), 17.6);
        assertEquals(new Eight(List.of("1", "2", "3", "4"), 1), place.eight());
    }
}
