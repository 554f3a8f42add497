package cuelead.voice;

import cuelead.dsp.Biquad;

/** The hum of the mains and the thumps of a held microphone, which lie below every voice. */
final class Rumble {
    /** Below a low voice. */
    private static final double HIGHEST_HZ = 75;

    private Rumble() {}

    /** The sound without its rumble; nothing in it is delayed. */
    static MonoSound removed(MonoSound sound) {
        double[] filtered = sound.doubles();
        Biquad.highPass(HIGHEST_HZ, sound.rate()).runBothWays(filtered);
        return MonoSound.of(filtered, sound.rate());
    }
}
