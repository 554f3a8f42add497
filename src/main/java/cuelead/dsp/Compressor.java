package cuelead.dsp;

import cuelead.time.SampleRate;

/**
 * A feed-forward compressor of a whole sound: what lies above a threshold comes nearer to it, so that soft consonants
 * rise against loud vowels (Giannoulis, Massberg and Reiss 2012, "Digital dynamic range compressor design", J. Audio
 * Eng. Soc. 60: branching peak detector in the linear domain, hard knee). The threshold lies below the sound's own
 * loudest moment, so a sound may come at any level. Nothing is made louder, and nothing is delayed. Immutable.
 *
 * @param belowLoudestDb how far below the loudest moment the threshold lies; 0 or more
 * @param ratio          how many dB above the threshold become one; 1 or more
 * @param attackSeconds  time constant with which a rise is followed
 * @param releaseSeconds time constant with which a fall is followed
 */
public record Compressor(double belowLoudestDb, double ratio, double attackSeconds, double releaseSeconds) {
    public Compressor {
        if (!(belowLoudestDb >= 0 && ratio >= 1 && attackSeconds > 0 && releaseSeconds > 0)) {
            throw new IllegalArgumentException("compressor " + belowLoudestDb + " dB below, " + ratio + " to 1, "
                    + attackSeconds + " s, " + releaseSeconds + " s");
        }
    }

    /** Compresses samples in place. */
    public void run(double[] samples, SampleRate rate) {
        double[] level = levels(samples, rate);
        double loudest = 0;
        for (double moment : level) {
            loudest = Math.max(loudest, moment);
        }
        double threshold = loudest * Math.pow(10, -belowLoudestDb / 20);
        double exponent = 1 / ratio - 1;
        for (int i = 0; i < samples.length; i++) {
            if (level[i] > threshold) {
                samples[i] *= Math.pow(level[i] / threshold, exponent);
            }
        }
    }

    private double[] levels(double[] samples, SampleRate rate) {
        double rise = Math.exp(-1 / (attackSeconds * rate.hz()));
        double fall = Math.exp(-1 / (releaseSeconds * rate.hz()));
        double[] levels = new double[samples.length];
        double level = 0;
        for (int i = 0; i < samples.length; i++) {
            double height = Math.abs(samples[i]);
            double kept = height > level ? rise : fall;
            level = kept * level + (1 - kept) * height;
            levels[i] = level;
        }
        return levels;
    }
}
