package cuelead.dsp.beat;

import java.util.List;

/**
 * The beats of a song as they were heard.
 *
 * @param beats       in order
 * @param beatsPerBar 2, 3 or 4
 * @param phraseBeats counts in a phrase: 8, in three-beat bars 6
 * @param entryBeat   the beat at which singer or band are likely to come in after the intro; 0 = the first of all
 */
public record Rhythm(List<HeardBeat> beats, int beatsPerBar, int phraseBeats, int entryBeat) {
    public Rhythm {
        beats = List.copyOf(beats);
    }

    /**
     * One beat.
     *
     * @param seconds       from the song's first frame
     * @param beatInBar     1 = first
     * @param countInPhrase 1 = first; 0 = not known
     * @param support       as in {@link BarPath.PathBeat}
     */
    public record HeardBeat(double seconds, int beatInBar, int countInPhrase, double support) {}
}
