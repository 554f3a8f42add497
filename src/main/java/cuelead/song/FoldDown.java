package cuelead.song;

import cuelead.sound.Sound;

/**
 * Any number of channels to stereo: mono is doubled, stereo stays, surround is folded down with the weights of
 * Recommendation ITU-R BS.775-3, annex 4 (centre and surrounds 3 dB down, no low-frequency channel), scaled so
 * that full scale cannot be exceeded.
 */
final class FoldDown {
    private static final float HALF_POWER = (float) Math.sqrt(0.5);
    private static final float[] LEFT = {1, 0};
    private static final float[] RIGHT = {0, 1};
    private static final float[] CENTRE = {HALF_POWER, HALF_POWER};
    private static final float[] BACK_LEFT = {HALF_POWER, 0};
    private static final float[] BACK_RIGHT = {0, HALF_POWER};
    private static final float[] LOW = {0, 0};

    private final int channels;
    private final float[] toLeft;
    private final float[] toRight;

    FoldDown(int channels) {
        float[][] places = places(channels);
        this.channels = channels;
        this.toLeft = new float[channels];
        this.toRight = new float[channels];
        float sumLeft = 0;
        float sumRight = 0;
        for (int c = 0; c < channels; c++) {
            sumLeft += places[c][0];
            sumRight += places[c][1];
        }
        for (int c = 0; c < channels; c++) {
            toLeft[c] = places[c][0] / sumLeft;
            toRight[c] = places[c][1] / sumRight;
        }
    }

    int channels() {
        return channels;
    }

    /** Folds the first frames of {@code interleaved}; {@code stereo} is written from the given frame on. */
    void fold(float[] interleaved, float[] stereo, int stereoFrame, int frames) {
        int at = 0;
        int out = stereoFrame * Sound.CHANNELS;
        for (int frame = 0; frame < frames; frame++) {
            float left = 0;
            float right = 0;
            for (int c = 0; c < channels; c++) {
                float sample = interleaved[at++];
                left += toLeft[c] * sample;
                right += toRight[c] * sample;
            }
            stereo[out++] = left;
            stereo[out++] = right;
        }
    }

    /** In the order of WAV and FLAC: left, right, centre, low, back left, back right. */
    private static float[][] places(int channels) {
        return switch (channels) {
            case 1 -> new float[][] {{1, 1}};
            case 2 -> new float[][] {LEFT, RIGHT};
            case 3 -> new float[][] {LEFT, RIGHT, CENTRE};
            case 4 -> new float[][] {LEFT, RIGHT, BACK_LEFT, BACK_RIGHT};
            case 5 -> new float[][] {LEFT, RIGHT, CENTRE, BACK_LEFT, BACK_RIGHT};
            case 6 -> new float[][] {LEFT, RIGHT, CENTRE, LOW, BACK_LEFT, BACK_RIGHT};
            default -> alternating(channels);
        };
    }

    /** Layouts without a name: odd channels to the left, even ones to the right. */
    private static float[][] alternating(int channels) {
        float[][] places = new float[channels][];
        for (int c = 0; c < channels; c++) {
            places[c] = c % 2 == 0 ? LEFT : RIGHT;
        }
        return places;
    }
}
