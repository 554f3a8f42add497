package cuelead.voice;

/** The hum of the mains and the thumps of a held microphone, which lie below every voice. */
final class Rumble {
    /** Below a low voice. */
    private static final double HIGHEST_HZ = 75;

    private Rumble() {}

    /** The sound without its rumble; nothing in it is delayed. */
    static MonoSound removed(MonoSound sound) {
        double[] filtered = new double[sound.frames()];
        for (int i = 0; i < filtered.length; i++) {
            filtered[i] = sound.samples()[i];
        }
        Biquad.highPass(HIGHEST_HZ, sound.rate()).runBothWays(filtered);
        float[] clean = new float[filtered.length];
        for (int i = 0; i < clean.length; i++) {
            clean[i] = (float) filtered[i];
        }
        return new MonoSound(clean, sound.rate());
    }
}
