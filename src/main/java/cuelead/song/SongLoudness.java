package cuelead.song;

import cuelead.dsp.BlockPowers;
import cuelead.dsp.TruePeak;
import cuelead.sound.Pcm;
import cuelead.sound.Sound;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * What loudness forecasts need of a song: its K-weighted power over time and its peaks (Recommendation ITU-R
 * BS.1770-4). The array is a private copy.
 */
public final class SongLoudness {
    /** Stands for silence; keeps the number finite. */
    private static final double SILENT_DBTP = -200;

    private final float[] blockPowers;
    private final double samplePeak;
    private final double truePeakDbtp;

    /**
     * @param blockPowers  mean-square power of each 100 ms, K-weighted, summed over both channels; a last block
     *                     that is not full is left out
     * @param samplePeak   largest absolute sample; full scale = 1
     * @param truePeakDbtp largest absolute value after oversampling, dB over full scale
     */
    public SongLoudness(float[] blockPowers, double samplePeak, double truePeakDbtp) {
        this.blockPowers = blockPowers.clone();
        this.samplePeak = samplePeak;
        this.truePeakDbtp = truePeakDbtp;
    }

    /**
     * Measures a song while it loads, waiting for its samples.
     *
     * @param progress told the share that is done, 0 to 1, about ten times a second of the song
     * @return empty when loading ended before the song's end
     */
    public static Optional<SongLoudness> measure(Pcm pcm, DoubleConsumer progress) throws InterruptedException {
        int stepFrames = BlockPowers.stepFrames(pcm.rate());
        float[] frames = new float[stepFrames * Sound.CHANNELS];
        BlockPowers powers = new BlockPowers(pcm.rate(), Sound.CHANNELS);
        TruePeak truePeak = new TruePeak(Sound.CHANNELS);
        float samplePeak = 0;
        for (long from = 0; from < pcm.lengthFrames(); from += stepFrames) {
            int count = (int) Math.min(stepFrames, pcm.lengthFrames() - from);
            if (!pcm.await(from + count)) {
                return Optional.empty();
            }
            pcm.copy(from, frames, count);
            powers.add(frames, count);
            truePeak.add(frames, count);
            for (int i = 0; i < count * Sound.CHANNELS; i++) {
                samplePeak = Math.max(samplePeak, Math.abs(frames[i]));
            }
            progress.accept((double) (from + count) / pcm.lengthFrames());
        }
        truePeak.finish();
        return Optional.of(new SongLoudness(powers.powers(), samplePeak, Math.max(SILENT_DBTP, truePeak.dbtp())));
    }

    /** How many 100 ms blocks there are. */
    public int blocks() {
        return blockPowers.length;
    }

    /** K-weighted mean-square power of a block, summed over both channels. */
    public float blockPower(int block) {
        return blockPowers[block];
    }

    /** A copy of all block powers. */
    public float[] blockPowers() {
        return blockPowers.clone();
    }

    /** Largest absolute sample; full scale = 1. */
    public double samplePeak() {
        return samplePeak;
    }

    public double truePeakDbtp() {
        return truePeakDbtp;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SongLoudness that
                && Arrays.equals(blockPowers, that.blockPowers)
                && samplePeak == that.samplePeak
                && truePeakDbtp == that.truePeakDbtp;
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(blockPowers);
    }
}
