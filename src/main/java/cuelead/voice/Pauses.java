package cuelead.voice;

import java.util.List;

/**
 * Silences what the synthesizer puts into its pauses. The recordings that it joins were cut out of whole sentences in
 * a room, so each of its pauses hums up to 25 dB below the word and would count as part of it.
 */
final class Pauses {
    /** Longer than the 7 ms by which the stated start of a sound is off at most. */
    private static final double BEFORE_SECONDS = 0.010;
    /** A little of the decay, so that a final "s" or "t" is not clipped. */
    private static final double AFTER_SECONDS = 0.040;

    private Pauses() {}

    /**
     * The sound with silence wherever nothing is said, and short fades beside what is.
     *
     * @param phones what is said when, in order; without any the sound stays as it is
     */
    static MonoSound silenced(MonoSound sound, List<SpokenPhone> phones) {
        if (phones.isEmpty()) {
            return sound;
        }
        float[] samples = sound.samples().clone();
        double spokenUntil = Double.NEGATIVE_INFINITY;
        for (SpokenPhone phone : phones) {
            if (!phone.isPause()) {
                fade(samples, sound, spokenUntil, phone.startSeconds());
                spokenUntil = Math.max(spokenUntil, phone.endSeconds());
            }
        }
        fade(samples, sound, spokenUntil, Double.POSITIVE_INFINITY);
        return new MonoSound(samples, sound.rate());
    }

    private static void fade(float[] samples, MonoSound sound, double fromSeconds, double toSeconds) {
        int first = firstFrame(sound, fromSeconds);
        int end = firstFrame(sound, toSeconds);
        for (int i = first; i < end; i++) {
            double at = sound.rate().secondsAt(i);
            double after = raisedCosine(1 - (at - fromSeconds) / AFTER_SECONDS);
            double before = raisedCosine(1 - (toSeconds - at) / BEFORE_SECONDS);
            samples[i] *= (float) Math.max(after, before);
        }
    }

    private static int firstFrame(MonoSound sound, double seconds) {
        return (int) Math.max(
                0, Math.min(sound.frames(), Math.ceil(seconds * sound.rate().hz())));
    }

    /** 0 at 0 and before, 1 at 1 and after. */
    private static double raisedCosine(double x) {
        return 0.5 - 0.5 * Math.cos(Math.PI * Math.max(0, Math.min(1, x)));
    }
}
