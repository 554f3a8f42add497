package cuelead.dsp.beat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A band of made sounds that plays on exact times: bass drum, snare, hi-hat, bass and chords, at 22,050 Hz. */
final class MadeBand {
    private static final int RATE = BandSpectrum.RATE.hz();
    private static final double TAIL_SECONDS = 1;
    /** Roots of a round of four bars, semitones over 55 Hz. */
    private static final int[] ROOTS = {3, 0, 8, 10};

    private final Random random = new Random(7);
    private final List<Double> beats = new ArrayList<>();
    private final float[] samples;

    private MadeBand(double seconds) {
        samples = new float[(int) ((seconds + TAIL_SECONDS) * RATE)];
    }

    /**
     * A song whose beats are given.
     *
     * @param beats       their times, seconds
     * @param beatsPerBar bass drum and a new chord on the first, snare on the others' even ones (in three: both)
     * @param pickupBeats beats before the first bar
     * @param between     where in each beat the hi-hat plays, as parts of it
     */
    static MadeBand play(double[] beats, int beatsPerBar, int pickupBeats, double... between) {
        MadeBand band = new MadeBand(beats[beats.length - 1]);
        for (int i = 0; i < beats.length; i++) {
            double length = i + 1 < beats.length ? beats[i + 1] - beats[i] : beats[i] - beats[i - 1];
            band.playBeat(beats[i], length, Math.floorMod(i - pickupBeats, beatsPerBar), beatsPerBar);
            int bar = Math.floorDiv(i - pickupBeats, beatsPerBar);
            band.bass(beats[i], ROOTS[Math.floorMod(bar, ROOTS.length)], length);
            for (double part : between) {
                band.noise(beats[i] + part * length, 0.02, 0.9, 0.12);
            }
            band.beats.add(beats[i]);
        }
        return band;
    }

    private void playBeat(double at, double length, int inBar, int beatsPerBar) {
        boolean isSnare = beatsPerBar == 3 ? inBar > 0 : inBar % 2 == 1;
        if (isSnare) {
            noise(at, 0.08, 0.3, 0.35);
        } else {
            tone(at, 55, 0.12, 0.9);
        }
        noise(at, 0.02, 0.9, 0.15);
        if (inBar == 0) {
            noise(at, 0.25, 0.8, 0.1);
        }
        // a chord on the first beats, soft
        tone(at, 220, Math.min(0.2, length), inBar == 0 ? 0.2 : 0.05);
    }

    private void bass(double at, int root, double length) {
        double hz = 55 * Math.pow(2, root / 12.0);
        tone(at, 2 * hz, length / 2, 0.25);
        tone(at, 8 * hz, length / 2, 0.1);
        tone(at, 12 * hz, length / 2, 0.1);
    }

    private void tone(double at, double hz, double decaySeconds, double level) {
        int first = (int) Math.round(at * RATE);
        for (int i = 0; i < 5 * decaySeconds * RATE && first + i < samples.length; i++) {
            double seconds = (double) i / RATE;
            samples[first + i] +=
                    (float) (level * Math.sin(2 * Math.PI * hz * seconds) * Math.exp(-seconds / decaySeconds));
        }
    }

    /** @param brightness 0 = white noise, near 1 = only its highest part */
    private void noise(double at, double decaySeconds, double brightness, double level) {
        int first = (int) Math.round(at * RATE);
        double before = 0;
        for (int i = 0; i < 5 * decaySeconds * RATE && first + i < samples.length; i++) {
            double white = random.nextDouble() * 2 - 1;
            samples[first + i] += (float) (level * (white - brightness * before) * Math.exp(-i / decaySeconds / RATE));
            before = white;
        }
    }

    float[] samples() {
        return samples;
    }
}
