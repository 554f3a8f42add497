package cuelead.dsp.beat;

/** What is known of each beat of a song before the beats are counted. */
final class HeardBeats {
    private static final double LEAST = 0.01;
    /** The network's peak may lie so many frames beside the beat. */
    private static final int REACH_FRAMES = 2;

    private final BeatSound sound;
    private final BeatStrokes strokes;
    private final BeatLikeness likeness;
    private final double[] downbeatOdds;
    private final double[] phraseOdds;

    /** @param seconds times of the beats */
    HeardBeats(BandSpectrum song, Activations heard, double[] seconds) {
        float[][] loudness = song.compressed(Onsets.GAIN, 0, song.frames());
        sound = new BeatSound(loudness, seconds);
        strokes = new BeatStrokes(loudness, seconds);
        likeness = new BeatLikeness(sound, strokes);
        downbeatOdds = new double[seconds.length];
        phraseOdds = new double[seconds.length];
        for (int i = 0; i < seconds.length; i++) {
            downbeatOdds[i] = downbeat(heard, seconds[i]);
            phraseOdds[i] = phrase(heard, seconds[i]);
        }
    }

    private static double downbeat(Activations heard, double seconds) {
        double down = highest(heard.downbeat(), seconds);
        double other = Math.max(0, highest(heard.beat(), seconds) - down);
        return Math.log((down + LEAST) / (other + LEAST));
    }

    private static double phrase(Activations heard, double seconds) {
        double first = highest(heard.phrase(), seconds);
        return Math.log((first + LEAST) / (1 - first + LEAST));
    }

    private static double highest(float[] activation, double seconds) {
        int centre = (int) Math.round(seconds * BandSpectrum.FRAMES_PER_SECOND);
        double highest = 0;
        int last = Math.min(activation.length - 1, centre + REACH_FRAMES);
        for (int t = Math.max(0, centre - REACH_FRAMES); t <= last; t++) {
            highest = Math.max(highest, activation[t]);
        }
        return highest;
    }

    int beats() {
        return downbeatOdds.length;
    }

    BeatSound sound() {
        return sound;
    }

    BeatStrokes strokes() {
        return strokes;
    }

    BeatLikeness likeness() {
        return likeness;
    }

    /** Logarithm of the network's odds that a beat is the first of its bar. */
    double downbeatOdds(int beat) {
        return downbeatOdds[beat];
    }

    /** Logarithm of the network's odds that a beat is the first of a phrase. */
    double phraseOdds(int beat) {
        return phraseOdds[beat];
    }
}
