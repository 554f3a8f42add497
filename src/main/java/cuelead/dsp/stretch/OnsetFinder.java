package cuelead.dsp.stretch;

import cuelead.time.SampleRate;

/**
 * Finds where in a song something is struck or plucked, ahead of playing: peaks of the spectral flux of logarithmic band
 * energies (Bello et al. 2005, "A tutorial on onset detection in music signals", sections III-C and III-D; log bands as
 * in Klapuri 1999) that stand above their surroundings. Only onsets whose energy also jumps within a few milliseconds
 * count: a bow or a voice that swells is better left to the vocoder.
 *
 * <p>Works as far as the song is there and goes on later; equal songs give equal onsets whatever the steps. Not on the
 * audio thread.
 */
public final class OnsetFinder {
    /** Frames apart whose levels are compared. */
    private static final int LAG = 3;
    /** Rise of the mean band level, dB, above that of the surroundings. */
    private static final double LEAST_FLUX_DB = 1.2;

    /** A stroke is broad: in so many bands the level rises by so much. Where few bands rise, tones beat or glide. */
    private static final int LEAST_BANDS = 4;

    private static final double LEAST_BAND_DB = 2;
    private static final double LEAST_STEP_DB = 3;
    private static final double PEAK_SECONDS = 0.025;
    private static final double SURROUNDINGS_SECONDS = 0.12;
    private static final double APART_SECONDS = 0.020;
    /** Levels so far below a band's mean do not count. */
    private static final double FLOOR_SHARE = 0.02;

    private static final double SILENCE = 1e-5;

    private final SongSamples song;
    private final long lengthFrames;
    private final int hop;
    private final int peakReach;
    private final int surroundings;
    private final int apartFrames;
    private final BandEnergies energies;
    private final AttackPlace place;
    private final Onsets onsets = new Onsets();

    private final float[] flux;
    private final float[][] levels = new float[LAG + 1][BandEnergies.BANDS];
    private final double[] sums = new double[BandEnergies.BANDS];
    private int measured;
    private int searched;

    /** @param lengthFrames of the whole song, also where it is not loaded yet */
    public OnsetFinder(SongSamples song, SampleRate rate, long lengthFrames) {
        this.song = song;
        this.lengthFrames = lengthFrames;
        int window = Frames.vocoderWindow(rate) / 8;
        hop = window / 4;
        peakReach = Math.max(1, rate.framesIn(PEAK_SECONDS) / hop);
        surroundings = rate.framesIn(SURROUNDINGS_SECONDS) / hop;
        apartFrames = rate.framesIn(APART_SECONDS);
        energies = new BandEnergies(rate, window);
        place = new AttackPlace(song, rate);
        flux = new float[Math.toIntExact(lengthFrames / hop) + 1];
    }

    /** Those of a song that is there as a whole. */
    public static Onsets of(SongSamples song, SampleRate rate, long lengthFrames) {
        OnsetFinder finder = new OnsetFinder(song, rate, lengthFrames);
        finder.advance(lengthFrames);
        return finder.onsets();
    }

    /** What is found so far. */
    public Onsets onsets() {
        return onsets;
    }

    /** Searches as far as can be said once the song is there up to a frame; all of it when that is its length. */
    public void advance(long availableFrames) {
        boolean isWhole = availableFrames >= lengthFrames;
        long reachable = (availableFrames - 4L * hop) / hop;
        int end = isWhole ? flux.length : (int) Math.max(0, Math.min(flux.length, reachable));
        while (measured < end) {
            measure();
        }
        int searchable = isWhole ? flux.length : measured - surroundings;
        for (; searched < searchable; searched++) {
            if (isPeak(searched)) {
                consider(Math.round((searched - LAG / 2.0) * hop));
            }
        }
        onsets.known(isWhole ? Long.MAX_VALUE : (long) Math.max(0, searched - 2 * LAG) * hop);
    }

    private void measure() {
        float[] now = levels[measured % (LAG + 1)];
        float[] before = levels[(measured + 1) % (LAG + 1)];
        energies.at(song, (long) measured * hop, now);
        double rise = 0;
        int rising = 0;
        for (int band = 0; band < BandEnergies.BANDS; band++) {
            sums[band] += now[band];
            double floor = FLOOR_SHARE * mean(band) + SILENCE;
            double bandRise = 10 * Math.log10((now[band] + floor) / (before[band] + floor));
            rise += Math.max(0, bandRise);
            rising += bandRise > LEAST_BAND_DB ? 1 : 0;
        }
        boolean isBroad = measured >= LAG && rising >= LEAST_BANDS;
        flux[measured] = isBroad ? (float) (rise / BandEnergies.BANDS) : 0;
        measured++;
    }

    /** Of the song so far. */
    private double mean(int band) {
        return sums[band] / (measured + 1);
    }

    private boolean isPeak(int at) {
        int from = Math.max(0, at - peakReach);
        int to = Math.min(flux.length - 1, at + peakReach);
        for (int i = from; i <= to; i++) {
            if (flux[i] > flux[at] || (flux[i] == flux[at] && i < at)) {
                return false;
            }
        }
        return flux[at] >= LEAST_FLUX_DB + meanFluxAround(at);
    }

    private double meanFluxAround(int at) {
        int from = Math.max(0, at - surroundings);
        int to = Math.min(flux.length, at + surroundings);
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += flux[i];
        }
        return sum / (to - from);
    }

    private void consider(long nearFrame) {
        if (place.stepDb(nearFrame) < LEAST_STEP_DB) {
            return;
        }
        long frame = place.refined(nearFrame, sums, measured);
        boolean isApart = onsets.count() == 0 || frame - onsets.frame(onsets.count() - 1) >= apartFrames;
        if (isApart && frame > 0) {
            onsets.add(frame);
        }
    }
}
