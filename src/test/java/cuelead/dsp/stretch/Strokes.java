package cuelead.dsp.stretch;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A song made for tests: a held chord, left and right unlike, and wood blocks struck on known frames. */
final class Strokes {
    static final int RATE_HZ = 44_100;
    private static final double[] CHORD_HZ = {196, 247, 294, 392};

    final float[] interleaved;
    final List<Long> frames = new ArrayList<>();

    Strokes(double seconds, double chordGain, double strokeGain) {
        int length = (int) (seconds * RATE_HZ);
        interleaved = new float[2 * length];
        for (int i = 0; i < length; i++) {
            for (int voice = 0; voice < CHORD_HZ.length; voice++) {
                double sample =
                        chordGain * swell(i, length) * Math.sin(2 * Math.PI * CHORD_HZ[voice] * i / RATE_HZ + voice);
                interleaved[2 * i + voice % 2] += (float) sample;
            }
        }
        Random random = new Random(7);
        for (double at = 0.5; strokeGain > 0 && at < seconds - 0.5; at += 0.25 + 0.25 * random.nextInt(3)) {
            strike((long) (at * RATE_HZ), strokeGain);
        }
    }

    /** The chord comes and goes, it is not struck. */
    private static double swell(int frame, int length) {
        double fade = 0.4 * RATE_HZ;
        return Math.min(1, Math.min(frame, length - frame) / fade);
    }

    private void strike(long frame, double gain) {
        frames.add(frame);
        for (int i = 0; i < RATE_HZ / 20; i++) {
            double sample = gain * Math.exp(-i / (0.008 * RATE_HZ)) * Math.sin(2 * Math.PI * 1_500 * i / RATE_HZ + 1);
            interleaved[2 * ((int) frame + i)] += (float) sample;
            interleaved[2 * ((int) frame + i) + 1] += (float) (0.5 * sample);
        }
    }

    int lengthFrames() {
        return interleaved.length / 2;
    }

    SongSamples samples() {
        return (fromFrame, into, count) -> {
            for (int i = 0; i < 2 * count; i++) {
                long at = 2 * fromFrame + i;
                into[i] = at >= 0 && at < interleaved.length ? interleaved[(int) at] : 0;
            }
        };
    }
}
