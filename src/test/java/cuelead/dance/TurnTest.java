package cuelead.dance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class TurnTest {
    /** 45 degrees are an eighth: the fractions of a full turn as sheets write them. */
    @Test
    void wordsAreFractionsOfAFullTurn() {
        assertEquals(
                List.of("", "1/8 R", "1/4 L", "3/8 R", "1/2 R", "3/4 L", "1 R", "1 1/4 R", "2 L"),
                List.of(0, 45, -90, 135, 180, -270, 360, 450, -720).stream()
                        .map(degrees -> new Turn(degrees).words())
                        .toList());
    }
}
