package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.song.Hearing.Stretch;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BeatsInHandTest {
    private static final Optional<Stretch> EVERYWHERE = Optional.empty();

    private final BeatGrid before = BeatGrid.steady(new Tempo(120), 0.5, 100, 4);
    private final Hearing heard = new Hearing(before, List.of(new Stretch(3, 5)), OptionalDouble.of(4.5));
    private final SongNote note = new SongNote("my-song.mp3", 60);
    private final BeatsInHand hand = new BeatsInHand(before, BeatFile.heardComments(heard, note));

    @Test
    void everyStepCanBeTakenBackAndDoneAgain() throws Exception {
        hand.change(Correction.HALF_BEAT, EVERYWHERE);
        BeatGrid between = hand.beats();
        hand.oneAt(between.beatSeconds(6), EVERYWHERE);
        BeatGrid after = hand.beats();
        assertTrue(hand.takeBack());
        assertEquals(between, hand.beats());
        assertTrue(hand.takeBack());
        assertEquals(before, hand.beats());
        assertFalse(hand.takeBack());
        assertFalse(hand.isChanged());
        assertTrue(hand.doAgain());
        assertEquals(between, hand.beats());
        assertTrue(hand.doAgain());
        assertEquals(after, hand.beats());
        assertFalse(hand.doAgain());
    }

    @Test
    void anotherStepForgetsWhatWasTakenBack() throws Exception {
        hand.change(Correction.HALF_BEAT, EVERYWHERE);
        hand.takeBack();
        hand.change(Correction.TWICE, EVERYWHERE);
        assertFalse(hand.doAgain());
    }

    /** A file that a user has changed must not look like one that was only heard. */
    @Test
    void commentsTellWhatWasDoneAndWhatStillHolds() throws Exception {
        hand.change(Correction.HALF_BEAT, EVERYWHERE);
        hand.oneAt(3.75, EVERYWHERE);
        assertEquals(
                List.of(
                        " song my-song.mp3, 60.000 s long",
                        " unsure 3.0 5.0",
                        " corrected: half a beat later",
                        " corrected: count 1 at 3.75"),
                hand.comments());
        assertEquals(heard.unsure(), hand.hearing().unsure());
        assertTrue(hand.hearing().entrySeconds().isEmpty());
    }

    @Test
    void aDanceBeginsWhereItWasSetLast() {
        hand.begin(new DanceBegin(9.5, "Lamp on  the Quay"));
        hand.begin(new DanceBegin(2, "Another"));
        hand.begin(new DanceBegin(10.25, "Lamp on the Quay"));
        assertEquals(OptionalDouble.of(10.25), DanceBegin.of("Lamp on the Quay", hand.comments()));
        assertEquals(OptionalDouble.of(2), DanceBegin.of("Another", hand.comments()));
        assertEquals(OptionalDouble.empty(), DanceBegin.of("A third", hand.comments()));
        assertEquals(heard, hand.hearing(), "the beats are as they were heard");
        assertFalse(hand.comments().contains(BeatMark.HEARD.of(before)), "but they are the user's now");
    }

    @Test
    void whereADanceBeginsStaysWhenTheSongIsHeardAgain() {
        hand.begin(new DanceBegin(9.5, "Lamp"));
        BeatGrid other = BeatGrid.steady(new Tempo(60), 0.25, 50, 4);
        hand.hear(new Hearing(other, List.of(), OptionalDouble.empty()), note);
        assertEquals(other, hand.beats());
        assertEquals(OptionalDouble.of(9.5), DanceBegin.of("Lamp", hand.comments()));
    }
}
