package cuelead.dsp.stretch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.time.SampleRate;
import org.junit.jupiter.api.Test;

class OnsetFinderTest {
    private static final SampleRate RATE = new SampleRate(Strokes.RATE_HZ);
    private static final Strokes SONG = new Strokes(8, 0.05, 0.4);

    /** Within 2 ms, which no ear tells apart. */
    @Test
    void findsEachStrokeAndNothingElse() {
        Onsets found = OnsetFinder.of(SONG.samples(), RATE, SONG.lengthFrames());
        assertEquals(SONG.frames.size(), found.count());
        for (int i = 0; i < found.count(); i++) {
            assertEquals(0, Math.abs(SONG.frames.get(i) - found.frame(i)) / RATE.framesIn(0.002), "stroke " + i);
        }
    }

    @Test
    void aHeldChordIsNotStruck() {
        Strokes chord = new Strokes(4, 0.1, 0);
        Onsets found = OnsetFinder.of(chord.samples(), RATE, chord.lengthFrames());
        assertEquals(0, found.countBefore(chord.lengthFrames()) - found.countBefore(RATE.framesIn(0.1)));
    }

    @Test
    void findsTheSameWhileTheSongLoads() {
        Onsets atOnce = OnsetFinder.of(SONG.samples(), RATE, SONG.lengthFrames());
        OnsetFinder loading = new OnsetFinder(SONG.samples(), RATE, SONG.lengthFrames());
        for (long at = 0; at < SONG.lengthFrames(); at += 7_777) {
            loading.advance(at);
        }
        loading.advance(SONG.lengthFrames());
        assertEquals(atOnce.count(), loading.onsets().count());
        for (int i = 0; i < atOnce.count(); i++) {
            assertEquals(atOnce.frame(i), loading.onsets().frame(i));
        }
    }

    @Test
    void saysHowFarItKnows() {
        OnsetFinder loading = new OnsetFinder(SONG.samples(), RATE, SONG.lengthFrames());
        loading.advance(100_000);
        long known = loading.onsets().knownUntilFrame();
        int count = loading.onsets().countBefore(known);
        loading.advance(SONG.lengthFrames());
        assertEquals(count, loading.onsets().countBefore(known));
        assertEquals(Long.MAX_VALUE, loading.onsets().knownUntilFrame());
    }

    @Test
    void findsInAnEmptySongNothing() {
        assertEquals(0, OnsetFinder.of(new Strokes(0, 0, 0).samples(), RATE, 0).count());
    }
}
