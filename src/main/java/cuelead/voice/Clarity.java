package cuelead.voice;

import cuelead.dsp.Biquad;
import cuelead.dsp.Compressor;
import cuelead.time.SampleRate;

/**
 * What makes a call clear over music without making it louder: no more of the depths, in which music is strongest and
 * words say nothing; more of the band that tells consonants apart; and soft consonants nearer to the loud vowels (all
 * three: common practice of speech in broadcasting). A speech recogniser then understands as much over music
 * that is some 4 dB louder. Nothing is delayed by more than a fraction of a millisecond, so perceptual centres stay.
 *
 * @param highPassHz    -6 dB there, for the filter runs both ways
 * @param presenceHz    middle of the band that is raised
 * @param presenceDb    by how much
 * @param presenceQ     how narrow
 * @param compressor    brings loud and soft together
 */
record Clarity(double highPassHz, double presenceHz, double presenceDb, double presenceQ, Compressor compressor) {
    /** Raised whenever the same sound would become another than before. */
    static final int VERSION = 1;

    static final Clarity USUAL = new Clarity(120, 2_800, 5, 0.5, new Compressor(20, 3, 0.003, 0.060));

    /** The same sound made clear, as long and at the same times; at rates too low for the presence without it. */
    MonoSound of(MonoSound sound) {
        SampleRate rate = sound.rate();
        double[] samples = sound.doubles();
        Biquad.highPass(highPassHz, rate).runBothWays(samples);
        if (presenceHz < rate.hz() / 2.0) {
            Biquad.bell(presenceHz, presenceDb, presenceQ, rate).run(samples);
        }
        compressor.run(samples, rate);
        return MonoSound.of(samples, rate);
    }
}
