package cuelead.studio;

import cuelead.dsp.Resampler;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;

/** Lets a replayed call be heard. */
public final class ReplayPlay {
    /** What every device can play. */
    public static final SampleRate RATE = new SampleRate(48_000);

    private static final long MOST_MILLIS = 30_000;

    private ReplayPlay() {}

    /** Plays it and waits for its end. */
    public static void play(MonoSound replay, Speakers speakers) throws InterruptedException {
        speakers.play(stereo(Resampler.convert(replay.samples(), replay.rate(), RATE)), 0);
        speakers.awaitEnd(MOST_MILLIS);
    }

    private static Sound stereo(float[] mono) {
        return new Sound() {
            private int at;

            @Override
            public int read(float[] interleaved, int frames) {
                int count = Math.min(frames, mono.length - at);
                for (int i = 0; i < count; i++) {
                    interleaved[2 * i] = mono[at + i];
                    interleaved[2 * i + 1] = mono[at + i];
                }
                at += count;
                return count;
            }
        };
    }
}
