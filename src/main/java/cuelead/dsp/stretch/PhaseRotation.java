package cuelead.dsp.stretch;

import java.util.Arrays;

/**
 * By how much each bin of a frame is turned so that the frame goes on from the one before: phase gradient heap
 * integration (Průša and Holighaus 2017, "Phase vocoder done right", section III), with two changes. What is integrated
 * is the turn of a bin against the song, so a bin that takes over its neighbour's turn keeps its phase relation to it
 * (Laroche and Dolson 1999, "Improved phase vocoder time-scale modification of audio", section III-C); and both channels
 * are turned alike, so that the stereo image stays. The heap is a {@link BucketQueue}.
 *
 * <p>One thread; realtime-safe.
 */
final class PhaseRotation {
    /** Bins so far below the loudest (90 dB) just keep their turn. */
    private static final float TOLERANCE = 1e-9f;

    private static final float SILENCE = 1e-20f;
    private static final double NO_DIRECTION = 1e-30;

    private final int bins;
    private final float[] cosines;
    private final float[] sines;
    private final float[] oldCosines;
    private final float[] oldSines;
    private final float[] energies;
    private final float[] previousEnergies;
    private final float[] anewAbove;
    private final boolean[] done;
    private final BucketQueue queue;

    PhaseRotation(int bins) {
        this.bins = bins;
        cosines = new float[bins];
        sines = new float[bins];
        oldCosines = new float[bins];
        oldSines = new float[bins];
        energies = new float[bins];
        previousEnergies = new float[bins];
        anewAbove = new float[bins];
        done = new boolean[bins];
        queue = new BucketQueue(2 * bins);
        reset();
    }

    /** Nothing is turned. */
    void reset() {
        Arrays.fill(cosines, 1);
        Arrays.fill(sines, 0);
        Arrays.fill(anewAbove, Float.MAX_VALUE);
    }

    /** Takes over the turns of another. */
    void set(PhaseRotation other) {
        System.arraycopy(other.cosines, 0, cosines, 0, bins);
        System.arraycopy(other.sines, 0, sines, 0, bins);
        Arrays.fill(anewAbove, Float.MAX_VALUE);
    }

    /**
     * In the next frame, bins that have grown begin as they are in the song, unturned.
     *
     * @param growth by which factor their energy must have grown
     */
    void beginAnewWhereGrown(StereoSpectrum since, float growth) {
        since.energies(anewAbove);
        for (int bin = 0; bin < bins; bin++) {
            anewAbove[bin] *= growth;
        }
    }

    /**
     * Goes on to the next frame of the output.
     *
     * @param previous the frame before, at its place in the song
     * @param now      this frame, at its place
     * @param early    with {@code late}, a hop apart in the song, midway between the two: how phases go on in a hop;
     *                 {@code previous} and {@code now} themselves where those are a hop apart
     * @param late     see there
     */
    void advance(StereoSpectrum previous, StereoSpectrum now, StereoSpectrum early, StereoSpectrum late) {
        System.arraycopy(cosines, 0, oldCosines, 0, bins);
        System.arraycopy(sines, 0, oldSines, 0, bins);
        previous.energies(previousEnergies);
        now.energies(energies);
        Arrays.fill(done, false);
        fillQueue();
        for (int taken = queue.take(); taken >= 0; taken = queue.take()) {
            if (taken < bins) {
                spread(taken, taken - 1);
                spread(taken, taken + 1);
            } else if (!done[taken - bins]) {
                follow(taken - bins, previous, now, early, late);
            }
        }
    }

    /** Numbers below {@link #bins} are bins of this frame whose turn is known, those above bins of the frame before. */
    private void fillQueue() {
        float highest = SILENCE;
        for (int bin = 0; bin < bins; bin++) {
            highest = Math.max(highest, Math.max(energies[bin], previousEnergies[bin]));
        }
        queue.begin(highest);
        float least = highest * TOLERANCE;
        keepConstant();
        for (int bin = 1; bin < bins; bin++) {
            if (energies[bin] > anewAbove[bin]) {
                cosines[bin] = 1;
                sines[bin] = 0;
                done[bin] = true;
                queue.put(bin, energies[bin]);
            } else if (energies[bin] >= least) {
                queue.put(bins + bin, previousEnergies[bin]);
            }
        }
        Arrays.fill(anewAbove, Float.MAX_VALUE);
    }

    /** What is constant has no phase: its bin and what is its skirt are as in the song. */
    private void keepConstant() {
        cosines[0] = 1;
        sines[0] = 0;
        done[0] = true;
        queue.put(0, energies[0]);
    }

    private void spread(int from, int to) {
        if (to >= 0 && to < bins && !done[to] && energies[to] > 0) {
            done[to] = true;
            cosines[to] = cosines[from];
            sines[to] = sines[from];
            queue.put(to, energies[to]);
        }
    }

    /** The bin's own turn before, and what it has turned meanwhile more than the song. */
    private void follow(
            int bin, StereoSpectrum previous, StereoSpectrum now, StereoSpectrum early, StereoSpectrum late) {
        done[bin] = true;
        queue.put(bin, energies[bin]);
        if (previous == early && now == late) {
            return; // as fast as the song: the turn stays
        }
        float hopRe = late.crossRe(bin, early, bin);
        float hopIm = late.crossIm(bin, early, bin);
        float backRe = previous.crossRe(bin, now, bin);
        float backIm = previous.crossIm(bin, now, bin);
        float re = hopRe * backRe - hopIm * backIm;
        float im = hopRe * backIm + hopIm * backRe;
        float x = re * oldCosines[bin] - im * oldSines[bin];
        float y = re * oldSines[bin] + im * oldCosines[bin];
        double size = Math.sqrt((double) x * x + (double) y * y);
        if (size > NO_DIRECTION) {
            cosines[bin] = (float) (x / size);
            sines[bin] = (float) (y / size);
        }
    }

    /** Turns a frame. */
    void apply(StereoSpectrum spectrum) {
        for (int bin = 0; bin < bins; bin++) {
            spectrum.turn(bin, cosines[bin], sines[bin]);
        }
    }
}
