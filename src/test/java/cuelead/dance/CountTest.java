package cuelead.dance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountTest {
    /**
     * "&" is half a count after its number; "a" is the last quarter of the count, so that 1a2 lasts 3/4 + 1/4 + 1
     * (Roundalab and Universal Round Dance Council, Common Glossary of Round Dance Terms, 2001).
     */
    @ParameterizedTest
    @CsvSource({"1, ON, 0", "2, ON, 1", "1, AND, 0.5", "8, AND, 7.5", "1, A, 0.75", "4, A, 3.75", "0, AND, -0.5"})
    void offsets(int number, Count.Split split, double counts) {
        assertEquals(counts, new Count(number, split).offset().toDecimal());
    }

    @ParameterizedTest
    @CsvSource({"3, ON, 3", "3, AND, 3&", "3, A, 3a", "0, AND, 0&"})
    void labels(int number, Count.Split split, String label) {
        assertEquals(label, new Count(number, split).label());
    }

    @Test
    void onlyPickupsComeBeforeCountOne() {
        assertTrue(Count.and(0).compareTo(Count.on(1)) < 0);
        assertThrows(IllegalArgumentException.class, () -> Count.on(-1));
    }

    /** 1, 1&, 1a, 2: in the order in which they are danced. */
    @Property(seed = "20261125")
    void theSplitsOfACountComeBeforeTheNext(@ForAll @IntRange(max = 1000) int number) {
        Count a = new Count(number, Count.Split.A);
        assertTrue(Count.on(number).compareTo(Count.and(number)) < 0);
        assertTrue(Count.and(number).compareTo(a) < 0);
        assertTrue(a.compareTo(Count.on(number + 1)) < 0);
        assertTrue(Count.on(number).isWhole());
        assertTrue(!a.isWhole() && !Count.and(number).isWhole());
    }

    @Property(seed = "20261125")
    void lengthsAddAndTakeAway(@ForAll @IntRange(max = 9999) int one, @ForAll @IntRange(max = 9999) int other) {
        assertEquals(Counts.of(one + other), Counts.of(one).plus(Counts.of(other)));
        assertEquals(Counts.of(one), Counts.of(one).plus(Counts.of(other)).minus(Counts.of(other)));
        assertEquals(Integer.compare(one, other), Counts.of(one).compareTo(Counts.of(other)));
    }
}
