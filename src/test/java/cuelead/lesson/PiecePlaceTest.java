package cuelead.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Dance;
import cuelead.plan.Laying;
import cuelead.plan.Timeline;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where pieces lie, in beats from the first beat of the music; the dance begins at beat 16, or 24 in waltz. */
class PiecePlaceTest {
    private static Optional<List<Integer>> place(Piece piece, Dance dance, int introCounts, int walls) {
        int bar = dance.header().metre().beatsInBar();
        BeatGrid grid = BeatGrid.steady(new Tempo(120), 0.5, 600, bar);
        Laying laying = new Laying(new CountOne.Intro(introCounts), CountRate.ONE, 299, walls);
        return PiecePlace.of(piece, Timeline.lay(dance, grid, laying))
                .map(place ->
                        List.of((int) place.from().beatIndex(), (int) place.to().beatIndex()));
    }

    private static List<Integer> lamp(Piece piece) {
        return place(piece, DemoDance.LAMP, 16, 8).orElseThrow();
    }

    @Test
    void sectionsLieInTheFirstWall() {
        assertEquals(List.of(16, 24), lamp(new Piece.OneSection(1)));
        assertEquals(List.of(32, 40), lamp(new Piece.OneSection(3)));
        assertEquals(List.of(16, 48), lamp(new Piece.Joined(1, 4)));
    }

    @Test
    void aWallIsWhole() {
        assertEquals(List.of(48, 80), lamp(new Piece.Wall(2)));
        assertEquals(List.of(16, 16 + 8 * 32), lamp(new Piece.WholeDance()));
    }

    /** Wall 3 is broken off after 16 of its 32 counts: eight counts before that and eight after it. */
    @Test
    void aRestartIsEnteredEightBeforeAndLeftEightAfter() {
        assertEquals(
                Optional.of(List.of(16 + 64 + 8, 16 + 64 + 24)),
                place(new Piece.RestartOf(3), DemoDance.ROPE_WALK, 16, 8));
        assertEquals(Optional.of(List.of(16 + 64, 16 + 80)), place(new Piece.Wall(3), DemoDance.ROPE_WALK, 16, 8));
    }

    /** In waltz a six before and a six after; the tag has its own six counts after two walls of 48. */
    @Test
    void aTagIsEnteredASixBeforeAndLeftASixAfter() {
        assertEquals(
                Optional.of(List.of(24 + 96 - 6, 24 + 96 + 6 + 6)), place(new Piece.TagOf(2), DemoDance.WALTZ, 24, 8));
    }

    /** Four counts behind count 8 of the second wall of 16. */
    @Test
    void aTagWithinItsWallIsEnteredAndLeftLikewise() {
        assertEquals(
                Optional.of(List.of(16 + 16, 16 + 16 + 8 + 4 + 8)),
                place(new Piece.TagOf(2), DemoDance.BRIDGED, 16, 8));
        assertEquals(Optional.empty(), place(new Piece.TagOf(1), DemoDance.BRIDGED, 16, 8));
    }

    /** Part A has 16 counts and part B 8. */
    @Test
    void aChangeOfPartsIsEnteredEightBeforeAndLeftEightAfter() {
        assertEquals(
                Optional.of(List.of(16 + 8, 16 + 24)), place(new Piece.PartChange("A", "B"), DemoDance.PHRASED, 16, 8));
        assertEquals(
                Optional.of(List.of(16 + 16, 16 + 32)),
                place(new Piece.PartChange("B", "A"), DemoDance.PHRASED, 16, 8));
    }

    @Test
    void whatIsNotDancedHasNoPlace() {
        assertEquals(Optional.empty(), place(new Piece.Wall(9), DemoDance.LAMP, 16, 8));
        assertEquals(Optional.empty(), place(new Piece.TagOf(1), DemoDance.LAMP, 16, 8));
        assertEquals(Optional.empty(), place(new Piece.OneSection(1), DemoDance.LAMP, 595, 1));
    }
}
