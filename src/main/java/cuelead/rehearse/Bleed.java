package cuelead.rehearse;

import cuelead.dsp.ComplexFft;
import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;

/**
 * Takes out of a take what the microphone caught of the music, where the music is known: in short-time spectra, each
 * frequency by its own {@link EchoPath}. Stretches of 40 seconds are done one by one, so a microphone whose clock is a little
 * off is followed.
 */
final class Bleed {
    private static final int SIZE = 2048;
    private static final int HOP = SIZE / 4;
    private static final int BINS = SIZE / 2 + 1;
    /** Windows are square roots of Hann's and used twice; their squares add up to this at a quarter's hop. */
    private static final float OVERLAP = 2;

    private static final double STRETCH_SECONDS = 40;
    /** The music is taken to come so much before the round trip tells, since that may be a little off. */
    private static final double EARLIER_SECONDS = 0.01;

    private final ComplexFft fft = new ComplexFft(SIZE);
    private final float[] window = new float[SIZE];
    private final float[] re = new float[SIZE];
    private final float[] im = new float[SIZE];
    private final MonoSound take;
    private final MonoSound music;
    private final int laterFrames;
    private final float[] left;

    private Bleed(MonoSound take, MonoSound music, double roundTripSeconds) {
        this.take = take;
        this.music = music;
        laterFrames = take.rate().framesIn(Math.max(0, roundTripSeconds - EARLIER_SECONDS));
        left = new float[take.frames()];
        for (int i = 0; i < SIZE; i++) {
            window[i] = (float) Math.sqrt(0.5 - 0.5 * Math.cos(2 * Math.PI * i / SIZE));
        }
    }

    /**
     * The take without it.
     *
     * @param music            at the take's rate, from where the take began
     * @param roundTripSeconds how much later the music is in the take
     */
    static MonoSound removed(MonoSound take, MonoSound music, double roundTripSeconds) {
        Bleed bleed = new Bleed(take, music, roundTripSeconds);
        SampleRate rate = take.rate();
        int hops = take.frames() / HOP + SIZE / HOP;
        int stretch = rate.framesIn(STRETCH_SECONDS) / HOP;
        int pieces = Math.max(1, (int) Math.round((double) hops / stretch));
        for (int i = 0; i < pieces; i++) {
            bleed.removeFrom((int) ((long) hops * i / pieces), (int) ((long) hops * (i + 1) / pieces));
        }
        return new MonoSound(bleed.left, rate);
    }

    private void removeFrom(int firstHop, int endHop) {
        int hops = endHop - firstHop;
        int before = Math.min(firstHop, EchoPath.TAPS - 1);
        float[][][] mic = spectra(take.samples(), 0, firstHop - before, hops + before);
        float[][][] played = spectra(music.samples(), laterFrames, firstHop - before, hops + before);
        for (int bin = 0; bin < BINS; bin++) {
            new EchoPath(played[0][bin], played[1][bin]).remove(mic[0][bin], mic[1][bin]);
        }
        for (int hop = 0; hop < hops; hop++) {
            for (int bin = 0; bin < BINS; bin++) {
                re[bin] = mic[0][bin][before + hop];
                im[bin] = mic[1][bin][before + hop];
                if (bin > 0 && bin < BINS - 1) {
                    re[SIZE - bin] = re[bin];
                    im[SIZE - bin] = -im[bin];
                }
            }
            fft.inverse(re, im);
            addTo((firstHop + hop) * HOP - SIZE + HOP);
        }
    }

    private void addTo(int first) {
        for (int i = 0; i < SIZE; i++) {
            int at = first + i;
            if (at >= 0 && at < left.length) {
                left[at] += re[i] * window[i] / (SIZE * OVERLAP);
            }
        }
    }

    /** Real and imaginary parts by bin, then hop. */
    private float[][][] spectra(float[] samples, int laterFrames, int firstHop, int hops) {
        float[][][] spectra = new float[2][BINS][hops];
        for (int hop = 0; hop < hops; hop++) {
            int first = (firstHop + hop) * HOP - SIZE + HOP - laterFrames;
            for (int i = 0; i < SIZE; i++) {
                int at = first + i;
                re[i] = at >= 0 && at < samples.length ? samples[at] * window[i] : 0;
                im[i] = 0;
            }
            fft.forward(re, im);
            for (int bin = 0; bin < BINS; bin++) {
                spectra[0][bin][hop] = re[bin];
                spectra[1][bin][hop] = im[bin];
            }
        }
        return spectra;
    }
}
