package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.dance.Tag;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One tag of four counts behind wall 3, told in many wordings (common practice, no source). */
class TagWordingsTest {
    private static final List<String> WORDINGS = List.of(
            "Tag: 4 counts, at the end of wall 3\n1-4 Sway R, sway L, sway R, sway L\n",
            "TAG (4 counts) end of wall 3: Sway R, L, R, L\n",
            "Tag after wall 3: 1-2 Sway R, sway L 3-4 Sway R, sway L\n",
            "TAG - at the end of wall 3, facing 9:00\n[1-4] SWAYS\n1-4 Sway R, L, R, L\n",
            "At the end of wall 3 add this 4 count tag:\n1-2 Sway R, sway L\n3-4 Sway R, sway L\n",
            "There is a 4 count tag at the end of wall 3:\n1-4 Sway R, L, R, L\n",
            "4 count tag at the end of wall 3:\nSway R, L, R, L (1-4)\n",
            "4-count Tag after wall 3\nSway R, sway L, sway R, sway L\n",
            "TAG\nDanced at the end of wall 3\n1-4 Sway R, L, R, L\n",
            "TAG:\n1-4 Sway R, L, R, L\nDone once, after wall 3.\n",
            "*TAG* (end of wall 3)\n1,2,3,4 Sway R, L, R, L\n",
            "TAG: After wall 3, repeat the last 4 counts of the dance.\n",
            "Bridge (after wall 3, 4 counts)\n1-4 Sway R-L-R-L\n",
            "End of wall 3: add 4 counts - sway R, L, R, L\n",
            "Wall 3: at the end dance this tag\n1-4: sway R, L, R, L\n",
            "tag - 4 counts - danced after 3rd wall\nsway r, sway l, sway r, sway l\n",
            "EASY TAG, end of wall 3: SWAYS\n1-4 Sway R, L, R, L\n",
            "Tag 1 (end of wall 3, 4 counts)\n1 - 4 Sway R, sway L, sway R, sway L\n",
            "TAG - end of wall 3: do counts 1-4 of section 3 (rocking chair)\n",
            "Tag: dance the first 4 counts of section 3 again at the end of wall 3\n",
            "Tag at the end of wall 3: 4 sways R, L, R, L with weight ending on L\n",
            "Note: at the end of wall 3 there is a tag of 4 counts: sway R, L, R, L\n",
            "TAG: After wall 3 do the following 4 counts\n1-4 Sway R, L, R, L\n",
            "At the end of wall 3 dance the next 4 counts:\n1-4 Sway R, L, R, L\n",
            "Tag - wall 3: dance up to the end, then the following 4 counts\n1-4 Sway R, L, R, L\n",
            "Tag at the end of wall 3, adding on the following four counts:\n1-4 Sway R, L, R, L\n",
            "After wall 3 do these 4 counts\n1-4 Sway R, L, R, L\n",
            "TAG: Following wall 3, dance the following 4 beats\n1-4 Sway R, L, R, L\n");

    static Stream<String> wordings() {
        return WORDINGS.stream();
    }

    @ParameterizedTest
    @MethodSource("wordings")
    void aboveTheLastLine(String tag) {
        assertTag(plain().replace("Begin again", tag + "\nBegin again"));
    }

    @ParameterizedTest
    @MethodSource("wordings")
    void belowTheLastLine(String tag) {
        assertTag(plain() + "\n" + tag);
    }

    private static String plain() {
        return OneDance.sections(OneDance::numbered, group -> group.counts() + " " + group.steps() + "\n");
    }

    private static void assertTag(String sheet) {
        ReadSheet read = SheetReader.read("nettle.txt", sheet);
        assertEquals(List.of(), Blamed.in(read), sheet);
        Dance dance = read.dance().orElseThrow();
        assertEquals(32, dance.counts(), sheet);
        assertEquals(1, dance.tags().size(), sheet);
        Tag tag = dance.tags().get(0);
        assertEquals(List.of(3), tag.afterWalls(), sheet);
        assertEquals(4, tag.part().counts(), sheet);
        assertEquals(4, tag.part().sections().get(0).steps().size(), sheet);
    }
}
