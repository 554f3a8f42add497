package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.Allocations;
import cuelead.dsp.TruePeak;
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
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MixTest {
    private static final MixPlan PLAN = Band.plan(20, 1.2);
    private static final float[] WHOLE = Band.pull(new Mix(PLAN), 4_096);

    private static MixPlan voiceOnly(PlacedClip... clips) {
        return MixPlan.whole(Band.RATE, Optional.empty(), List.of(clips), List.of(), Levels.EVEN);
    }

    @Test
    void aClipSoundsOnItsFrameOnBothSides() {
        float[] mono = {0.5f, -0.25f, 0.125f};
        float[] heard = Band.pull(new Mix(voiceOnly(PlacedClip.whole(1_234, mono))), 100);
        float[] expected = new float[2 * (1_234 + mono.length)];
        for (int i = 0; i < mono.length; i++) {
            expected[2 * (1_234 + i)] = mono[i];
            expected[2 * (1_234 + i) + 1] = mono[i];
        }
        assertArrayEquals(expected, heard, 0);
    }

    @Test
    void aCountInBeforeTheSongBeginsTheMix() {
        MixPlan plan = MixPlan.whole(
                Band.RATE,
                Optional.of(Band.song(1, 0.5)),
                List.of(PlacedClip.whole(-500, new float[] {0.25f})),
                List.of(),
                Levels.EVEN);
        float[] heard = Band.pull(new Mix(plan), 333);
        assertEquals(-500, plan.fromFrame());
        assertEquals(44_600, heard.length / 2);
        assertEquals(0.25f, heard[0]);
    }

    @Test
    void theMixEndsWithWhateverEndsLast() {
        PlacedClip late = PlacedClip.whole(50_000, new float[100]);
        MixPlan plan = MixPlan.whole(Band.RATE, Optional.of(Band.song(1, 1)), List.of(late), List.of(), Levels.EVEN);
        assertEquals(50_100, plan.toFrame());
        assertEquals(50_100, Band.pull(new Mix(plan), 4_096).length / 2);
        assertEquals(1_000, Band.pull(new Mix(plan.between(2_000, 3_000)), 77).length / 2);
    }

    @Test
    void nothingIsReadAfterTheEnd() {
        Mix mix = new Mix(PLAN);
        Band.pull(mix, 4_096);
        assertEquals(0, mix.read(new float[20], 10));
        assertEquals(PLAN.toFrame(), mix.nextFrame());
    }

    @Property(tries = 25, seed = "20261125")
    void blockSizesGiveEqualSamples(
            @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 1, max = 9_000) Integer> sizes) {
        Mix mix = new Mix(PLAN);
        float[] block = new float[2 * 9_000];
        for (int at = 0, turn = 0; at < WHOLE.length; turn++) {
            int got = mix.read(block, sizes.get(turn % sizes.size())) * 2;
            assertTrue(got > 0, "ended early");
            assertTrue(
                    Arrays.equals(WHOLE, at, at + got, block, 0, got),
                    "differs between samples " + at + " and " + (at + got));
            at += got;
        }
    }

    @Property(tries = 25, seed = "20261125")
    void aSeekGivesTheSamplesOfTheWhole(@ForAll @IntRange(min = -10, max = 20 * 44_100) int startFrame) {
        Mix mix = new Mix(PLAN, startFrame, BegunCalls.CUT_IN);
        float[] heard = Band.pull(mix, 2_048);
        assertArrayEquals(Arrays.copyOfRange(WHOLE, 2 * Math.max(0, startFrame), WHOLE.length), heard, 0);
    }

    @Test
    void aBegunCallCanBeLeftOut() {
        float[] mono = new float[1_000];
        Arrays.fill(mono, 0.5f);
        MixPlan plan = voiceOnly(PlacedClip.whole(0, mono), PlacedClip.whole(1_500, mono));
        float[] cutIn = Band.pull(new Mix(plan, 600, BegunCalls.CUT_IN), 64);
        float[] leftOut = Band.pull(new Mix(plan, 600, BegunCalls.LEFT_OUT), 64);
        assertEquals(0.5f, cutIn[0]);
        assertEquals(0, leftOut[0]);
        assertEquals(0.5f, leftOut[2 * 900]);
    }

    @Test
    void stemsAddUpToTheMix() {
        MixPlan soft = PLAN.withLevels(new Levels(-20, -12, -20, 10));
        float[] mix = Band.pull(new Mix(soft), 4_096);
        float[] sum = new float[mix.length];
        for (Stem stem : Stem.values()) {
            float[] samples = Band.pull(new StemMix(soft, Set.of(stem)), 1_000);
            for (int i = 0; i < sum.length; i++) {
                sum[i] += samples[i];
            }
        }
        assertArrayEquals(sum, mix, 1e-7f);
    }

    @Test
    void aMixThatStaysUnderTheCeilingIsItsStemsUnchanged() {
        MixPlan soft = PLAN.withLevels(new Levels(-20, -20, -20, 10));
        assertArrayEquals(
                Band.pull(new StemMix(soft, EnumSet.allOf(Stem.class)), 4_096), Band.pull(new Mix(soft), 777), 0);
    }

    @Test
    void aMixThatIsFarTooLoudStaysUnderTheCeiling() {
        float[] heard = Band.pull(new Mix(PLAN.withLevels(new Levels(12, 12, 12, 0))), 4_096);
        TruePeak peak = new TruePeak(2);
        peak.add(heard, heard.length / 2);
        peak.finish();
        assertTrue(peak.dbtp() <= -1, peak.dbtp() + " dBTP");
    }

    @Test
    void readingAllocatesNothing() {
        MixPlan plan = Band.plan(14, 1.2);
        float[] block = new float[2 * 512];
        AtomicReference<Mix> mix = new AtomicReference<>();
        assertEquals(0, Allocations.leastBytes(() -> mix.set(new Mix(plan)), () -> {
            for (int blocks = 0; blocks < 1_000; blocks++) {
                mix.get().read(block, 512);
            }
        }));
    }

    @Test
    void callsGoToOneSideAndMusicToTheOther() {
        MixPlan plan = Band.plan(6, 0.3).withLevels(Levels.EVEN.with(Sides.CALLS_LEFT));
        MixPlan both = plan.withLevels(Levels.EVEN);
        float[] split = Band.pull(new StemMix(plan, EnumSet.allOf(Stem.class)), 4_096);
        float[] music = Band.pull(new StemMix(both, EnumSet.of(Stem.MUSIC)), 4_096);
        float[] calls = Band.pull(new StemMix(both, EnumSet.of(Stem.VOICE, Stem.CLICK)), 4_096);
        for (int i = 0; i < split.length; i += 2) {
            assertEquals(calls[i], split[i], 1e-6f);
            assertEquals((music[i] + music[i + 1]) / 2, split[i + 1], 1e-6f);
        }
    }
}
