package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Counted by ear. */
class SpelledSyllablesTest {
    @ParameterizedTest
    @CsvSource({
        "side, 1",
        "sides, 1",
        "touch, 1",
        "touches, 2",
        "shuffle, 2",
        "shuffles, 2",
        "changes, 2",
        "crossed, 1",
        "pointed, 2",
        "sailor, 2",
        "together, 3",
        "recover, 3",
        "monterey, 3",
        "diagonal, 4",
        "chasse, 2",
        "kick ball change, 3",
        "three o'clock, 3",
        "waltz, 1",
        "the, 1",
        "toes, 1",
        "balance, 2",
        "mambo, 2"
    })
    void countsSyllables(String text, int syllables) {
        assertEquals(syllables, SpelledSyllables.count(text));
    }

    @ParameterizedTest
    @CsvSource({"behind side cross, 1", "recover, 1", "together, 1", "rock recover, 0", "kick ball change, 0"})
    void knowsTheStressOfTheFirstWord(String text, int stressed) {
        assertEquals(stressed, SpelledSyllables.stressed(text));
    }
}
