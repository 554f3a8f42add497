package cuelead.output;

import cuelead.time.Tempo;

/**
 * What a player shows of a track.
 *
 * @param title one line; control characters become spaces
 * @param tempo beats a minute; written as a whole number, since ID3 knows no others
 */
public record TrackTags(String title, Tempo tempo) {
    public TrackTags {
        title = title.replaceAll("\\p{Cntrl}+", " ").strip();
    }

    String wholeBeatsPerMinute() {
        return Long.toString(Math.round(tempo.beatsPerMinute()));
    }
}
