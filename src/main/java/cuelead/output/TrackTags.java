package cuelead.output;

import cuelead.time.Tempo;
import java.util.Optional;

/**
 * What a player shows of a track.
 *
 * @param title one line; control characters become spaces
 * @param tempo beats a minute, where it is known; written as a whole number, since ID3 knows no others
 */
public record TrackTags(String title, Optional<Tempo> tempo) {
    public TrackTags {
        title = title.replaceAll("\\p{Cntrl}+", " ").strip();
    }

    /** Of a track whose tempo is known. */
    public TrackTags(String title, Tempo tempo) {
        this(title, Optional.of(tempo));
    }

    Optional<String> wholeBeatsPerMinute() {
        return tempo.map(known -> Long.toString(Math.round(known.beatsPerMinute())));
    }
}
