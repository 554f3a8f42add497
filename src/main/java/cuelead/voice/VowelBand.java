package cuelead.voice;

import cuelead.dsp.Biquad;
import cuelead.time.SampleRate;

/**
 * How strong a sound is where vowels are strong and hisses and hums are not, 600 to 2500 Hz, over time. Syllables are
 * sought in such a band by Mermelstein 1975 ("Automatic segmentation of speech into syllabic units", J. Acoust. Soc.
 * Am. 58: 500 to 4000 Hz), perceptual centres by Cummins and Port 1998 ("Rhythmic constraints on stress timing in
 * English", J. Phonetics 26: 700 to 1300 Hz). Two second-order filters run forwards and backwards, so that nothing is
 * delayed; then the RMS under a Hann window of 40 ms, every 2 ms.
 */
final class VowelBand {
    static final double STEP_SECONDS = 0.002;

    private static final double LOW_HZ = 600;
    private static final double HIGH_HZ = 2_500;
    private static final double WINDOW_SECONDS = 0.040;

    private VowelBand() {}

    /** RMS in the band, full scale = 1; value i belongs to the time i * {@link #STEP_SECONDS}. */
    static double[] rms(MonoSound sound) {
        double[] band = sound.doubles();
        Biquad.lowPass(HIGH_HZ, sound.rate()).runBothWays(band);
        Biquad.highPass(LOW_HZ, sound.rate()).runBothWays(band);
        return smoothed(band, sound.rate());
    }

    private static double[] smoothed(double[] band, SampleRate rate) {
        double[] window = new double[rate.framesIn(WINDOW_SECONDS)];
        double sum = 0;
        for (int i = 0; i < window.length; i++) {
            window[i] = 0.5 - 0.5 * Math.cos(2 * Math.PI * (i + 0.5) / window.length);
            sum += window[i];
        }
        double[] amplitude = new double[1 + (int) (rate.secondsAt(band.length) / STEP_SECONDS)];
        for (int step = 0; step < amplitude.length; step++) {
            int first = rate.framesIn(step * STEP_SECONDS) - window.length / 2;
            double power = 0;
            for (int i = Math.max(0, -first); i < window.length && first + i < band.length; i++) {
                power += window[i] * band[first + i] * band[first + i];
            }
            amplitude[step] = Math.sqrt(power / sum);
        }
        return amplitude;
    }
}
