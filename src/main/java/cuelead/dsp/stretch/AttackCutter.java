package cuelead.dsp.stretch;

import cuelead.dsp.ComplexFft;
import cuelead.time.SampleRate;
import java.util.Arrays;

/**
 * Cuts attacks out of a song: of each short spectrum near an onset, what is louder than it was before. What is cut out
 * and what is left add up to the song, so an attack that is put back where it was changes nothing. Copying attacks
 * instead of turning their phases: Fierro and Välimäki 2022, "Enhanced fuzzy decomposition of sound into sines,
 * transients, and noise"; Driedger, Müller and Ewert 2014, "Improving time-scale modification of music signals using
 * harmonic-percussive separation".
 *
 * <p>Holds work space: one a thread. Realtime-safe.
 */
final class AttackCutter {
    private static final double LEAD_SECONDS = 0.0065;
    private static final double FULL_SECONDS = 0.0175;
    /** Over when the path no longer goes as fast as the song: what is copied longer beats against what is turned. */
    private static final double FADE_SECONDS = 0.015;

    private static final double EDGE_SECONDS = 0.001;
    private static final int OVERLAP = 4;
    /** Sum of squared Hann windows that overlap fourfold. */
    private static final float WINDOW_SUM = 1.5f;
    /** Spectra before the onset of which the loudest counts. */
    private static final int SPECTRA_BEFORE = 3;
    /** How steeply a bin is taken as it grows over what was before: all of it at 1.25 times the amplitude. */
    private static final double STEEPNESS = 4;

    private static final float SILENCE = 1e-20f;

    private final int window;
    private final int hop;
    private final int leadFrames;
    private final int fullFrames;
    private final int fadeFrames;
    private final int edgeFrames;
    private final StereoSpectrum spectrum;
    private final float[] before;
    private final float[] energies;
    private final float[] frames;
    private final float[] sum;

    AttackCutter(SampleRate rate) {
        window = Frames.vocoderWindow(rate) / 4;
        hop = window / OVERLAP;
        leadFrames = rate.framesIn(LEAD_SECONDS);
        fullFrames = rate.framesIn(FULL_SECONDS);
        fadeFrames = rate.framesIn(FADE_SECONDS);
        edgeFrames = Math.max(1, rate.framesIn(EDGE_SECONDS));
        spectrum = new StereoSpectrum(new ComplexFft(window), Frames.hann(window));
        before = new float[spectrum.bins()];
        energies = new float[spectrum.bins()];
        frames = new float[2 * window];
        sum = new float[2 * (length() + 3 * window)];
    }

    private int length() {
        return leadFrames + fullFrames + fadeFrames;
    }

    /** An attack with nothing in it. */
    Attack blank() {
        return new Attack(length(), leadFrames);
    }

    /**
     * Fills an attack.
     *
     * @param nextSongFrame the next onset; this attack ends there
     */
    void cut(SongSamples song, long songFrame, long nextSongFrame, Attack attack) {
        attack.take(songFrame);
        hearBefore(song, songFrame);
        long start = songFrame - leadFrames;
        Arrays.fill(sum, 0);
        for (long at = start - window + hop; at < start + length(); at += hop) {
            spectrum(song, at);
            keepWhatHasGrown();
            spectrum.addBack(sum, (int) (at - start + window), 1 / (WINDOW_SUM * window));
        }
        int end = (int) Math.min(length(), nextSongFrame - start - leadFrames);
        for (int i = 0; i < length(); i++) {
            float share = share(i, end);
            attack.samples()[2 * i] = share * sum[2 * (i + window)];
            attack.samples()[2 * i + 1] = share * sum[2 * (i + window) + 1];
        }
    }

    private float share(int frame, int end) {
        float share = Math.min(1, (frame + 0.5f) / edgeFrames);
        float faded = frame - leadFrames - fullFrames;
        if (faded > 0) {
            share *= (float) (0.5 + 0.5 * Math.cos(Math.PI * faded / fadeFrames));
        }
        return share * Math.max(0, Math.min(1, (end - frame) / (2f * edgeFrames)));
    }

    private void spectrum(SongSamples song, long fromFrame) {
        song.copy(fromFrame, frames, window);
        spectrum.transform(frames);
        spectrum.energies(energies);
    }

    private void hearBefore(SongSamples song, long songFrame) {
        Arrays.fill(before, 0);
        for (int i = 0; i < SPECTRA_BEFORE; i++) {
            spectrum(song, songFrame - leadFrames - window - (long) i * hop);
            for (int bin = 0; bin < before.length; bin++) {
                before[bin] = Math.max(before[bin], energies[bin]);
            }
        }
    }

    private void keepWhatHasGrown() {
        int last = before.length - 1;
        for (int bin = 0; bin <= last; bin++) {
            float beside = Math.max(before[Math.max(0, bin - 1)], before[Math.min(last, bin + 1)]);
            float loudest = Math.max(before[bin], beside) + SILENCE;
            double growth = Math.sqrt(energies[bin] / loudest) - 1;
            spectrum.scale(bin, (float) Math.max(0, Math.min(1, STEEPNESS * growth)));
        }
    }
}
