package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.Allocations;
import cuelead.dsp.BlockPowers;
import cuelead.dsp.IntegratedLoudness;
import cuelead.sound.Mix.BegunCalls;
import cuelead.sound.StemMix.Stem;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BandDipTest {
    private static final int SECOND = Band.RATE.hz();
    private static final double EDGE_DB = 0.5;
    private static final MixPlan PLAN = inBand(Band.plan(14, 0.4), 10);
    private static final float[] WHOLE = Band.pull(new Mix(PLAN), 4_096);

    private static MixPlan inBand(MixPlan plan, double db) {
        return plan.withLevels(plan.levels().with(new Dipping(db, Dipping.Range.SPEECH_BAND)));
    }

    /** Three seconds of a tone, alike on both sides, with a silent word from second 1 to second 2. */
    private static float[] dippedTone(double hz, double db) {
        Pcm tone = new Pcm(Band.RATE, 3L * SECOND);
        float[] samples = new float[2 * 3 * SECOND];
        for (int frame = 0; frame < 3 * SECOND; frame++) {
            float sample = (float) (0.5 * Math.sin(2 * Math.PI * hz * frame / SECOND));
            samples[2 * frame] = sample;
            samples[2 * frame + 1] = sample;
        }
        tone.append(samples, 3 * SECOND);
        tone.finish();
        List<PlacedClip> word = List.of(PlacedClip.whole(SECOND, new float[SECOND]));
        MixPlan plan = MixPlan.whole(Band.RATE, Optional.of(tone), word, List.of(), Levels.EVEN);
        return Band.pull(new StemMix(inBand(plan, db), Set.of(Stem.MUSIC)), 1_000);
    }

    private static double levelDb(float[] stereo, double fromSecond, double toSecond) {
        double energy = 0;
        int from = (int) (2 * fromSecond * SECOND);
        int to = (int) (2 * toSecond * SECOND);
        for (int i = from; i < to; i++) {
            energy += stereo[i] * stereo[i];
        }
        return 10 * Math.log10(energy / (to - from) / 0.125);
    }

    @ParameterizedTest
    @ValueSource(doubles = {40, 200, 600, 850, 4_150, 5_000, 9_000, 15_000})
    void musicOutsideTheBandGoesOn(double hz) {
        for (double db : new double[] {10, 24}) {
            float[] heard = dippedTone(hz, db);
            for (double second = 0; second < 3; second += 0.1) {
                assertEquals(0, levelDb(heard, second, second + 0.1), EDGE_DB, hz + " Hz at " + second + " s");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1_150, 1_500, 2_000, 3_000, 3_850})
    void musicInTheBandGoesDownByTheDepth(double hz) {
        for (double db : new double[] {2, 10, 20}) {
            assertEquals(-db, levelDb(dippedTone(hz, db), 1, 2), EDGE_DB, hz + " Hz");
        }
    }

    @Test
    void itGoesDownAheadAndComesBackAsTheWholeMusicWould() {
        float[] heard = dippedTone(2_000, 10);
        assertEquals(0, levelDb(heard, 0.90, 0.94), 0.01);
        assertEquals(-10, levelDb(heard, 0.995, 1), EDGE_DB);
        assertEquals(-5, levelDb(heard, 2.12, 2.13), EDGE_DB);
        assertEquals(0, levelDb(heard, 2.26, 2.30), 0.01);
    }

    @Test
    void whereNoCallIsNearTheMusicIsItself() {
        MixPlan even = inBand(Band.plan(10, 0.4).withClips(List.of()), 10);
        float[] expected = new float[2 * 10 * SECOND];
        even.music().orElseThrow().reader().copy(0, expected, 10 * SECOND);
        float gain = (float) even.levels().musicGain();
        for (int i = 0; i < expected.length; i++) {
            expected[i] *= gain;
        }
        assertArrayEquals(expected, Band.pull(new StemMix(even, Set.of(Stem.MUSIC)), 777), 0);
    }

    /** A click would be heard above the tone. */
    @Test
    void noClickIsHeardWhereItGoesDown() {
        float[] heard = dippedTone(2_000, 24);
        BlockPowers high = BlockPowers.between(7_000, 20_000, Band.RATE, 2);
        high.add(heard, heard.length / 2);
        float[] powers = high.powers();
        // the tone itself begins suddenly; what the filter leaves of its steady part is in tenth 5
        for (int tenth = 2; tenth < powers.length; tenth++) {
            assertTrue(powers[tenth] < 1.5 * powers[5], "at " + tenth / 10.0 + " s: " + powers[tenth] / powers[5]);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 63, 1_024, 5_000})
    void blockSizesGiveEqualSamples(int frames) {
        assertArrayEquals(
                Band.pull(new StemMix(PLAN, Set.of(Stem.MUSIC)), 4_096),
                Band.pull(new StemMix(PLAN, Set.of(Stem.MUSIC)), frames),
                0);
    }

    @Property(tries = 15, seed = "20261126")
    void aSeekGivesTheSamplesOfTheWhole(@ForAll @IntRange(min = -10, max = 14 * 44_100) int startFrame) {
        float[] heard = Band.pull(new Mix(PLAN, startFrame, BegunCalls.CUT_IN), 2_048);
        assertArrayEquals(Arrays.copyOfRange(WHOLE, 2 * Math.max(0, startFrame), WHOLE.length), heard, 0);
    }

    @Test
    void readingAllocatesNothing() {
        float[] block = new float[2 * 512];
        AtomicReference<Mix> mix = new AtomicReference<>();
        assertEquals(0, Allocations.leastBytes(() -> mix.set(new Mix(PLAN)), () -> {
            for (int blocks = 0; blocks < 1_000; blocks++) {
                mix.get().read(block, 512);
            }
        }));
    }

    @Test
    void anotherDepthLeavesNoSeam() {
        LiveMix mix = new LiveMix(0, PLAN, 0, Optional.empty(), EnumSet.allOf(Stem.class));
        mix.change(new Change(1, 3L * SECOND, inBand(PLAN, 10), 3L * SECOND, Optional.empty()));
        assertArrayEquals(WHOLE, Band.pull(mix, 777), 0);
    }

    @Test
    void theMixIsAsLoudAsForecastAndCallsAreAsLoudAsOverWholeDips() {
        MixPlan plan = Band.plan(30, 0.4);
        MusicPowers powers = Band.powers(plan.music().orElseThrow());
        Levels whole = Balance.of(plan, powers);
        Levels band = Balance.of(plan, powers, new Dipping(10, Dipping.Range.SPEECH_BAND), Sides.BOTH);
        assertEquals(whole.voiceDb() - whole.musicDb(), band.voiceDb() - band.musicDb(), 1e-9);
        assertTrue(band.musicDb() < whole.musicDb(), "less of the music goes down, so all is a little softer");
        float[] mix = Band.pull(new Mix(plan.withLevels(band)), 4_096);
        BlockPowers measured = new BlockPowers(Band.RATE, Sound.CHANNELS);
        measured.add(mix, mix.length / 2);
        // a tone of this song stands on the band's very edge, where forecast and filter differ most
        assertEquals(
                Balance.PROGRAMME_LUFS,
                IntegratedLoudness.lufs(measured.powers()).orElseThrow(),
                0.5);
    }
}
