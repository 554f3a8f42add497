package cuelead.rehearse;

import cuelead.dsp.speech.MelBands;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.MonoSound;
import cuelead.voice.Pronunciations;
import cuelead.voice.SynthVoice;
import java.util.Random;

/** A take of the built-in voice in a quiet room, whose words lie where a test wants them. */
public final class SpokenTake {
    public static final SampleRate RATE = MelBands.RATE;
    public static final SynthVoice VOICE = new SynthVoice(RATE, Pronunciations.NONE);

    private final float[] samples;

    public SpokenTake(double seconds) {
        samples = new float[RATE.framesIn(seconds)];
        Random random = new Random(1);
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (float) (0.0007 * random.nextGaussian());
        }
    }

    /** Puts a word so that its centre is heard then. */
    public SpokenTake say(String word, double centreSeconds) throws Refused {
        Clip clip = VOICE.say(word).orElseThrow();
        int first = RATE.framesIn(centreSeconds - clip.centreSeconds());
        for (int i = 0; i < clip.samples().length; i++) {
            samples[first + i] += 0.5f * clip.samples()[i];
        }
        return this;
    }

    public MonoSound sound() {
        return new MonoSound(samples, RATE);
    }
}
