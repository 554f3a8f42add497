package cuelead.dsp;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.SampleRate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResamplerTest {
    private static float[] sine(double hz, int rateHz, int frames) {
        float[] mono = new float[frames];
        for (int i = 0; i < frames; i++) {
            mono[i] = (float) (0.5 * Math.sin(2 * Math.PI * hz * i / rateHz));
        }
        return mono;
    }

    private static float[] convert(float[] mono, int fromHz, int toHz) {
        return Resampler.convert(mono, new SampleRate(fromHz), new SampleRate(toHz));
    }

    private static double db(double powerRatio) {
        return 10 * Math.log10(powerRatio);
    }

    /** Power without the ends, which see the silence outside. */
    private static double power(float[] mono, int edge) {
        double sum = 0;
        for (int i = edge; i < mono.length - edge; i++) {
            sum += (double) mono[i] * mono[i];
        }
        return sum / (mono.length - 2 * edge);
    }

    @ParameterizedTest
    @CsvSource({
        "44100, 48000, 1000",
        "44100, 48000, 15000",
        "44100, 48000, 19000",
        "48000, 44100, 15000",
        "22050, 44100, 7000",
        "16000, 44100, 6500",
        "44100, 22050, 9000",
        "96000, 44100, 18000",
        "11025, 48000, 4000"
    })
    void aToneInThePassBandComesOutExactlyWhereItWas(int fromHz, int toHz, double hz) {
        float[] out = convert(sine(hz, fromHz, fromHz / 4), fromHz, toHz);
        float[] wanted = sine(hz, toHz, out.length);
        float[] difference = new float[out.length];
        for (int i = 0; i < out.length; i++) {
            difference[i] = out[i] - wanted[i];
        }
        int edge = toHz / 50;
        double snrDb = db(power(wanted, edge) / power(difference, edge));
        assertTrue(snrDb > 85, "signal to noise " + snrDb + " dB");
    }

    @ParameterizedTest
    @CsvSource({"48000, 44100, 23500", "44100, 22050, 12500", "96000, 44100, 30000"})
    void whatTheLowerRateCannotHoldIsTakenAway(int fromHz, int toHz, double hz) {
        float[] in = sine(hz, fromHz, fromHz / 4);
        float[] out = convert(in, fromHz, toHz);
        double leftDb = db(power(out, toHz / 50) / power(in, 0));
        assertTrue(leftDb < -90, "alias at " + leftDb + " dB");
    }

    @Test
    void aConstantStaysConstant() {
        float[] ones = new float[5_000];
        java.util.Arrays.fill(ones, 1);
        float[] out = convert(ones, 44_100, 48_000);
        for (int i = 500; i < out.length - 500; i++) {
            assertEquals(1, out[i], 1e-6, "frame " + i);
        }
    }

    @Test
    void theSameRateIsTheSameSound() {
        float[] in = sine(440, 44_100, 999);
        assertArrayEquals(in, convert(in, 44_100, 44_100));
    }

    @Property(tries = 100, seed = "20261125")
    void everyOutputTimeLiesInsideTheInput(
            @ForAll @IntRange(min = 1, max = 1_000_000) int frames,
            @ForAll @IntRange(min = 4_000, max = 192_000) int fromHz,
            @ForAll @IntRange(min = 80, max = 960) int toHundreds) {
        int toHz = toHundreds * 100;
        // A small common divisor would make a table of gigabytes; real rates have a large one.
        SampleRate from = new SampleRate(fromHz / 100 * 100);
        Resampler resampler = new Resampler(from, new SampleRate(toHz));
        long out = resampler.framesOut(frames);
        assertTrue((out - 1) * from.hz() < (long) frames * toHz, "the last lies behind the end");
        assertTrue(out * from.hz() >= (long) frames * toHz, "one more would have had its place");
    }

    @Test
    void stereoAndMonoAreTheSameFilter() {
        Resampler resampler = new Resampler(new SampleRate(44_100), new SampleRate(48_000));
        float[] left = sine(300, 44_100, 2_000);
        float[] right = sine(900, 44_100, 2_000);
        float[] stereo = new float[4_000];
        for (int i = 0; i < left.length; i++) {
            stereo[2 * i] = left[i];
            stereo[2 * i + 1] = right[i];
        }
        float[] out = new float[2 * 1_000];
        resampler.stereo(stereo, 0, 2_000, out, 1_000, 500);
        for (int i = 0; i < 1_000; i++) {
            assertEquals(resampler.sample(left, 1, 0, 0, 2_000, 500 + i), out[2 * i], 1e-6);
            assertEquals(resampler.sample(right, 1, 0, 0, 2_000, 500 + i), out[2 * i + 1], 1e-6);
        }
    }
}
