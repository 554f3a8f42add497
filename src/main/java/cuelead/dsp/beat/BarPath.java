package cuelead.dsp.beat;

import java.util.List;

/**
 * A row of beats through a whole song, as one search found it.
 *
 * @param beatsPerBar of the search
 * @param logScore    how well it fits; comparable between searches of one song
 * @param beats       in order
 */
public record BarPath(int beatsPerBar, double logScore, List<PathBeat> beats) {
    public BarPath {
        beats = List.copyOf(beats);
    }

    /**
     * One beat.
     *
     * @param seconds       from the song's first frame
     * @param beatInBar     1 = first
     * @param lengthSeconds until the next
     * @param support       how much likelier this beat is than none in its place, less what its change of tempo costs, as
     *                      a logarithm; on the average about 3 in noise and speech, 10 and more in music with a beat
     */
    public record PathBeat(double seconds, int beatInBar, double lengthSeconds, double support) {}
}
