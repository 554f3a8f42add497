package cuelead.lesson;

import cuelead.dance.Dance;
import cuelead.sheet.SheetReader;
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

    private DemoDance() {}

    private static Dance read(String name) {
        try {
            String text = Files.readString(Path.of("cues", name + ".txt"));
            return SheetReader.read(name, text).dance().orElseThrow();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }
}
