package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.DanceRow;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where counts, steps and headings stand makes no difference: every layout of one dance is read as that dance. */
class LayoutsTest {
    static Stream<String> layouts() {
        return Layouts.all().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void readAsTheSameDance(String name) {
        String sheet = Layouts.all().get(name);
        ReadSheet read = SheetReader.read("nettle.txt", sheet);
        assertEquals(List.of(), Blamed.in(read), sheet);
        assertEquals(rows(SheetReader.read("plain.txt", OneDance.plain())), rows(read), sheet);
    }

    /** Count, foot, action, turn and weight of every action. */
    private static List<String> rows(ReadSheet read) {
        return DanceRow.of(read.dance().orElseThrow()).stream()
                .map(row -> row.countInDance() + " " + row.step().foot() + " "
                        + row.step().action().word() + " " + row.step().turn().degrees() + " "
                        + row.step().weightAfter())
                .toList();
    }
}
