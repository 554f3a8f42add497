package cuelead.dsp.stretch;

import cuelead.dsp.ComplexFft;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.TimeMap;
import java.util.Arrays;

/**
 * Plays a song along a {@link TimeMap} at its own pitch. Attacks are copied to where the map puts them, sample by sample;
 * the rest goes through a phase vocoder whose window walks the {@link AnchoredPath} and whose bins are turned by a
 * {@link PhaseRotation}. Bins that grew at an onset begin anew there (Röbel 2003, "A new approach to transient processing
 * in the phase vocoder").
 *
 * <p>The map can be turned while it plays, from {@link #aheadFrames} behind the next frame on. Making one allocates all
 * that it needs; the rest is realtime-safe. One thread.
 */
public final class Stretcher {
    private static final int OVERLAP = 8;
    /** Sum of squared Hann windows that overlap {@value #OVERLAP}-fold, divided by that. */
    private static final float MEAN_SQUARED_HANN = 0.375f;
    /** Energy by which a bin must have grown at an onset to begin anew. */
    private static final float GROWTH = 8;
    /** What was before an onset is heard in a window that ends so long before it, in parts of the window. */
    private static final int BEFORE_SHARE = 22;

    private final int window;
    private final int hop;
    private final float[] hann;
    private final StereoSpectrum now;
    private final StereoSpectrum previous;
    private final StereoSpectrum early;
    private final StereoSpectrum late;
    private final PhaseRotation rotation;
    private final AnchoredPath path;
    private final AttackLane attacks;
    private final float[] frame;
    private final float[] sum;
    private final float[] ready;

    private TimeMap map = TimeMap.even(Speed.ORIGINAL);
    private long centreOutput;
    private long centreSong;
    private long renewedOnset;
    private int readFrames;

    /** @param onsets those of the song; they may grow ahead of what is played */
    public Stretcher(SongSamples song, Onsets onsets, SampleRate rate) {
        window = Frames.vocoderWindow(rate);
        hop = window / OVERLAP;
        hann = Frames.hann(window);
        ComplexFft fft = new ComplexFft(window);
        now = new StereoSpectrum(fft, hann);
        previous = new StereoSpectrum(fft, hann);
        early = new StereoSpectrum(fft, hann);
        late = new StereoSpectrum(fft, hann);
        rotation = new PhaseRotation(now.bins());
        path = new AnchoredPath(onsets, rate);
        attacks = new AttackLane(song, onsets, rate, window, hop);
        frame = new float[2 * window];
        sum = new float[2 * window];
        ready = new float[2 * hop];
    }

    /** How far behind the next frame a new map must still be the old one. */
    public int aheadFrames() {
        return window / 2;
    }

    /** The same for any stretcher at a rate. */
    public static int aheadFrames(SampleRate rate) {
        return Frames.vocoderWindow(rate) / 2;
    }

    /** How long after its speed has changed all that is heard is back on the map. */
    public int settlingFrames() {
        return path.settlingFrames() + window;
    }

    /** Plays from a frame of the output on; begins as the song is there. */
    public void begin(TimeMap newMap, long outputFrame) {
        map = newMap;
        centreOutput = outputFrame - window / 2;
        centreSong = map.songFrameAt(outputFrame) - window / 2;
        renewedOnset = Long.MIN_VALUE;
        Arrays.fill(sum, 0);
        rotation.reset();
        attacks.begin(centreSong - window);
        while (centreOutput < outputFrame) {
            stepWithTheSong();
        }
        path.begin(map, centreOutput, centreSong);
        analyse(centreSong, previous);
        while (centreOutput < outputFrame + window / 2 - hop) {
            step();
        }
        readFrames = hop;
    }

    /**
     * Goes on along another map.
     *
     * @param newMap the same until {@link #aheadFrames} behind the next frame
     */
    public void turn(TimeMap newMap) {
        set(this, newMap);
    }

    /**
     * Goes on from where another one is, which has the same song, along another map.
     *
     * @param newMap the same as the other's until {@link #aheadFrames} behind its next frame
     */
    public void set(Stretcher other, TimeMap newMap) {
        map = newMap;
        centreOutput = other.centreOutput;
        centreSong = other.centreSong;
        renewedOnset = other.renewedOnset;
        readFrames = other.readFrames;
        if (other != this) {
            System.arraycopy(other.sum, 0, sum, 0, sum.length);
            System.arraycopy(other.ready, 0, ready, 0, ready.length);
            previous.set(other.previous);
            rotation.set(other.rotation);
            attacks.set(other.attacks);
        }
        attacks.turn(centreOutput);
        path.set(other.path, map);
        path.turn(centreOutput);
    }

    /** Overwrites frames with the next ones. */
    public void read(float[] interleaved, int frames) {
        int done = 0;
        while (done < frames) {
            if (readFrames == hop) {
                step();
                readFrames = 0;
            }
            int run = Math.min(frames - done, hop - readFrames);
            System.arraycopy(ready, 2 * readFrames, interleaved, 2 * done, 2 * run);
            readFrames += run;
            done += run;
        }
    }

    private void stepWithTheSong() {
        centreOutput += hop;
        centreSong += hop;
        attacks.load(centreSong);
        attacks.placeBeside(centreSong, centreOutput);
        attacks.copyRest(centreSong - window / 2, frame, window);
        for (int i = 0; i < 2 * window; i++) {
            sum[i] += frame[i] * hann[i / 2] * hann[i / 2];
        }
        giveOut();
    }

    private void step() {
        long lastSong = centreSong;
        centreOutput += hop;
        centreSong = Math.round(path.songAt(centreOutput));
        attacks.load(centreSong);
        attacks.place(centreSong, map);
        analyse(centreSong, now);
        renewAtOnset();
        if (centreSong - lastSong == hop) {
            rotation.advance(previous, now, previous, now);
        } else {
            long middle = Math.floorDiv(lastSong + centreSong, 2L);
            analyse(middle - hop / 2, early);
            analyse(middle + hop / 2, late);
            rotation.advance(previous, now, early, late);
        }
        previous.set(now);
        rotation.apply(now);
        now.addBack(sum, 0, 1f / window);
        giveOut();
    }

    /** From a hop before an onset until a hop behind it, when also what begins softly under a stroke has grown. */
    private void renewAtOnset() {
        long onset = path.onset();
        if (path.isAtOnset() && centreSong >= onset - hop && renewedOnset != onset) {
            if (centreSong >= onset + hop) {
                renewedOnset = onset;
            }
            analyse(onset - window / 2 - window / BEFORE_SHARE, early);
            rotation.beginAnewWhereGrown(early, GROWTH);
        }
    }

    private void analyse(long songFrame, StereoSpectrum into) {
        attacks.copyRest(songFrame - window / 2, frame, window);
        into.transform(frame);
    }

    private void giveOut() {
        float scale = hop / (window * MEAN_SQUARED_HANN);
        for (int i = 0; i < 2 * hop; i++) {
            ready[i] = sum[i] * scale;
        }
        System.arraycopy(sum, 2 * hop, sum, 0, 2 * (window - hop));
        Arrays.fill(sum, 2 * (window - hop), 2 * window, 0);
        attacks.addTo(ready, centreOutput - window / 2, hop, centreSong);
    }
}
