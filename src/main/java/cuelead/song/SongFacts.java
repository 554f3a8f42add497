package cuelead.song;

import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import java.util.Optional;

/**
 * What was measured about a song and is worth remembering.
 *
 * @param rate         the song's own rate
 * @param lengthFrames its length at that rate
 * @param beats        its beats, when they were heard rather than read from a beat file
 */
public record SongFacts(SampleRate rate, long lengthFrames, SongLoudness loudness, Optional<BeatGrid> beats) {
    public SongFacts withBeats(BeatGrid heard) {
        return new SongFacts(rate, lengthFrames, loudness, Optional.of(heard));
    }
}
