package cuelead.sound;

import cuelead.dsp.BlockPowers;
import cuelead.time.SampleRate;
import java.util.Arrays;

/**
 * How loud a song is where: the K-weighted power of each 100 ms from its first frame on, of the whole song and of the band
 * of it that covers speech (see {@link Dipping.Range#SPEECH_BAND}). Immutable; the arrays are its own.
 */
public final class MusicPowers {
    /** Of a song of which nothing is known, or no song. */
    public static final MusicPowers UNKNOWN = new MusicPowers(new float[0], new float[0]);

    private final float[] whole;
    private final float[] band;

    /** Both of the same length. */
    public MusicPowers(float[] whole, float[] band) {
        if (whole.length != band.length) {
            throw new IllegalArgumentException(whole.length + " powers, " + band.length + " of the band");
        }
        this.whole = whole.clone();
        this.band = band.clone();
    }

    /** Measures a song while it is read. Not thread-safe. */
    public static final class Meter {
        private final BlockPowers whole;
        private final BlockPowers band;

        public Meter(SampleRate rate) {
            whole = new BlockPowers(rate, Sound.CHANNELS);
            band = BlockPowers.between(Dipping.BAND_FROM_HZ, Dipping.BAND_TO_HZ, rate, Sound.CHANNELS);
        }

        /** Measures the next frames. */
        public void add(float[] interleaved, int frames) {
            whole.add(interleaved, frames);
            band.add(interleaved, frames);
        }

        public MusicPowers powers() {
            return new MusicPowers(whole.powers(), band.powers());
        }
    }

    /** How many 100 ms are known. */
    public int blocks() {
        return whole.length;
    }

    /** Of one of them, summed over both channels; full scale = 1. */
    public float whole(int block) {
        return whole[block];
    }

    /** The band's share of it. */
    public float band(int block) {
        return band[block];
    }

    /** A copy of all. */
    public float[] whole() {
        return whole.clone();
    }

    /** A copy of the powers of all of the song, or of its band. */
    float[] of(Dipping.Range range) {
        return range == Dipping.Range.WHOLE ? whole() : band.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MusicPowers that && Arrays.equals(whole, that.whole) && Arrays.equals(band, that.band);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(whole) + Arrays.hashCode(band);
    }
}
