package cuelead.english;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NumberWordsTest {
    /** Words of one number are read as they are said. */
    @Test
    void whatIsSaidIsRead() {
        for (int number = 1; number <= 20; number++) {
            assertEquals(OptionalInt.of(number), NumberWords.value(NumberWords.cardinal(number)));
        }
        for (int tens = 20; tens < 100; tens += 10) {
            assertEquals(OptionalInt.of(tens), NumberWords.value(NumberWords.cardinal(tens)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "zero", "third", "walls", "thirty two"})
    void otherWordsAreNoNumbers(String word) {
        assertEquals(OptionalInt.empty(), NumberWords.value(word));
    }
}
