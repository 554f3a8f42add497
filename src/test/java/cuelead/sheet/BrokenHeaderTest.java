package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.SHEET;
import static cuelead.sheet.SheetFixtures.messages;
import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Header;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BrokenHeaderTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "Lead: banana|7|error: \"Lead\" needs a number of beats from 0.5 to 16, not \"banana\". Usual is \"Lead: 2\".",
                "Lead: 400|7|error: \"Lead\" needs a number of beats from 0.5 to 16, not \"400\". Usual is \"Lead: 2\".",
                "Lead: 2d|7|error: \"Lead\" needs a number of beats from 0.5 to 16, not \"2d\". Usual is \"Lead: 2\".",
                "Lead:|6|error: \"Lead\" needs a number of beats from 0.5 to 16, not \"\". Usual is \"Lead: 2\".",
                "Count 1: -3|10|error: \"Count 1\" needs a time in seconds from the song's start, not \"-3\". Write it like \"Count 1: 7.46\".",
                "Count 1: NaN|10|error: \"Count 1\" needs a time in seconds from the song's start, not \"NaN\". Write it like \"Count 1: 7.46\".",
                "Counts a beat: 3|16|error: \"Counts a beat\" is 1, 2 or 1/2, not \"3\". Usual is \"Counts a beat: 1\".",
                "Song:|6|error: No song is named behind \"Song:\". Write the song's file, such as \"Song: my-song.mp3\".",
                "Intro: 16 elephants|11|error: An intro is told in counts, not in elephants. Write it like \"Intro: 16 counts\".",
                "Intro: -8 counts|8|error: An intro has no negative length. Write it like \"Intro: 16 counts\".",
                "Intro: 5000 counts|13|error: An intro is told in counts, at most 999 of them. Write it like \"Intro: 16 counts\".",
                "Intro: on vocals|7|warning: No number of counts is written here, so this line is not used. Write it like \"Intro: 16 counts\".",
                "Music: 900 bpm|1|error: A tempo of 900 beats a minute cannot be danced. Write 30 to 300."
            })
    void aBrokenLineIsTold(String line, int column, String message) {
        assertEquals(List.of("sheet.txt:3:" + column + ": " + message), messages(with(line)));
    }

    @Test
    void allAreToldAtOnce() {
        assertEquals(3, messages(with("Lead: x\nCount 1: x\nCounts a beat: x")).size());
    }

    @ParameterizedTest
    @CsvSource({"Lead: 2, 2", "lead:1.5 beats, 1.5", "'LEAD : 1,5', 1.5"})
    void leads(String line, double beats) {
        assertEquals(List.of(), messages(with(line)));
        assertEquals(OptionalDouble.of(beats), header(line).leadBeats());
    }

    @ParameterizedTest
    @CsvSource({
        "Count 1: 7.46, 7.46",
        "Count 1: 7.46 s, 7.46",
        "COUNT 1 : 12 seconds, 12",
        "Count 1: 0, 0",
        "Intro: 9 seconds, 9"
    })
    void countOneInSeconds(String line, double seconds) {
        assertEquals(List.of(), messages(with(line)));
        assertEquals(Optional.of(new CountOne.AtSeconds(seconds)), header(line).countOne());
    }

    @ParameterizedTest
    @CsvSource({
        "Intro: 16 counts, 16",
        "Intro: 32, 32",
        "Intro: 16 counts. Start with weight on left., 16",
        "24 count intro, 24",
        "Intro 8 beats from the first drum, 8",
        "Intro: 16 (on the vocals), 16"
    })
    void intros(String line, int counts) {
        assertEquals(List.of(), messages(with(line)));
        assertEquals(Optional.of(new CountOne.Intro(counts)), header(line).countOne());
    }

    /** A time is more exact than a number of counts. */
    @Test
    void countOneGoesBeforeIntro() {
        assertEquals(
                Optional.of(new CountOne.AtSeconds(3)),
                header("Intro: 16 counts\nCount 1: 3").countOne());
    }

    @ParameterizedTest
    @CsvSource({"1, ONE", "2, TWO", "1/2, HALF", "\u00bd, HALF"})
    void countsABeat(String value, CountRate rate) {
        assertEquals(List.of(), messages(with("Counts a beat: " + value)));
        assertEquals(rate, header("Counts a beat: " + value).countRate());
    }

    /** Our own lines are found below the dance as well. */
    @Test
    void ownLinesMayStandAnywhere() {
        String text = SHEET + "Repeat\nSong: songs/tide: one.mp3\nCount 1: 4\nLead: 1\n";
        assertEquals(List.of(), messages(text));
        Header header =
                SheetReader.read("sheet.txt", text).dance().orElseThrow().header();
        assertEquals("songs/tide: one.mp3", header.song());
        assertEquals(OptionalDouble.of(1), header.leadBeats());
    }

    @Test
    void aLineThatStandsTwice() {
        assertEquals(
                List.of(
                        "sheet.txt:4:1: warning: \"Lead\" stands more than once; the last one counts. Delete all but one."),
                messages(with("Lead: 2\nLead: 4")));
        assertEquals(OptionalDouble.of(4), header("Lead: 2\nLead: 4").leadBeats());
    }

    private static String with(String line) {
        return SHEET.replace("[1-8]", line + "\n[1-8]");
    }

    private static Header header(String line) {
        return SheetReader.read("sheet.txt", with(line)).dance().orElseThrow().header();
    }
}
