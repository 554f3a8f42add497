package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.SampleRate;
import java.util.Arrays;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LimiterTest {
    private static final SampleRate RATE = new SampleRate(44_100);
    private static final double CEILING_DBTP = -1.3;
    private static final int FRAMES = 44_100;

    /** Signals that catch limiters out. */
    @SuppressWarnings("ImmutableEnumChecker") // the functions keep nothing
    enum Hostile {
        LONE_SPIKES(i -> i % 7_001 == 0 ? 4 : 0),
        SQUARE_WAVE(i -> i % 100 < 50 ? 1.5 : -1.5),
        BETWEEN_THE_SAMPLES(i -> 1.4 * Math.sin(Math.PI / 2 * i + Math.PI / 4)),
        BASS(i -> 2 * Math.sin(2 * Math.PI * 40 * i / 44_100)),
        BURSTS(i -> (i / 5_000 % 2 == 0 ? 0.1 : 3) * Math.sin(i * 0.3)),
        NOISE(new Random(1).doubles(FRAMES, -3, 3).toArray()),
        NEARLY_NYQUIST(i -> 1.5 * Math.sin(Math.PI * 0.97 * i));

        private final IntToDoubleFunction samples;

        Hostile(IntToDoubleFunction samples) {
            this.samples = samples;
        }

        Hostile(double[] samples) {
            this(i -> samples[i]);
        }
    }

    @ParameterizedTest
    @EnumSource(Hostile.class)
    void nothingExceedsOneDecibelBelowFullScale(Hostile hostile) {
        float[] out = limited(stereo(hostile.samples), FRAMES);
        TruePeak peak = new TruePeak(2);
        peak.add(out, out.length / 2);
        peak.finish();
        assertTrue(peak.dbtp() <= -1, hostile + " peaks at " + peak.dbtp() + " dBTP");
        assertTrue(peak.dbtp() >= -4, hostile + " was crushed to " + peak.dbtp() + " dBTP");
    }

    @Test
    void whatNeverExceedsTheCeilingPassesUnchanged() {
        Random random = new Random(2);
        float[] in = stereo(i -> random.nextDouble() * 0.6 - 0.3);
        assertArrayEquals(in, limited(in, 1_000), 0);
    }

    @Test
    void bassIsNotBent() {
        float[] in = stereo(Hostile.BASS.samples);
        float[] out = limited(in, FRAMES);
        int anywhere = 20_275;
        double gain = out[2 * anywhere] / in[2 * anywhere];
        for (int i = 10_000; i < 30_000; i++) {
            assertEquals(in[2 * i] * gain, out[2 * i], 1e-5);
        }
    }

    @Property(tries = 30, seed = "20261125")
    void blockSizesGiveEqualSamples(@ForAll @IntRange(min = 1, max = 5_000) int blockFrames) {
        float[] in = stereo(Hostile.BURSTS.samples);
        assertArrayEquals(limited(in, FRAMES), limited(in, blockFrames), 0);
    }

    @Test
    void startedWithinItsMemoryItGivesTheSameSamples() {
        float[] in = stereo(Hostile.BURSTS.samples);
        float[] always = limited(in, FRAMES);
        int memory = new Limiter(RATE, CEILING_DBTP).memoryFrames();
        int start = 15_300;
        float[] late = limited(Arrays.copyOfRange(in, 2 * (start - memory), in.length), FRAMES);
        assertArrayEquals(
                Arrays.copyOfRange(always, 2 * start, always.length),
                Arrays.copyOfRange(late, 2 * memory, late.length),
                0);
    }

    private static float[] stereo(IntToDoubleFunction samples) {
        float[] interleaved = new float[2 * FRAMES];
        for (int i = 0; i < FRAMES; i++) {
            interleaved[2 * i] = (float) samples.applyAsDouble(i);
            interleaved[2 * i + 1] = interleaved[2 * i] / 2;
        }
        return interleaved;
    }

    /** Limits in blocks and takes the delay out. */
    private static float[] limited(float[] in, int blockFrames) {
        Limiter limiter = new Limiter(RATE, CEILING_DBTP);
        int delayed = limiter.delayFrames();
        float[] line = Arrays.copyOf(in, in.length + 2 * delayed);
        for (int at = 0; at < line.length; at += 2 * blockFrames) {
            float[] block = Arrays.copyOfRange(line, at, Math.min(line.length, at + 2 * blockFrames));
            limiter.process(block, block.length / 2);
            System.arraycopy(block, 0, line, at, block.length);
        }
        return Arrays.copyOfRange(line, 2 * delayed, line.length);
    }
}
