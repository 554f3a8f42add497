package cuelead.song;

import cuelead.dsp.BlockPowers;
import cuelead.dsp.TruePeak;
import cuelead.sound.MusicPowers;
import cuelead.sound.Pcm;
import cuelead.sound.Sound;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/**
 * What loudness forecasts need of a song: its K-weighted power over time and its peaks (Recommendation ITU-R
 * BS.1770-4).
 *
 * @param powers       of each 100 ms; a last block that is not full is left out
 * @param samplePeak   largest absolute sample; full scale = 1
 * @param truePeakDbtp largest absolute value after oversampling, dB over full scale
 */
public record SongLoudness(MusicPowers powers, double samplePeak, double truePeakDbtp) {
    /** Stands for silence; keeps the number finite. */
    private static final double SILENT_DBTP = -200;

    /**
     * Measures a song while it loads, waiting for its samples.
     *
     * @param progress told the share that is done, 0 to 1, about ten times a second of the song
     * @return empty when loading ended before the song's end
     */
    public static Optional<SongLoudness> measure(Pcm pcm, DoubleConsumer progress) throws InterruptedException {
        int stepFrames = BlockPowers.stepFrames(pcm.rate());
        float[] frames = new float[stepFrames * Sound.CHANNELS];
        MusicPowers.Meter powers = new MusicPowers.Meter(pcm.rate());
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
}
