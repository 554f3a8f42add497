package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PassNumbersTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            4          | 4            | 4
            2-4        | 2 3 4        | 2 to 4
            2,5        | 2 5          | 2 and 5
            1, 3 to 5  | 1 3 4 5      | 1 and 3 to 5
            9,2-3,2    | 9 2 3        | 9 and 2 to 3
            1-2,4-5,7  | 1 2 4 5 7    | 1 to 2, 4 to 5 and 7
            """)
    void rangesAndListsAreReadInTheirOrder(String text, String numbers, String told) {
        List<Integer> read = new PassNumbers.Converter().convert(text).numbers();
        assertEquals(Arrays.stream(numbers.split(" ")).map(Integer::valueOf).toList(), read);
        assertEquals(told, PassNumbers.told(read));
    }
}
