package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Songs of 120 beats a minute that the network hears well but for a stretch, in which it hears little, and that between the beats. */
class SoftStretchesTest {
    private static final double BEAT_SECONDS = 0.5;
    private static final double FIRST_SECONDS = 1;
    private static final int BEATS = 90;
    private static final float SOFT = 0.05f;
    private static final float LOUD_BETWEEN = 0.2f;

    private static double exact(int beat) {
        return FIRST_SECONDS + beat * BEAT_SECONDS;
    }

    /** What the network hears where beats {@code from} up to {@code to} are soft. */
    private static Activations softIn(int from, int to) {
        float[] heard = new float[frame(exact(BEATS + 2))];
        for (int i = 0; i < BEATS; i++) {
            boolean isSoft = i >= from && i < to;
            heard[frame(exact(i))] = isSoft ? SOFT : 0.9f;
            // three between the beats, louder than the beats: what led the search astray
            if (isSoft && i % 8 < 3) {
                heard[frame(exact(i) + 0.24)] = LOUD_BETWEEN;
            }
        }
        return new Activations(heard, new float[heard.length], new float[heard.length]);
    }

    private static int frame(double seconds) {
        return (int) Math.round(seconds * BandSpectrum.FRAMES_PER_SECOND);
    }

    /** Beats that are right but in a stretch, where they stray, with this support. */
    private static List<PathBeat> strayingIn(int from, int to, double support) {
        List<PathBeat> beats = new ArrayList<>();
        for (int i = 0; i < BEATS; i++) {
            boolean isStray = i >= from && i < to;
            double seconds = exact(i) + (isStray ? 0.1 + 0.08 * Math.sin(i) : 0);
            beats.add(new PathBeat(seconds, i % 4 + 1, BEAT_SECONDS, isStray ? support : 12));
        }
        return beats;
    }

    private static void assertExact(List<PathBeat> beats) {
        assertEquals(BEATS, beats.size());
        for (int i = 0; i < BEATS; i++) {
            assertEquals(exact(i), beats.get(i).seconds(), 0.03, "beat " + i);
        }
    }

    @Test
    void aBridgeIsFoundFromTheBeatsOnEitherSide() {
        assertExact(SoftStretches.foundAnew(strayingIn(40, 56, -3), softIn(40, 56)));
    }

    @Test
    void anEndingIsFoundFromTheBeatsBeforeIt() {
        assertExact(SoftStretches.foundAnew(strayingIn(60, BEATS, -3), softIn(60, BEATS)));
    }

    @Test
    void anIntroIsFoundFromTheBeatsAfterIt() {
        assertExact(SoftStretches.foundAnew(strayingIn(0, 30, -3), softIn(0, 30)));
    }

    /** One beat too many in the bridge. */
    @Test
    void asManyBeatsAsThereIsRoomFor() {
        List<PathBeat> beats = new ArrayList<>(strayingIn(40, 56, -3));
        beats.add(48, new PathBeat((beats.get(47).seconds() + beats.get(48).seconds()) / 2, 1, 0.25, -5));
        assertExact(SoftStretches.foundAnew(beats, softIn(40, 56)));
    }

    @Test
    void whatIsHeardMuchBetterStays() {
        List<PathBeat> beats = strayingIn(40, 56, 5.9);
        assertEquals(beats, SoftStretches.foundAnew(beats, softIn(40, 56)));
    }

    /** After the pause the band goes on between the beats that were. */
    @Test
    void aPauseOfTheBandStays() {
        List<PathBeat> beats = new ArrayList<>();
        for (int i = 0; i < BEATS; i++) {
            double pause = i < 44 ? 0 : 0.25;
            beats.add(new PathBeat(exact(i) + pause, 1, BEAT_SECONDS, i >= 40 && i < 47 ? -3 : 12));
        }
        List<PathBeat> anew = SoftStretches.foundAnew(beats, softIn(40, 47));
        assertTrue(anew.containsAll(beats.subList(0, 40)) && anew.containsAll(beats.subList(50, BEATS)));
        assertEquals(beats, anew);
    }

    @Test
    void aSongHeardBadlyThroughoutStays() {
        List<PathBeat> beats = PathBeats.even(BEAT_SECONDS, BEATS, 4);
        assertEquals(beats, SoftStretches.foundAnew(beats, softIn(0, BEATS)));
    }
}
