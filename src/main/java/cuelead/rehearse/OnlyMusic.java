package cuelead.rehearse;

import cuelead.voice.MonoSound;

/** Whether a take holds nothing but the music: then the microphone was the computer's own sound, or nobody called. */
public final class OnlyMusic {
    /** Of the power; what is left of music that is taken away is mostly less (20 dB). */
    private static final double LEFT_PART = 0.01;

    private OnlyMusic() {}

    /**
     * Whether so little is left when the music is taken away that nobody can have called.
     *
     * @param music            at the take's rate, from where the take began
     * @param roundTripSeconds how much later the take is
     */
    public static boolean is(MonoSound take, MonoSound music, double roundTripSeconds) {
        return power(Bleed.removed(take, music, roundTripSeconds)) < LEFT_PART * power(take);
    }

    private static double power(MonoSound sound) {
        double power = 0;
        for (float sample : sound.samples()) {
            power += (double) sample * sample;
        }
        return power;
    }
}
