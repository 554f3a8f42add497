package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class WarmUpTest {
    /** It is of use only where it goes the ways of a real practice: through turns, a tag and a restart. */
    @Test
    void meetsTheCodeThatMostSheetsNeed() {
        Take take = WarmUp.practise().orElseThrow();
        List<String> words =
                take.calls().stream().map(call -> call.call().words()).toList();
        for (String expected : List.of("vine right", "touch", "tag", "restart")) {
            assertTrue(words.stream().anyMatch(said -> said.contains(expected)), expected + " in " + words);
        }
        assertEquals(1, take.timeline().dance().tags().size());
        assertEquals(1, take.timeline().dance().restarts().size());
        assertEquals(take.calls().size(), take.mix().clips().size());
    }
}
