package cuelead.voice;

import static java.nio.charset.StandardCharsets.US_ASCII;

import cuelead.time.SampleRate;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import java.util.Random;

/** Sounds whose times are known, and the built-in voice, set up once for all tests. */
final class Sounds {
    static final SampleRate RATE = new SampleRate(44_100);
    static final SynthVoice SYNTH = new SynthVoice(RATE, Pronunciations.NONE);

    /** Formants of a neutral vowel in Hz (Peterson and Barney 1952, the vowel of "up", men). */
    private static final double[] FORMANTS = {640, 1190, 2390};

    private static final double PITCH_HZ = 120;

    private Sounds() {}

    static float[] silence(double seconds) {
        return new float[RATE.framesIn(seconds)];
    }

    /** White noise of an RMS. */
    static float[] noise(double seconds, double rms) {
        Random random = new Random(7);
        float[] noise = silence(seconds);
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (float) (rms * random.nextGaussian());
        }
        return noise;
    }

    /** Harmonics of a voice with formants; peaks near 0.5; 5 ms edges. */
    static float[] vowel(double seconds) {
        float[] vowel = silence(seconds);
        int edge = RATE.framesIn(0.005);
        for (int i = 0; i < vowel.length; i++) {
            double sum = 0;
            for (int harmonic = 1; harmonic * PITCH_HZ < 4_000; harmonic++) {
                double hz = harmonic * PITCH_HZ;
                double gain = 0;
                for (double formant : FORMANTS) {
                    gain += 1 / (1 + Math.pow((hz - formant) / 80, 2));
                }
                sum += gain * Math.sin(2 * Math.PI * hz * i / RATE.hz() + harmonic);
            }
            double fade = Math.min(1, Math.min(i, vowel.length - 1 - i) / (double) edge);
            vowel[i] = (float) (0.1 * fade * sum);
        }
        return vowel;
    }

    static MonoSound sound(float[]... parts) {
        int frames = 0;
        for (float[] part : parts) {
            frames += part.length;
        }
        float[] samples = new float[frames];
        int at = 0;
        for (float[] part : parts) {
            System.arraycopy(part, 0, samples, at, part.length);
            at += part.length;
        }
        return new MonoSound(samples, RATE);
    }

    /** A second sound over a first. */
    static MonoSound over(MonoSound sound, float[] other) {
        float[] both = sound.samples().clone();
        for (int i = 0; i < Math.min(both.length, other.length); i++) {
            both[i] += other[i];
        }
        return new MonoSound(both, sound.rate());
    }

    /** A clip of a vowel that only its words tell from others. */
    static Clip clip(String words, double seconds) {
        float[] samples = vowel(seconds);
        return new Clip(
                words, RATE, samples, 0.001, 0.1, seconds - 0.001, List.of(new Clip.Phone("ah", 0.001, seconds)));
    }

    /** A 16-bit WAV file of a vowel, as programs write it that do not know its length yet. */
    static byte[] wavToAPipe(int hz, double seconds) {
        float[] tone = vowel(seconds * hz / RATE.hz());
        ByteBuffer wav = ByteBuffer.allocate(44 + 2 * tone.length).order(ByteOrder.LITTLE_ENDIAN);
        wav.put("RIFF".getBytes(US_ASCII)).putInt(0x7ffff024);
        wav.put("WAVEfmt ".getBytes(US_ASCII)).putInt(16).putShort((short) 1).putShort((short) 1);
        wav.putInt(hz).putInt(2 * hz).putShort((short) 2).putShort((short) 16);
        wav.put("data".getBytes(US_ASCII)).putInt(0x7ffff000);
        for (float sample : tone) {
            wav.putShort((short) (20_000 * Math.max(-1, Math.min(1, sample))));
        }
        return wav.array();
    }
}
