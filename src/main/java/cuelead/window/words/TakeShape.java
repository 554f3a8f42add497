package cuelead.window.words;

import cuelead.voice.MonoSound;

/** How loud a take is from moment to moment, to be drawn. */
final class TakeShape {
    private static final int PARTS = 480;

    private final float[] peaks = new float[PARTS];
    private final double seconds;

    /** Of all of a sound, the loudest moment as high as there is room. */
    TakeShape(MonoSound sound) {
        seconds = sound.lengthSeconds();
        float loudest = 0;
        for (int i = 0; i < sound.frames(); i++) {
            int part = (int) ((long) i * PARTS / sound.frames());
            peaks[part] = Math.max(peaks[part], Math.abs(sound.samples()[i]));
            loudest = Math.max(loudest, peaks[part]);
        }
        for (int i = 0; i < PARTS && loudest > 0; i++) {
            peaks[i] /= loudest;
        }
    }

    int parts() {
        return PARTS;
    }

    /** Of a part, 0 to 1. */
    double peak(int part) {
        return peaks[part];
    }

    /** The length of the take. */
    double seconds() {
        return seconds;
    }
}
