package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.report.Problem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every sheet that is written reads back to the same dance, and nothing else is wrong with it. */
class SheetWriterTest {
    static Stream<String> sheets() {
        return Stream.concat(
                Stream.of("1_porch_light_ramble", "3_lantern_tide"),
                StyleSheetsTest.names().map(name -> "styles/" + name));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void readsBackToTheSameDance(String name) {
        ReadSheet read = SheetReader.read("sheet.txt", SampleSheetsTest.text(name + ".txt"));
        Dance dance = read.dance().orElseThrow();
        String written = SheetWriter.write(dance, read.notes());
        ReadSheet readAgain = SheetReader.read("sheet.txt", written);
        Dance again = readAgain.dance().orElseThrow();
        assertEquals(read.notes(), readAgain.notes(), written);
        assertEquals(rows(dance), rows(again), written);
        assertEquals(dance.header(), again.header(), written);
        assertEquals(dance.sequence(), again.sequence(), written);
        assertEquals(KeptWhenWrittenTest.lengths(dance), KeptWhenWrittenTest.lengths(again), written);
        assertEquals(walls(dance), walls(again), written);
        assertEquals(kinds(dance), kinds(again), written);
    }

    /** The part weight of a samba's "a" is not written: whoever reads the step alone bears it whole. */
    private static String rows(Dance dance) {
        return String.join("\n", SheetDump.rows(dance)).replace("\tP\t", "\tF\t");
    }

    /** What is written twice is the same text. */
    @ParameterizedTest
    @MethodSource("sheets")
    void writingIsSettled(String name) {
        String written = write(SampleSheetsTest.text(name + ".txt"));
        assertEquals(written, write(written));
    }

    /** What is wrong with a dance is wrong with it when it is written. */
    private static List<String> kinds(Dance dance) {
        return DanceCheck.check(dance, "sheet.txt").stream().map(Problem::kind).toList();
    }

    private static String walls(Dance dance) {
        StringBuilder walls = new StringBuilder();
        dance.tags().forEach(tag -> walls.append(tag.part().name() + tag.afterWalls() + tag.afterCount() + "\n"));
        dance.restarts().forEach(restart -> walls.append(restart.wall() + ":" + restart.afterCount() + "\n"));
        return walls.toString();
    }

    private static String write(String text) {
        ReadSheet read = SheetReader.read("sheet.txt", text);
        return SheetWriter.write(read.dance().orElseThrow(), read.notes());
    }
}
