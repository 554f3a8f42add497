package cuelead.practice;

import cuelead.dance.CountOne;
import cuelead.dance.Dance;
import cuelead.plan.Timeline;
import cuelead.song.DanceBegin;
import cuelead.time.BeatGrid;
import java.util.List;
import java.util.OptionalDouble;

/** A dance over the beats of a song, as it is practised. */
public final class SongDance {
    private SongDance() {}

    /**
     * Lays it.
     *
     * @param comments    of the song's beat file, which may say where the dance begins
     * @param songSeconds length of the song
     */
    public static Timeline lay(Dance dance, BeatGrid beats, List<String> comments, double songSeconds) {
        return Ground.overSong(begun(dance, comments), beats, songSeconds).timeline();
    }

    /** The dance, beginning where comments of a beat file say, if they do. */
    static Dance begun(Dance dance, List<String> comments) {
        OptionalDouble begin = DanceBegin.of(dance.header().title(), comments);
        return begin.isPresent() ? dance.beginning(new CountOne.AtSeconds(begin.getAsDouble())) : dance;
    }
}
