package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shuffle is danced on two counts (common practice, no source): on whole counts it is only steps. */
class SlowTriplesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5-8 Step R to side, step L beside R, step R to side, touch L beside R | side_together step_touch",
                "5-8 Step R to side, close L, step R to side, hold | side_together",
                "5-8 Step R forward, step L beside R, step R forward, scuff L | ''",
                "5-8 Cross R over L, step L to side, cross R over L, hold | ''",
                "5-8 Step R back, step L beside R, step R back, touch L beside R | ''",
                "5-8 Step R forward, lock L behind R, step R forward, brush L | lock_step",
                "5&6 Step R to side, step L beside R, step R to side~7-8 Stomp L, hold | chasse",
                "5&6 Step R forward, step L beside R, step R forward~7-8 Stomp L, hold | shuffle_fwd",
                "5&6 Cross R over L, step L to side, cross R over L~7-8 Stomp L, hold | cross_shuffle"
            })
    void areNoShuffles(String lines, String figures) {
        String sheet =
                "Nettle Row\n8 counts, 1 wall\nSection 1\n1-4 Rock R forward, recover L, rock R back, recover L\n"
                        + lines.replace("~", "\n") + "\n";
        List<String> found = SheetFixtures.firstSection(sheet).figures().stream()
                .map(run -> run.figure().id())
                .skip(1)
                .toList();
        assertEquals(figures, String.join(" ", found), sheet);
    }
}
