package cuelead.sound;

import cuelead.dsp.stretch.SongSamples;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Made-up music and calls to mix: drums, bass and chords with a soft verse and a loud chorus, words of noise. */
public final class Band {
    public static final SampleRate RATE = new SampleRate(44_100);
    private static final double BEAT_SECONDS = 60.0 / 112;
    private static final int BLOCK_FRAMES = 4_096;

    private Band() {}

    /** A song; the chorus, every second 16 beats, is 6 dB louder than the verse. */
    public static Pcm song(double seconds, double gain) {
        Pcm pcm = new Pcm(RATE, RATE.frameAt(seconds));
        Random random = new Random(7);
        float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
        for (long at = 0; at < pcm.lengthFrames(); at += BLOCK_FRAMES) {
            for (int i = 0; i < BLOCK_FRAMES; i++) {
                double beats = (at + i) / (BEAT_SECONDS * RATE.hz());
                double inBeat = (beats % 1) * BEAT_SECONDS;
                double section = beats / 16 % 2 < 1 ? 0.5 : 1;
                double snare = Math.floor(beats) % 2 == 1 ? random.nextGaussian() * 0.3 * Math.exp(-inBeat * 25) : 0;
                double kick = Math.sin(2 * Math.PI * 55 * inBeat) * 0.6 * Math.exp(-inBeat * 12);
                double seen = (at + i) / (double) RATE.hz();
                double chord = 0.08 * (tone(220, seen) + tone(277.2, seen) + tone(329.6, seen));
                double side = 0.03 * tone(440, seen);
                block[2 * i] = (float) (gain * section * (snare + kick + chord + side));
                block[2 * i + 1] = (float) (gain * section * (snare + kick + chord - side));
            }
            pcm.append(block, BLOCK_FRAMES);
        }
        pcm.finish();
        return pcm;
    }

    private static double tone(double hz, double seconds) {
        return Math.sin(2 * Math.PI * hz * seconds) + 0.3 * Math.sin(6 * Math.PI * hz * seconds);
    }

    /** A song's power in steps of 100 ms. */
    public static MusicPowers powers(Music music) {
        MusicPowers.Meter powers = new MusicPowers.Meter(music.rate());
        SongSamples reader = music.reader();
        float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
        for (long at = 0; at < music.lengthFrames(); at += BLOCK_FRAMES) {
            int frames = (int) Math.min(BLOCK_FRAMES, music.lengthFrames() - at);
            reader.copy(at, block, frames);
            powers.add(block, frames);
        }
        return powers.powers();
    }

    /** A word of noise with silence before and after it: 0.05 s, then so long, then 0.05 s. */
    public static float[] word(double seconds, long seed) {
        Random random = new Random(seed);
        int edge = RATE.framesIn(0.05);
        float[] word = new float[RATE.framesIn(seconds) + 2 * edge];
        double last = 0;
        for (int i = edge; i < word.length - edge; i++) {
            last = 0.8 * last + 0.05 * random.nextGaussian();
            word[i] = (float) (last * Math.sin(Math.PI * (i - edge) / (word.length - 2.0 * edge)));
        }
        return word;
    }

    /** Calls every two beats, three in four, from the eighth beat on. */
    public static List<PlacedClip> calls(double seconds) {
        float[][] words = {word(0.35, 1), word(0.45, 2), word(0.6, 3), word(0.4, 4)};
        int edge = RATE.framesIn(0.05);
        List<PlacedClip> calls = new ArrayList<>();
        for (int n = 4; (2 * n + 2) * BEAT_SECONDS < seconds; n++) {
            if (n % 4 != 3) {
                float[] word = words[n % words.length];
                long start = RATE.frameAt(2 * n * BEAT_SECONDS) + n % 7;
                calls.add(new PlacedClip(start, word, edge, word.length - edge, 0));
            }
        }
        return calls;
    }

    public static List<ClickAt> clicks(double seconds) {
        List<ClickAt> clicks = new ArrayList<>();
        for (int beat = 0; beat * BEAT_SECONDS < seconds; beat++) {
            clicks.add(new ClickAt(
                    RATE.frameAt(beat * BEAT_SECONDS), beat % 4 == 0 ? ClickSound.ACCENTED : ClickSound.PLAIN));
        }
        return clicks;
    }

    /** Song, calls and clicks at even levels. */
    public static MixPlan plan(double seconds, double gain) {
        return MixPlan.whole(RATE, Optional.of(song(seconds, gain)), calls(seconds), clicks(seconds), Levels.EVEN);
    }

    /** All that is left of a sound, pulled in blocks. */
    public static float[] pull(Sound sound, int blockFrames) {
        float[] block = new float[blockFrames * Sound.CHANNELS];
        float[] all = new float[1 << 16];
        int length = 0;
        for (int got = sound.read(block, blockFrames); got > 0; got = sound.read(block, blockFrames)) {
            while (length + got * Sound.CHANNELS > all.length) {
                all = Arrays.copyOf(all, 2 * all.length);
            }
            System.arraycopy(block, 0, all, length, got * Sound.CHANNELS);
            length += got * Sound.CHANNELS;
        }
        return Arrays.copyOf(all, length);
    }
}
