package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Tag;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A bridge of two counts behind count 8 of wall 2, told in many wordings (common practice, no source). */
class TagPlacesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Bridge: on wall 2 after count 8, facing 3:00\n1-2 Sway R, sway L\n",
                "Bridge (2 counts): on wall 2 after count 8\n1-2 Sway R, sway L\n",
                "Bridge: 2 counts after 8 counts of wall 2\n1-2 Sway R, sway L\n",
                "Bridge on wall 2, after the first 8 counts\n1-2 Sway R, sway L\n",
                "Tag: after count 8 of wall 2, 2 counts\n1-2 Sway R, sway L\n",
                "Tag (wall 2, following count 8)\n1-2 Sway R, sway L\n",
                "Bridge - wall 2, up to count 8, then:\n1-2 Sway R, sway L\n"
            })
    void isNoLength(String tag) {
        String dance = OneDance.sections(OneDance::numbered, group -> group.counts() + " " + group.steps() + "\n");
        ReadSheet read = SheetReader.read("nettle.txt", dance + "\n" + tag);
        List<Tag> tags = read.dance().orElseThrow().tags();
        assertEquals(1, tags.size(), tag);
        assertEquals(2, tags.get(0).part().counts(), tag);
        assertEquals(List.of(2), tags.get(0).afterWalls(), tag);
        assertEquals(OptionalInt.of(8), tags.get(0).afterCount(), tag);
    }
}
