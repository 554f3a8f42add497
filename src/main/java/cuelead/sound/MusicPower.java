package cuelead.sound;

import cuelead.dsp.BlockPowers;
import cuelead.dsp.IntegratedLoudness;
import cuelead.dsp.KWeighting;

/**
 * The K-weighted power of a song, or of a band of it, at any span, from its 100 ms steps. What is not measured yet (a song that is
 * still loading) counts as loud as what is; a song of which nothing is known, as loud as most.
 */
final class MusicPower {
    /** What released popular music measures, give or take 3 LU. */
    static final double USUAL_LUFS = -12;
    /** The band that covers speech holds about a third of it. */
    static final double USUAL_BAND_LUFS = USUAL_LUFS - 5;

    private final Music music;
    private final int stepFrames;
    private final float[] powers;
    private final long lengthFrames;
    private final double unmeasured;

    /**
     * @param powers    as {@link BlockPowers} measures them, from the song's first frame on; may be incomplete
     * @param usualLufs how loud a song is of which nothing is known
     */
    MusicPower(Music music, float[] powers, double usualLufs) {
        this.music = music;
        stepFrames = BlockPowers.stepFrames(music.rate());
        this.powers = powers;
        lengthFrames = music.songFrameAt(music.lengthFrames());
        unmeasured = KWeighting.powerOfLufs(IntegratedLoudness.lufs(powers).orElse(usualLufs));
    }

    /** Mean power over a span of frames of the music, full scale = 1; outside the song there is none. */
    double mean(long fromFrame, long toFrame) {
        return meanOfSong(music.songFrameAt(fromFrame), music.songFrameAt(toFrame));
    }

    private double meanOfSong(long fromFrame, long toFrame) {
        double sum = 0;
        long end = Math.min(toFrame, lengthFrames);
        for (long at = Math.max(0, fromFrame); at < end; ) {
            long step = at / stepFrames;
            long stepEnd = Math.min(end, (step + 1) * stepFrames);
            sum += (stepEnd - at) * (step < powers.length ? powers[(int) step] : unmeasured);
            at = stepEnd;
        }
        return sum / Math.max(1, toFrame - fromFrame);
    }
}
