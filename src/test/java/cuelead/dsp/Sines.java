package cuelead.dsp;

import cuelead.time.SampleRate;

/** Test tones. */
final class Sines {
    private Sines() {}

    /** Seconds of a level in dB of full scale (peak). */
    record Stretch(double seconds, double dbfs) {}

    /** A stereo sine, alike on both sides, that goes through stretches of different level. */
    static float[] stereo(SampleRate rate, double hz, Stretch... stretches) {
        int frames = 0;
        for (Stretch stretch : stretches) {
            frames += rate.framesIn(stretch.seconds());
        }
        float[] interleaved = new float[2 * frames];
        int frame = 0;
        for (Stretch stretch : stretches) {
            double amplitude = Math.pow(10, stretch.dbfs() / 20);
            for (int left = rate.framesIn(stretch.seconds()); left > 0; left--, frame++) {
                float sample = (float) (amplitude * Math.sin(2 * Math.PI * hz * frame / rate.hz()));
                interleaved[2 * frame] = sample;
                interleaved[2 * frame + 1] = sample;
            }
        }
        return interleaved;
    }
}
