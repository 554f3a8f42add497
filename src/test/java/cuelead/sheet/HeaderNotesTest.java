package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.dance.Restart;
import cuelead.dance.Tag;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One restart on wall 3 after 16 counts and one tag of two counts behind wall 5, summed up above the dance beside its
 * other facts in many wordings, with the places marked in the dance (common practice, no source).
 */
class HeaderNotesTest {
    private static final List<String> WORDINGS = List.of(
            "32 counts, 4 walls, beginner\nExtras: 1 restart (wall 3), 1 tag of 2 counts (end of wall 5)\n",
            "32 counts, 4 walls, beginner\n1 restart on wall 3 & 1 tag (2 counts) after wall 5\n",
            "32 counts, 4 walls, beginner\nRestart wall 3, Tag wall 5 (2 counts)\n",
            "32 counts, 4 walls, beginner\nTag: 2 counts after wall 5 / Restart: wall 3\n",
            "32 counts, 4 walls, beginner\nOne restart in wall 3 and one 2-count tag at end of wall 5\n",
            "32 counts, 4 walls, beginner, 1 tag after wall 5, 1 restart in wall 3\n",
            "Type: 32 counts / 4 walls / beginner / 1 restart (wall 3) / 1 tag (wall 5)\n",
            "32 counts, 4 walls, beginner (1 restart wall 3, 2 count tag end of wall 5)\n",
            "32 counts, 4 walls, beginner\nRestarts: 1 (wall 3). Tags: 1 (2 counts, end of wall 5).\n",
            "32 counts, 4 walls, beginner\nTag/Restart: 2 count tag after wall 5, restart during wall 3\n",
            "Count: 32    Wall: 4    Level: Beginner    Restart: wall 3    Tag: wall 5\n",
            "32 counts | 4 walls | beginner | restart on the 3rd wall | tag after the 5th wall\n");
    private static final List<String> MARKS = List.of("*** Restart ***\n", "(Restart here on wall 3)\n", "RESTART\n");

    static Stream<List<String>> sheets() {
        return WORDINGS.stream().flatMap(head -> MARKS.stream().map(mark -> List.of(head, mark)));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void wallsAndPlacesAreToldApart(List<String> sheet) {
        String plain = OneDance.sections(OneDance::numbered, group -> group.counts() + " " + group.steps() + "\n");
        String text = plain.replace(
                        "Choreographer: Quill Underhay\n32 counts, 4 walls, beginner\n",
                        "Choreographer: Quill Underhay\n" + sheet.get(0))
                .replace("Section 3", sheet.get(1) + "\nSection 3")
                .replace(OneDance.FOOT, "\nTag\n1-2 Sway R, sway L\n");
        ReadSheet read = SheetReader.read("nettle.txt", text);
        assertEquals(List.of(), Blamed.in(read), text);
        Dance dance = read.dance().orElseThrow();
        assertEquals(
                List.of("3 after 16"),
                dance.restarts().stream().map(HeaderNotesTest::told).toList(),
                text);
        assertEquals(
                List.of(List.of(5)), dance.tags().stream().map(Tag::afterWalls).toList(), text);
        assertEquals(OptionalInt.of(32), dance.header().statedCounts(), text);
        assertEquals(OptionalInt.of(4), dance.header().statedWalls(), text);
        assertEquals("Beginner", dance.header().level(), text);
    }

    private static String told(Restart restart) {
        return restart.wall() + " after " + restart.afterCount();
    }
}
