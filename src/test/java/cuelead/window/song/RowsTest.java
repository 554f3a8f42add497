package cuelead.window.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.practice.SongDance;
import cuelead.sheet.SheetFile;
import cuelead.sheet.SheetReader;
import cuelead.song.BeatFile;
import cuelead.song.Hearing;
import cuelead.song.Hearing.Stretch;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RowsTest {
    private static final String TWO_SECTIONS = """
            SMALL
            Count: 16   Wall: 2
            %s

            [1-8] SIDES
            1-2 Step right to side, step left beside right
            3-4 Step right to side, step left beside right
            5-6 Step right to side, step left beside right
            7-8 Step right to side, step left beside right

            [9-16] AND A HALF
            1-2 Step right to side, step left beside right
            3-4 Step right to side, step left beside right
            5-6 Step right to side, step left beside right
            7-8 Step right forward, pivot 1/2 left (weight on left)
            %s
            """;

    /** Phrases of so many beats, half a second each, four to the bar. */
    private static BeatGrid phrases(int... lengths) {
        List<Integer> counts = new ArrayList<>();
        for (int length : lengths) {
            IntStream.rangeClosed(1, length).forEach(counts::add);
        }
        return grid(counts, 4);
    }

    private static BeatGrid grid(List<Integer> counts, int bar) {
        return new BeatGrid(
                IntStream.range(0, counts.size())
                        .mapToDouble(i -> 0.5 + 0.5 * i)
                        .toArray(),
                counts.stream().mapToInt(count -> (count - 1) % bar + 1).toArray(),
                counts.stream().mapToInt(count -> count).toArray());
    }

    private static Hearing sure(BeatGrid grid) {
        return new Hearing(grid, List.of(), OptionalDouble.empty());
    }

    private static Rows rows(BeatGrid grid, String head, String foot) {
        Dance dance = SheetReader.read("small.txt", TWO_SECTIONS.formatted(head, foot))
                .dance()
                .orElseThrow();
        double end = grid.beatSeconds(grid.size() - 1) + 0.3;
        return Rows.of(sure(grid), Optional.of(SongDance.lay(dance, grid, List.of(), end)));
    }

    private static List<String> places(Rows rows) {
        return rows.rows().stream().map(Row::place).toList();
    }

    @ParameterizedTest
    @CsvSource({"lamp-on-the-quay,8", "rope-walk-ramble,8", "slack-water-waltz,6"})
    void demoDancesLieOnTheRowsOfTheirSongs(String name, int usual) throws Exception {
        Hearing hearing = BeatFile.hearing(BeatFile.read(Path.of("demo-songs", name + ".beats")))
                .orElseThrow();
        Dance dance = SheetFile.read(Path.of("cues", name + ".txt")).dance().orElseThrow();
        Rows rows = Rows.of(hearing, Optional.of(SongDance.lay(dance, hearing.beats(), List.of(), 200)));
        assertEquals(usual, rows.usual());
        assertEquals(usual, rows.across());
        assertEquals(hearing.beats().size(), rows.beats());
        List<String> places = places(rows);
        int first = places.indexOf("Wall 1, S1");
        assertTrue(first >= 2, places.toString());
        assertEquals("12 o'clock", rows.rows().get(first).facing());
        assertEquals("S2", places.get(first + 1));
        assertTrue(places.contains("Wall 2, S1"), places.toString());
        List<Row> body = rows.rows().subList(0, rows.rows().size() - 2); // the waltz fades in two half phrases
        assertTrue(body.stream().flatMap(row -> row.cells().stream()).noneMatch(Cell::isOffThePhrase));
        assertTrue(body.stream().noneMatch(Row::isOdd));
    }

    /** Each beat stands in one row, in order, whatever the phrases are. */
    @Test
    void everyBeatStandsOnce() {
        Rows rows = Rows.of(sure(phrases(3, 8, 4, 8, 8, 10, 8)), Optional.empty());
        List<Integer> beats = rows.rows().stream()
                .flatMap(row -> row.cells().stream())
                .map(Cell::beat)
                .toList();
        assertEquals(IntStream.range(0, 49).boxed().toList(), beats);
        for (int beat : beats) {
            assertEquals(beat, rows.cell(beat).beat());
        }
    }

    @Test
    void anOddPhraseIsTold() {
        Rows rows = Rows.of(sure(phrases(8, 8, 4, 8, 8)), Optional.empty());
        assertEquals(List.of("4 counts instead of 8"), rows.rows().get(2).notes());
        assertTrue(rows.rows().get(2).isOdd());
        assertFalse(rows.rows().get(1).isOdd());
        assertEquals(List.of(), rows.rows().get(1).notes());
    }

    @Test
    void aPickupIsNoOddPhrase() {
        List<Integer> counts = new ArrayList<>(List.of(7, 8));
        IntStream.range(0, 16).forEach(i -> counts.add(1 + i % 8));
        Row pickup = Rows.of(sure(grid(counts, 4)), Optional.empty()).rows().get(0);
        assertEquals(List.of("Pickup: 2 counts before the first 1"), pickup.notes());
        assertFalse(pickup.isOdd());
    }

    @Test
    void aTagInTheSongAndInTheDance() {
        String tag = """

                TAG: after wall 1
                1-4 Step right to side, hold, step left beside right, hold
                """;
        Rows rows = rows(phrases(8, 8, 8, 4, 8, 8, 8), "Intro: 8 counts", tag);
        assertEquals(
                List.of("Intro", "Wall 1, S1", "S2", "Tag after wall 1", "Wall 2, S1", "S2", "Wall 3, S1"),
                places(rows));
        assertEquals(
                List.of("4 counts instead of 8", "Tag after wall 1, 4 counts"),
                rows.rows().get(3).notes());
        assertEquals("6 o'clock", rows.rows().get(4).facing());
    }

    /** Where the dance has a tag and the song has none, it goes on off the phrase. */
    @Test
    void aDanceThatLeavesThePhrases() {
        String tag = """

                TAG: after wall 1
                1-4 Step right to side, hold, step left beside right, hold
                """;
        Rows rows = rows(phrases(8, 8, 8, 8, 8, 8), "Intro: 8 counts", tag);
        Row broken = rows.rows().get(3);
        assertEquals("Tag after wall 1", broken.place());
        assertEquals("Wall 2", broken.cells().get(4).begins());
        assertTrue(broken.cells().get(4).isOffThePhrase());
        assertEquals("S1 from 5", rows.rows().get(4).place());
        assertEquals("S2", rows.rows().get(4).cells().get(4).begins());
    }

    @Test
    void aRestart() {
        Rows rows = rows(phrases(8, 8, 8, 8, 8, 8), "Intro: 8 counts", "\nRestart on wall 2 after 8 counts\n");
        assertEquals(List.of("Intro", "Wall 1, S1", "S2", "Wall 2, S1", "Wall 3, S1", "S2"), places(rows));
        assertEquals(
                List.of("Restart: wall 2 is broken off after count 8"),
                rows.rows().get(3).notes());
    }

    @Test
    void howTheMusicEnds() {
        Rows rows = rows(phrases(8, 8, 8, 5), "Intro: 8 counts", "");
        assertEquals(
                List.of("The music ends on count 5 of this wall"),
                rows.rows().get(3).notes());
    }

    /** Two bars of a waltz stand in a row, where nobody has counted its phrases. */
    @Test
    void barsWithoutPhrases() {
        Rows waltz = Rows.of(sure(BeatGrid.steady(new Tempo(90), 1, 31, 3)), Optional.empty());
        assertEquals(6, waltz.usual());
        assertEquals(6, waltz.across());
        assertEquals(6, waltz.rows().size());
        Rows eights = Rows.of(sure(BeatGrid.steady(new Tempo(90), 1, 32, 4)), Optional.empty());
        assertEquals(8, eights.usual());
        assertEquals(4, eights.rows().size());
        assertEquals(4, eights.rows().get(1).cells().get(7).songCount());
    }

    @Test
    void doubtAndSilenceAreTold() {
        BeatGrid even = phrases(8, 8, 8);
        double[] seconds = IntStream.range(0, 24)
                .mapToDouble(i -> even.beatSeconds(i) + (i >= 20 ? 2 : 0))
                .toArray();
        BeatGrid grid = new BeatGrid(
                seconds,
                IntStream.range(0, 24).map(even::beatInBar).toArray(),
                IntStream.range(0, 24).map(even::countInPhrase).toArray());
        Hearing hearing = new Hearing(grid, List.of(new Stretch(4.4, 6.1)), OptionalDouble.empty());
        Rows rows = Rows.of(hearing, Optional.empty());
        assertEquals(List.of(), rows.rows().get(0).notes());
        assertEquals(List.of("Beat not clear: listen here"), rows.rows().get(1).notes());
        assertTrue(rows.cell(8).isUnsure());
        assertFalse(rows.cell(12).isUnsure());
        assertEquals(List.of("No beat for 2.5 seconds"), rows.rows().get(2).notes());
    }
}
