package cuelead.dsp.stretch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.Allocations;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.TimeMap;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StretcherTest {
    private static final SampleRate RATE = new SampleRate(Strokes.RATE_HZ);
    private static final double SWELLS_HZ = 2.3;
    private static final Strokes SONG = new Strokes(6, 0.05, 0.4);
    private static final Onsets ONSETS = OnsetFinder.of(SONG.samples(), RATE, SONG.lengthFrames());

    private static Stretcher stretcher(TimeMap map) {
        Stretcher stretcher = new Stretcher(SONG.samples(), ONSETS, RATE);
        stretcher.begin(map, 0);
        return stretcher;
    }

    private static float[] read(Stretcher stretcher, int frames, int block) {
        float[] all = new float[2 * frames];
        float[] some = new float[2 * block];
        for (int done = 0; done < frames; done += block) {
            int wanted = Math.min(block, frames - done);
            stretcher.read(some, wanted);
            System.arraycopy(some, 0, all, 2 * done, 2 * wanted);
        }
        return all;
    }

    /** The frame within 15 ms of another at which a stroke fits best: the song's own samples, slid along. */
    private static long bestFit(float[] heard, long expected, long songFrame) {
        int reach = RATE.framesIn(0.015);
        int length = RATE.framesIn(0.005);
        double most = 0;
        long best = expected - reach;
        for (long at = expected - reach; at <= expected + reach; at++) {
            double product = 0;
            for (int i = 0; i < length; i++) {
                product += heard[2 * (int) (at + i)] * SONG.interleaved[2 * (int) (songFrame + i)];
            }
            if (product > most) {
                most = product;
                best = at;
            }
        }
        return best;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.5, 0.75, 0.9, 1.1, 1.25})
    void strokesLieWhereTheMapPutsThem(double ratio) {
        TimeMap map = TimeMap.even(Speed.of(ratio));
        float[] heard = read(stretcher(map), (int) map.outputFrameAt(SONG.lengthFrames()), 1_024);
        for (long stroke : SONG.frames) {
            long expected = map.outputFrameAt(stroke);
            assertEquals(
                    0, Math.abs(bestFit(heard, expected, stroke) - expected) / RATE.framesIn(0.001), "at " + stroke);
        }
    }

    @Test
    void strokesLieOnTheirPlacesWhileTheSpeedChanges() {
        TimeMap map = TimeMap.even(Speed.ORIGINAL);
        Stretcher stretcher = stretcher(map);
        int frames = 6 * Strokes.RATE_HZ;
        int block = 441;
        float[] heard = new float[2 * frames];
        float[] some = new float[2 * block];
        for (int done = 0; done + block <= frames; done += block) {
            double ratio = 0.75 + 0.25 * Math.cos(done / 30_000.0);
            map = map.then(done + stretcher.aheadFrames(), Speed.of(ratio));
            stretcher.turn(map);
            stretcher.read(some, block);
            System.arraycopy(some, 0, heard, 2 * done, 2 * block);
        }
        int checked = 0;
        for (long stroke : SONG.frames) {
            long expected = map.outputFrameAt(stroke);
            if (expected < frames - 5_000) {
                assertEquals(
                        0,
                        Math.abs(bestFit(heard, expected, stroke) - expected) / RATE.framesIn(0.001),
                        "at " + stroke);
                checked++;
            }
        }
        assertTrue(checked >= 6);
    }

    /** Song and output differ only by rounding, 100 dB down. */
    @Test
    void atTheOriginalSpeedItIsTheSong() {
        float[] heard = read(stretcher(TimeMap.even(Speed.ORIGINAL)), SONG.lengthFrames(), 1_000);
        for (int i = 0; i < heard.length; i++) {
            assertEquals(SONG.interleaved[i], heard[i], 1e-5f);
        }
    }

    /** What a tone of one frequency has left when a fitted one is taken out: the vocoder adds 40 dB less than the tone. */
    @Test
    void aToneKeepsItsPitchAndStaysPure() {
        float[] song = new float[2 * 3 * Strokes.RATE_HZ];
        for (int i = 0; i < song.length / 2; i++) {
            song[2 * i] = (float) (0.5 * Math.sin(2 * Math.PI * 440 * i / Strokes.RATE_HZ));
        }
        SongSamples samples = (from, into, count) -> {
            for (int i = 0; i < 2 * count; i++) {
                long at = 2 * from + i;
                into[i] = at >= 0 && at < song.length ? song[(int) at] : 0;
            }
        };
        Stretcher stretcher = new Stretcher(samples, Onsets.none(), RATE);
        stretcher.begin(TimeMap.even(Speed.of(0.6)), 0);
        float[] heard = read(stretcher, 4 * Strokes.RATE_HZ, 777);
        int from = Strokes.RATE_HZ;
        int length = Strokes.RATE_HZ;
        double cosine = 0;
        double sine = 0;
        double power = 0;
        for (int i = from; i < from + length; i++) {
            double angle = 2 * Math.PI * 440 * i / Strokes.RATE_HZ;
            cosine += heard[2 * i] * Math.cos(angle) * 2 / length;
            sine += heard[2 * i] * Math.sin(angle) * 2 / length;
            power += (double) heard[2 * i] * heard[2 * i] / length;
            assertEquals(0, heard[2 * i + 1], 1e-6, "the right side is silent");
        }
        assertEquals(0.5, Math.hypot(cosine, sine), 0.01);
        double rest = power - (cosine * cosine + sine * sine) / 2;
        assertTrue(rest < 1e-4 * power, "rest " + rest / power);
    }

    /** A tone of eight harmonics that swells 2.3 times a second: no stroke that a time could be read from. */
    private static float[] swellingTone(int frames) {
        float[] song = new float[2 * frames];
        for (int i = 0; i < frames; i++) {
            double seconds = (double) i / Strokes.RATE_HZ;
            double tone = 0;
            for (int harmonic = 1; harmonic <= 8; harmonic++) {
                tone += Math.sin(2 * Math.PI * 200 * harmonic * seconds + harmonic * harmonic) / harmonic;
            }
            song[2 * i] = (float) (0.2 * tone * (0.55 + 0.45 * Math.sin(2 * Math.PI * SWELLS_HZ * seconds)));
            song[2 * i + 1] = song[2 * i];
        }
        return song;
    }

    /** By how many seconds a swell in what is heard is late, from the angle of its power at the swells' frequency. */
    private static double lateSeconds(float[] heard, double ratio) {
        double hz = SWELLS_HZ * ratio;
        int from = Strokes.RATE_HZ;
        int length = (int) Math.round(4 / hz * Strokes.RATE_HZ);
        double cosine = 0;
        double sine = 0;
        for (int i = from; i < from + length; i++) {
            double angle = 2 * Math.PI * hz * i / Strokes.RATE_HZ;
            cosine += heard[2 * i] * heard[2 * i] * Math.cos(angle);
            sine += heard[2 * i] * heard[2 * i] * Math.sin(angle);
        }
        return Math.atan2(-cosine, sine) / (2 * Math.PI * hz);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.75, 0.9, 1.1})
    void whatIsNotStruckIsNotLateEither(double ratio) {
        float[] song = swellingTone(6 * Strokes.RATE_HZ);
        assertEquals(0, lateSeconds(song, 1), 0.000_1);
        SongSamples samples = (from, into, count) -> System.arraycopy(song, (int) (2 * from), into, 0, 2 * count);
        Stretcher stretcher = new Stretcher(samples, Onsets.none(), RATE);
        stretcher.begin(TimeMap.even(Speed.of(ratio)), RATE.framesIn(0.5));
        float[] heard = new float[2 * 5 * Strokes.RATE_HZ];
        float[] later = read(stretcher, 9 * Strokes.RATE_HZ / 2, 1_024);
        System.arraycopy(later, 0, heard, Strokes.RATE_HZ, later.length);
        assertEquals(0, lateSeconds(heard, ratio), 0.001);
    }

    @Test
    void theBlockSizeDoesNotMatter() {
        TimeMap map = TimeMap.even(Speed.of(0.7));
        assertArrayEquals(read(stretcher(map), 100_000, 1), read(stretcher(map), 100_000, 4_096));
    }

    @Test
    void goesOnFromWhereAnotherIs() {
        TimeMap map = TimeMap.even(Speed.of(0.7));
        Stretcher first = stretcher(map);
        read(first, 50_000, 500);
        Stretcher second = new Stretcher(SONG.samples(), ONSETS, RATE);
        second.set(first, map);
        assertArrayEquals(read(first, 3_000, 500), read(second, 3_000, 500), 1e-6f);
    }

    @Test
    void readingAllocatesNothing() {
        Stretcher stretcher = stretcher(TimeMap.even(Speed.of(0.5)));
        float[] block = new float[2 * 512];
        long bytes = Allocations.leastBytes(() -> stretcher.begin(TimeMap.even(Speed.of(0.5)), 0), () -> {
            for (int i = 0; i < 1_000; i++) {
                stretcher.read(block, 512);
            }
        });
        assertEquals(0, bytes);
    }

    @Test
    void silenceStaysSilent() {
        Stretcher stretcher = new Stretcher((from, into, count) -> Arrays.fill(into, 0, 2 * count, 0), ONSETS, RATE);
        stretcher.begin(TimeMap.even(Speed.of(0.5)), 0);
        float[] heard = read(stretcher, 50_000, 1_000);
        for (float sample : heard) {
            assertEquals(0, sample, 0);
        }
    }
}
