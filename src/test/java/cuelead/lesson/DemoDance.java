package cuelead.lesson;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Dance;
import cuelead.dance.Metre;
import cuelead.plan.Laying;
import cuelead.plan.Timeline;
import cuelead.sheet.SheetReader;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Dances that come with the program, and a phrased one. */
final class DemoDance {
    /** Four sections of eight that turn a quarter. */
    static final Dance LAMP = read("lamp-on-the-quay");
    /** With a restart in wall 3. */
    static final Dance ROPE_WALK = read("rope-walk-ramble");
    /** In sixes, with a tag after wall 2. */
    static final Dance WALTZ = read("slack-water-waltz");

    static final Dance PHRASED = SheetReader.read("phrased.txt", """
                    Gangway Two-Part
                    Count: 32  Wall: 1  Level: Improver
                    Sequence: A B A Tag B
                    Part A
                    [1-8] SIDE TOGETHER
                    1-2   Step right to right side, step left beside right
                    3-4   Step right to right side, touch left beside right
                    5-6   Step left to left side, step right beside left
                    7-8   Step left to left side, touch right beside left
                    [9-16] WALKS
                    1-4   Walk forward right, left, right, touch left beside right
                    5-8   Walk back left, right, left, touch right beside left
                    Part B
                    [1-8] SIDE TOUCHES
                    1-2   Step right to right side, touch left beside right
                    3-4   Step left to left side, touch right beside left
                    5-6   Step right to right side, touch left beside right
                    7-8   Step left to left side, touch right beside left
                    Tag
                    1-4   Step right to right side, touch left beside right, step left to left side, touch right beside left
                    """).dance().orElseThrow();

    /** With four counts behind count 8 of wall 2. */
    static final Dance BRIDGED = SheetReader.read("bridged.txt", """
                    Plank Walk
                    Count: 16  Wall: 1  Level: Beginner
                    [1-8] SIDE TOGETHER
                    1-2   Step right to right side, step left beside right
                    3-4   Step right to right side, touch left beside right
                    5-6   Step left to left side, step right beside left
                    7-8   Step left to left side, touch right beside left
                    [9-16] WALKS
                    1-4   Walk forward right, left, right, touch left beside right
                    5-8   Walk back left, right, left, touch right beside left
                    Tag: on wall 2 after count 8:
                    1-4   Step right to right side, touch left beside right, step left to left side, touch right beside left
                    """).dance().orElseThrow();

    private DemoDance() {}

    /** A dance over five minutes of even beats at 100 a minute, from the 17th (in waltz the 25th) on. */
    static Timeline laid(Dance dance) {
        Metre metre = dance.header().metre();
        BeatGrid grid = BeatGrid.steady(new Tempo(100), 0.5, 500, metre.beatsInBar());
        CountOne first = new CountOne.Intro(metre == Metre.SIXES ? 24 : 16);
        return Timeline.lay(dance, grid, new Laying(first, CountRate.ONE, 300, Laying.UNTIL_THE_MUSIC_ENDS));
    }

    private static Dance read(String name) {
        try {
            String text = Files.readString(Path.of("cues", name + ".txt"));
            return SheetReader.read(name, text).dance().orElseThrow();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }
}
