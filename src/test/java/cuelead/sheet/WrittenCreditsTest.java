package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Who made a dance is not lost when it is written anew, wherever in the head the name stands. */
class WrittenCreditsTest {
    private static final String STEPS = """

            [1-8] VINES
            1-4 Step R to side, cross L behind R, step R to side, touch L next to R
            5-8 Step L to side, cross R behind L, step L to side, touch R next to L
            """;

    private static String written(String text) {
        ReadSheet read = SheetReader.read("sheet.txt", text);
        return SheetWriter.write(read.dance().orElseThrow(), read.notes());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "HAY LOFT LANE / by Jory Penwarden - 8 counts - 1 wall - Easy Intermediate | by Jory Penwarden",
                "HAY LOFT LANE / 8 counts, 1 wall, Beginner, by Sunniva Threlkeld-Moss | by Sunniva Threlkeld-Moss",
                "HAY LOFT LANE / 8 count - 1 wall - choreographed by T. Ollery & M. Quill (UK), May 2024 | choreographed by T. Ollery & M. Quill (UK), May 2024",
                "HAY LOFT LANE / An 8 count, 1 wall dance by Rosamund Tickell, Hobart. Music: Tram Home by Weatherboard, 116 bpm. | by Rosamund Tickell, Hobart / Music: Tram Home by Weatherboard",
                "HAY LOFT LANE (8 counts, 1 wall, by Wilma Hasselbach) | by Wilma Hasselbach",
                "\"Hay Loft Lane\" -- 1-wall line dance, 8 cts, improver -- by Gus Pennyfeather | by Gus Pennyfeather",
                "HAY LOFT LANE / by Vine Walker | by Vine Walker"
            })
    void aNameBesideFactsIsKept(String head, String credits) {
        String text = head.replace(" / ", "\n") + "\n" + STEPS;
        List<String> kept = SheetReader.read("sheet.txt", text).notes().credits();
        assertEquals(List.of(credits.split(" / ")), kept);
        String written = written(text);
        assertEquals(kept, SheetReader.read("sheet.txt", written).notes().credits(), written);
    }

    static Stream<String> sheets() {
        return SheetWriterTest.sheets();
    }

    private static final Pattern NAME = Pattern.compile(
            "\\b[Bb][Yy]\\b[\\s:|]*(NAME(?: (?:& )?NAME)*)".replace("NAME", "(?:\\p{Lu}\\.|\\p{Lu}[\\p{L}'-]+)"));

    /** Every name behind "by" in the first lines of a sheet. */
    @ParameterizedTest
    @MethodSource("sheets")
    void noNameIsLost(String sheet) {
        String text = SampleSheetsTest.text(sheet + ".txt");
        String written = written(text).toLowerCase(Locale.ROOT);
        List<String> lost = new ArrayList<>();
        text.lines().limit(6).forEach(line -> {
            Matcher name = NAME.matcher(line);
            while (name.find()) {
                String words = name.group(1).toLowerCase(Locale.ROOT);
                if (!written.contains(words)) {
                    lost.add(words);
                }
            }
        });
        assertTrue(lost.isEmpty(), lost + " in " + written);
    }
}
