package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.report.Problem;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.util.List;
import org.junit.jupiter.api.Test;

class BeatFitTest {
    /** 120 beats, one every half second from 1 s to 60.5 s. */
    private static final BeatGrid MINUTE = BeatGrid.steady(new Tempo(120), 1, 120, 4);

    private static List<String> check(BeatGrid beats, double songSeconds) {
        return BeatFit.check("song.beats", beats, songSeconds).stream()
                .map(Problem::message)
                .toList();
    }

    @Test
    void beatsOfTheWholeSongFit() {
        assertEquals(List.of(), check(MINUTE, 63));
    }

    @Test
    void anotherSongsBeatsAreAnError() {
        assertEquals(
                List.of("song.beats: error: 79 of 120 beats lie outside the song, which is 0:21 long. "
                        + "This looks like the beat file of another song; rename it or take it away."),
                check(MINUTE, 21.25));
    }

    @Test
    void someBeatsBeyondTheEndAreAWarning() {
        assertEquals(
                List.of("song.beats: warning: 1 beat lies outside the song, which is 1:00 long. "
                        + "See that the beat file was made from this recording."),
                check(MINUTE, 60.4));
        assertEquals(
                List.of("song.beats: warning: 3 beats lie outside the song, which is 0:59 long. "
                        + "See that the beat file was made from this recording."),
                check(MINUTE, 59.4));
    }

    @Test
    void aLongStretchWithoutBeatsIsAWarning() {
        assertEquals(
                List.of("song.beats: warning: 0:39 of the song's 1:40 lie after the last beat, where nothing can be "
                        + "called. See that the beat file was made from this recording, to its end."),
                check(MINUTE, 100));
        assertEquals(
                List.of("song.beats: warning: 0:30 of the song's 1:31 lie before the first beat, where nothing can "
                        + "be called. See that the beat file was made from this recording, to its end."),
                check(BeatGrid.steady(new Tempo(120), 30, 120, 4), 91));
    }

    @Test
    void beatsOfATasteOfTheSongAreAnError() {
        assertEquals(
                List.of("song.beats: error: The beats cover only 0:59 of the song, which is 2:40 long. "
                        + "Make the beat file from this recording, from beginning to end."),
                check(MINUTE, 160));
    }
}
