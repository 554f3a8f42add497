package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Tag;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A tag of four counts that is danced twice in a row, and one that comes on two walls (common practice, no source). */
class TagTimesTest {
    private static final String STEPS = "1-4 Sway R, L, R, L\n";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "TAG: After wall 2 do the following 4 counts twice\n" + STEPS,
                "After wall 2 there is a tag, danced twice:\n" + STEPS,
                "TAG (4 counts, x2) end of wall 2\n" + STEPS,
                "TAG x 2 - after wall 2\n" + STEPS,
                "TAG: Following wall 2, do these 4 counts two times\n" + STEPS,
                "TAG: Dance this 4-count tag 2x at the end of wall 2\n" + STEPS,
                "TAG: after wall 2\n" + STEPS + "Repeat the 4 counts\n",
                "TAG: after wall 2\n" + STEPS + "Do these 4 counts two times\n",
                "TAG: after wall 2\n" + STEPS + "(Dance the tag twice)\n",
                "TAG: after wall 2\n" + STEPS + "Dance it twice\n",
                "TAG: after wall 2, 8 counts\n" + STEPS + "5-8 Repeat 1-4\n"
            })
    void isDancedTwice(String tag) {
        assertTag(tag, List.of(2), 8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "TAG: twice, after walls 2 and 4\n" + STEPS,
                "TAG: Danced twice during the song, after walls 2 and 4\n" + STEPS,
                "TAG (4 counts, 2x): end of walls 2 & 4\n" + STEPS,
                "There is one tag, danced two times, at the end of wall 2 and wall 4:\n" + STEPS
            })
    void comesOnTwoWalls(String tag) {
        assertTag(tag, List.of(2, 4), 4);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "TAG (4 counts): at the end of wall 2, and twice at the end of wall 4\n" + STEPS,
                "TAG: after wall 2 (once) and after wall 4 (twice)\n" + STEPS,
                "TAG: once after wall 2, twice after wall 4\n" + STEPS,
                "TAG: after wall 2 (x1), after wall 4 (x2)\n" + STEPS,
                "TAG: after wall 2\n" + STEPS + "(Dance the tag twice on wall 4)\n",
                "TAG: after walls 2 and 4\n" + STEPS + "On wall 4 dance the tag twice.\n",
                "TAG: after walls 2 and 4\n" + STEPS + "Do it twice after wall 4\n"
            })
    void isDancedTwiceOnOneWallOnly(String tag) {
        List<Tag> tags = tags(tag);
        assertEquals(
                List.of("TAG [2] 4", "TAG2 [4] 8"),
                tags.stream()
                        .map(each -> each.part().name() + " " + each.afterWalls() + " "
                                + each.part().counts())
                        .toList(),
                tag);
    }

    private static void assertTag(String text, List<Integer> walls, int counts) {
        List<Tag> tags = tags(text);
        assertEquals(1, tags.size(), text);
        assertEquals(walls, tags.get(0).afterWalls(), text);
        assertEquals(OptionalInt.empty(), tags.get(0).afterCount(), text);
        assertEquals(counts, tags.get(0).part().counts(), text);
    }

    private static List<Tag> tags(String text) {
        String dance = OneDance.sections(OneDance::numbered, group -> group.counts() + " " + group.steps() + "\n");
        return SheetReader.read("nettle.txt", dance.replace("Begin again", text + "\nBegin again"))
                .dance()
                .orElseThrow()
                .tags();
    }
}
