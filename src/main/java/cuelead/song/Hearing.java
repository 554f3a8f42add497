package cuelead.song;

import cuelead.time.BeatGrid;
import java.util.List;

/**
 * What was heard of a song's beat.
 *
 * @param beats  of its longest steady part
 * @param unsure stretches in which the beats may be wrong, in order
 */
public record Hearing(BeatGrid beats, List<Stretch> unsure) {
    public Hearing {
        unsure = List.copyOf(unsure);
    }

    /** A stretch of a song; seconds from its first frame. */
    public record Stretch(double fromSeconds, double toSeconds) {}
}
