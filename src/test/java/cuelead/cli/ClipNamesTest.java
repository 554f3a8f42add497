package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.steer.Calls;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ClipNamesTest {
    @Test
    void namesAreReadable() {
        assertEquals("kick_ball_change", ClipNames.safe("Kick ball-change"));
        assertEquals("wall_two_three_o_clock", ClipNames.safe("wall two three o'clock"));
        assertEquals("volte_a_droite", ClipNames.safe("volte à droite!"));
        assertEquals("word", ClipNames.safe("!!!"));
    }

    /** The device names of Windows: "Naming files, paths, and namespaces" (Microsoft Learn), from memory. */
    @Test
    void aDeviceIsNoName() {
        assertEquals("con_", ClipNames.safe("CON"));
        assertEquals("lpt1_", ClipNames.safe("lpt1"));
        assertEquals("cone", ClipNames.safe("cone"));
    }

    @Property(seed = "20261125")
    void everyNameIsSafe(@ForAll String words) {
        assertTrue(ClipNames.safe(words).matches("[a-z0-9][a-z0-9_]{0,60}"), words);
    }

    @Test
    void wordsThatLookAlikeKeepTheirOwnFiles() {
        var calls = List.of(
                Calls.spoken(Calls.word("side close", 1, 1)),
                Calls.spoken(Calls.word("side-close", 2, 2)),
                Calls.spoken(Calls.word("side close", 3, 3)));
        ClipNames names = new ClipNames(calls);
        assertEquals("side_close.wav", names.of("side close"));
        assertEquals("side_close_2.wav", names.of("side-close"));
        assertEquals(
                List.of("side_close.wav", "side_close_2.wav"),
                List.copyOf(names.clips().keySet()));
    }
}
