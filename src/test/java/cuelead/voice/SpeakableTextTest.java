package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How calls are read out: the trade's own way of saying them (common practice, no source). */
class SpeakableTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rock|rock",
                "Rock Recover|rock recover",
                "1/4 turn|quarter turn",
                "\u00bc|quarter",
                "\u00bd turn|half turn",
                "1\u00bd|one and a half",
                "3/4|three quarter",
                "3/8|three eighths",
                "3:00|three o'clock",
                "10:30|ten thirty",
                "wall 2|wall two",
                "32|thirty two",
                "2nd wall|second wall",
                "R|right",
                "RLR|right left right",
                "L fwd|left forward",
                "kick-ball-change|kick ball change",
                "side & heel|side and heel",
                "chass\u00e9|chasse",
                "don\u2019t stop|don't stop",
                "\u201chold\u201d|hold",
                "x2|twice",
                "walk x 3|walk three times",
                "part A|part ay",
                "part a to b|part ay to b",
                "part b to a|part b to ay",
                "sections a one to a three|sections ay one to ay three",
                "take a breath|take a breath"
            })
    void readsAsACallerSaysIt(String written, String spoken) {
        assertEquals(Optional.of(spoken), SpeakableText.of(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "!!!", "-", "''", "\u2026", "\u3042", "\u0007"})
    void tellsWhatCannotBeSpoken(String written) {
        assertEquals(Optional.empty(), SpeakableText.of(written));
    }

    @Property(tries = 300, seed = "20261125")
    void givesLettersOnlyAndReadsItsOwnResultUnchanged(@ForAll String written) {
        SpeakableText.of(written).ifPresent(spoken -> {
            assertEquals("", spoken.replaceAll("[a-z' ]", ""));
            assertEquals(spoken.strip().replaceAll(" +", " "), spoken);
        });
    }
}
