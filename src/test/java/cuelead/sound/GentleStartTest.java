package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.sound.StemMix.Stem;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class GentleStartTest {
    private static final int SECOND = Band.RATE.hz();
    private static final int RISE = SECOND * 3 / 2;
    private static final Levels SOFT = new Levels(-12, -12, -12, 10);
    private static final MixPlan SUDDEN = Band.plan(8, 0.5).withLevels(SOFT);
    private static final MixPlan GENTLE = SUDDEN.with(new GentleStart(RISE));

    private static float[] music(MixPlan plan) {
        return Band.pull(new StemMix(plan, Set.of(Stem.MUSIC)), 1_000);
    }

    private static float[] frames(float[] interleaved, int from, int to) {
        return Arrays.copyOfRange(interleaved, from * Sound.CHANNELS, to * Sound.CHANNELS);
    }

    @Test
    void musicRisesEvenlyFrom30DbBelow() {
        GentleStart start = new GentleStart(100);
        assertEquals(-30, start.dbAt(0), 1e-9);
        assertEquals(-15, start.dbAt(50), 1e-9);
        assertEquals(0, start.dbAt(100), 1e-9);
        float[] gentle = music(GENTLE);
        float[] sudden = music(SUDDEN);
        for (int i = 0; i < gentle.length; i += 997) {
            double gain = Decibels.gain(new GentleStart(RISE).dbAt(i / Sound.CHANNELS));
            assertEquals(gain * sudden[i], gentle[i], 1e-6);
        }
        assertArrayEquals(frames(sudden, RISE, 8 * SECOND), frames(gentle, RISE, 8 * SECOND), 0);
    }

    @Test
    void callsAndClicksDoNotRise() {
        Set<Stem> others = EnumSet.of(Stem.VOICE, Stem.CLICK);
        assertArrayEquals(
                Band.pull(new StemMix(SUDDEN, others), 1_000), Band.pull(new StemMix(GENTLE, others), 1_000), 0);
    }

    @Test
    void itRisesWhereTheSongBeginsBehindACountIn() {
        MixPlan early = new MixPlan(
                Band.RATE, SUDDEN.music(), List.of(), List.of(), SOFT, -SECOND, 4L * SECOND, new GentleStart(RISE));
        float[] counted = music(early);
        float[] plain = music(early.between(0, 4L * SECOND));
        assertArrayEquals(plain, frames(counted, SECOND, 5 * SECOND), 0);
        assertArrayEquals(frames(counted, 0, 5 * SECOND), frames(Band.pull(live(early), 777), 0, 5 * SECOND), 1e-6f);
    }

    @Test
    void itRisesAtTheBeginningOfAPiece() {
        float[] piece = music(GENTLE.between(3L * SECOND, 6L * SECOND));
        float[] sudden = music(SUDDEN);
        int halfway = RISE / 2;
        double gain = Decibels.gain(-15);
        assertEquals(gain * sudden[(3 * SECOND + halfway) * 2], piece[halfway * 2], 1e-6);
        assertArrayEquals(frames(sudden, 3 * SECOND + RISE, 6 * SECOND), frames(piece, RISE, 3 * SECOND), 0);
    }

    @Test
    void liveAndFileAreTheSame() {
        assertArrayEquals(Band.pull(new Mix(GENTLE), 4_096), Band.pull(live(GENTLE), 333), 0);
    }

    @Test
    void jumpsAndLoopsDoNotRiseAgain() {
        LiveMix mix = live(GENTLE);
        float[] first = new float[4 * SECOND * Sound.CHANNELS];
        mix.read(first, 4 * SECOND);
        mix.change(new Change(1, 4L * SECOND, GENTLE, 0, Optional.empty()));
        float[] again = new float[2 * SECOND * Sound.CHANNELS];
        mix.read(again, 2 * SECOND);
        float[] sudden = Band.pull(new Mix(SUDDEN), 4_096);
        int settled = SECOND / 10;
        assertArrayEquals(frames(sudden, settled, 2 * SECOND), frames(again, settled, 2 * SECOND), 1e-6f);
    }

    /** A lesson goes over from clicks to music, and then from one place of the music to another. */
    @Test
    void musicBehindClicksRisesOnceAndThenGoesOn() {
        MixPlan clicks = new MixPlan(
                Band.RATE, Optional.empty(), List.of(), SUDDEN.clicks(), SOFT, 0, 8L * SECOND, new GentleStart(RISE));
        LiveMix mix = live(clicks);
        mix.change(new Change(1, 2L * SECOND, GENTLE, 3L * SECOND, Optional.empty()));
        float[] first = new float[4 * SECOND * Sound.CHANNELS];
        mix.read(first, 4 * SECOND);
        mix.change(new Change(2, 5L * SECOND, GENTLE, SECOND, Optional.empty()));
        float[] then = new float[2 * SECOND * Sound.CHANNELS];
        mix.read(then, 2 * SECOND);
        float[] risen = Band.pull(new Mix(GENTLE.between(3L * SECOND, 8L * SECOND)), 4_096);
        float[] sudden = Band.pull(new Mix(SUDDEN), 4_096);
        int settled = SECOND / 10;
        assertArrayEquals(frames(risen, settled, 2 * SECOND), frames(first, 2 * SECOND + settled, 4 * SECOND), 1e-6f);
        assertArrayEquals(frames(sudden, SECOND + settled, 2 * SECOND), frames(then, settled, SECOND), 1e-6f);
    }

    @Test
    void theForecastKnowsIt() {
        MusicPowers powers = Band.powers(Band.song(8, 0.5));
        double sudden = new LoudnessForecast(SUDDEN, powers).programmeLufs(SOFT).orElseThrow();
        double gentle = new LoudnessForecast(GENTLE, powers).programmeLufs(SOFT).orElseThrow();
        assertTrue(gentle < sudden && gentle > sudden - 1, sudden + " " + gentle);
    }

    private static LiveMix live(MixPlan plan) {
        return new LiveMix(0, plan, plan.fromFrame(), Optional.empty(), EnumSet.allOf(Stem.class));
    }
}
