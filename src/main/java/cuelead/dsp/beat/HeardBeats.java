package cuelead.dsp.beat;

/** What is known of each beat of a song before the beats are counted. */
final class HeardBeats {
    private static final double LEAST = 0.01;

    private final BeatSound sound;
    private final BeatStrokes strokes;
    private final BeatLikeness likeness;
    private final double[] downbeatOdds;
    private final double[] phraseOdds;

    /**
     * Looks at each beat.
     *
     * @param loudness of the song, by band, then frame
     * @param seconds  times of the beats
     */
    HeardBeats(float[][] loudness, Activations heard, double[] seconds) {
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
        double down = Activations.highestNear(heard.downbeat(), seconds);
        double other = Math.max(0, Activations.highestNear(heard.beat(), seconds) - down);
        return Math.log((down + LEAST) / (other + LEAST));
    }

    private static double phrase(Activations heard, double seconds) {
        double first = Activations.highestNear(heard.phrase(), seconds);
        return Math.log((first + LEAST) / (1 - first + LEAST));
    }

    /** When a beat ends, of beats at these times; the last one is as long as the one before it. */
    static double endSeconds(double[] seconds, int beat) {
        return beat + 1 < seconds.length ? seconds[beat + 1] : 2 * seconds[beat] - seconds[Math.max(0, beat - 1)];
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
