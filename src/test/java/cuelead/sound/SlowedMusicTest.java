package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.Allocations;
import cuelead.dsp.IntegratedLoudness;
import cuelead.dsp.stretch.OnsetFinder;
import cuelead.dsp.stretch.Onsets;
import cuelead.sound.StemMix.Stem;
import cuelead.time.Speed;
import cuelead.time.TimeMap;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SlowedMusicTest {
    private static final Pcm SONG = Band.song(8, 0.3);
    private static final Onsets ONSETS = OnsetFinder.of(SONG::copy, Band.RATE, SONG.lengthFrames());
    private static final int AHEAD = SlowedMusic.aheadFrames(Band.RATE);

    private static SlowedMusic along(TimeMap map) {
        return new SlowedMusic(SONG, ONSETS, map);
    }

    private static float[] read(MusicReader reader, long from, int frames, int block) {
        float[] all = new float[2 * frames];
        float[] some = new float[2 * block];
        for (int done = 0; done < frames; done += block) {
            int wanted = Math.min(block, frames - done);
            reader.copy(from + done, some, wanted);
            System.arraycopy(some, 0, all, 2 * done, 2 * wanted);
        }
        return all;
    }

    private static float[] song(long from, int frames) {
        float[] samples = new float[2 * frames];
        SONG.copy(from, samples, frames);
        return samples;
    }

    private static MixPlan plan(TimeMap map) {
        return MixPlan.whole(Band.RATE, Optional.of(along(map)), List.of(), List.of(), Levels.EVEN);
    }

    private static MixPlan plan(TimeMap map, Dipping.Range range) {
        return plan(map).withLevels(Levels.EVEN.with(new Dipping(10, range)));
    }

    @Test
    void atTheOriginalSpeedItIsTheSong() {
        float[] heard = read(along(TimeMap.even(Speed.ORIGINAL)).reader(), -100, 50_000, 777);
        assertArrayEquals(song(-100, 50_000), heard, 0);
    }

    @Test
    void isAsMuchLongerAsTheSpeedSays() {
        assertEquals(2 * SONG.lengthFrames(), along(TimeMap.even(Speed.of(0.5))).lengthFrames());
    }

    @Test
    void theBlockSizeDoesNotMatterWhereTheSpeedChanges() {
        TimeMap map = TimeMap.even(Speed.ORIGINAL).then(20_000, Speed.of(0.6)).then(50_000, Speed.ORIGINAL);
        assertArrayEquals(
                read(along(map).reader(), 0, 120_000, 4_096), read(along(map).reader(), 0, 120_000, 331), 0);
    }

    @Test
    void backAtTheOriginalSpeedItIsTheSongAgain() {
        TimeMap map = TimeMap.even(Speed.ORIGINAL).then(20_000, Speed.of(0.5)).then(60_000, Speed.ORIGINAL);
        float[] heard = read(along(map).reader(), 0, 150_000, 1_000);
        assertArrayEquals(song(0, 20_000), Arrays.copyOf(heard, 2 * 20_000), 0);
        float[] end = Arrays.copyOfRange(heard, 2 * 100_000, 2 * 150_000);
        assertArrayEquals(song(80_000, 50_000), end, 0);
    }

    /** No step between samples is larger than the song's own, and no silence comes in. */
    @ParameterizedTest
    @EnumSource
    void theSpeedChangesWithoutClickOrGap(Dipping.Range range) {
        TimeMap map = TimeMap.even(Speed.ORIGINAL);
        LiveMix mix = new LiveMix(0, plan(map, range), 0, Optional.empty(), EnumSet.of(Stem.MUSIC));
        int block = 2_205;
        float[] heard = new float[2 * block * 140];
        for (int i = 0; i < 140; i++) {
            long at = mix.nextFrame();
            map = map.then(at + AHEAD, Speed.of(0.8 + 0.3 * Math.cos(i / 20.0)));
            mix.change(new Change(i + 1, at, plan(map, range), at, Optional.empty()));
            float[] some = new float[2 * block];
            assertEquals(block, mix.read(some, block));
            System.arraycopy(some, 0, heard, 2 * block * i, 2 * block);
        }
        double most = greatestStep(song(0, (int) SONG.lengthFrames()));
        assertTrue(greatestStep(heard) < 1.2 * most, greatestStep(heard) + " in a song with " + most);
        for (int i = 0; i < 140; i++) {
            double sum = 0;
            for (int j = 2 * block * i; j < 2 * block * (i + 1); j++) {
                sum += Math.abs(heard[j]);
            }
            assertTrue(sum > 0.01 * block, "silent in block " + i);
        }
    }

    private static double greatestStep(float[] interleaved) {
        double most = 0;
        for (int i = 2; i < interleaved.length; i++) {
            most = Math.max(most, Math.abs(interleaved[i] - interleaved[i - 2]));
        }
        return most;
    }

    /** A change to the same speed is not heard at all. */
    @Test
    void aChangeGoesOnFromWhereTheMusicIs() {
        TimeMap map = TimeMap.even(Speed.of(0.7));
        LiveMix mix = new LiveMix(0, plan(map), 0, Optional.empty(), EnumSet.of(Stem.MUSIC));
        LiveMix other = new LiveMix(0, plan(map), 0, Optional.empty(), EnumSet.of(Stem.MUSIC));
        float[] first = new float[2 * 30_000];
        float[] second = first.clone();
        mix.read(first, 30_000);
        other.read(second, 30_000);
        long at = mix.nextFrame();
        TimeMap again = map.then(at + AHEAD, Speed.of(0.7));
        mix.change(new Change(1, at, plan(again), at, Optional.empty()));
        mix.read(first, 30_000);
        other.read(second, 30_000);
        assertArrayEquals(second, first, 0.002f);
    }

    /** Nor is another depth, where nothing dips; no stroke is near that a new way would lead to otherwise. */
    @ParameterizedTest
    @EnumSource
    void anotherDepthGoesOnFromThereToo(Dipping.Range range) {
        TimeMap map = TimeMap.even(Speed.of(0.7));
        LiveMix mix = new LiveMix(0, plan(map, range), 0, Optional.empty(), EnumSet.of(Stem.MUSIC));
        LiveMix other = new LiveMix(0, plan(map, range), 0, Optional.empty(), EnumSet.of(Stem.MUSIC));
        float[] first = new float[2 * 30_700];
        float[] second = first.clone();
        mix.read(first, 30_700);
        other.read(second, 30_700);
        long at = mix.nextFrame();
        MixPlan deeper = plan(map).withLevels(Levels.EVEN.with(new Dipping(14, range)));
        mix.change(new Change(1, at, deeper, at, Optional.empty()));
        mix.read(first, 30_000);
        other.read(second, 30_000);
        assertArrayEquals(second, first, 0);
    }

    @Test
    void readingAllocatesNothing() {
        MusicReader reader = along(TimeMap.even(Speed.of(0.6))).reader();
        float[] block = new float[2 * 512];
        long bytes = Allocations.leastBytes(() -> {}, () -> {
            for (int i = 0; i < 1_000; i++) {
                reader.copy(i * 512L, block, 512);
            }
        });
        assertEquals(0, bytes);
    }

    /** Its attacks are copied, so they fill less of the time: that much is left out. */
    @Test
    void loudnessIsForecast() {
        MixPlan plan = plan(TimeMap.even(Speed.of(0.6)));
        double forecast =
                new LoudnessForecast(plan, Band.powers(SONG)).musicLufs().orElseThrow();
        double measured = IntegratedLoudness.lufs(
                        Band.powers(plan.music().orElseThrow()).whole())
                .orElseThrow();
        assertEquals(measured, forecast, 1);
    }
}
