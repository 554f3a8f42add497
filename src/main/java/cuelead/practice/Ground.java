package cuelead.practice;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Dance;
import cuelead.dance.Header;
import cuelead.dance.Metre;
import cuelead.dance.Restart;
import cuelead.dance.Tag;
import cuelead.plan.CallSettings;
import cuelead.plan.DancedCount;
import cuelead.plan.Laying;
import cuelead.plan.Timeline;
import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import cuelead.time.TimeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * A dance and the beats that it is danced over: those of a song, or even ones where there is no music.
 *
 * @param grid   the beats, seconds of what is heard
 * @param laying how the dance lies on them
 * @param map    which frame of the song is heard when; without a song it means nothing
 */
record Ground(Dance dance, BeatGrid grid, Laying laying, TimeMap map) {
    private static final TimeMap AS_IT_IS = TimeMap.even(Speed.ORIGINAL);
    /** Without music, silence before the first beat: room for a call that begins before it. */
    private static final double FIRST_BEAT_SECONDS = 0.5;

    private static final int FEWEST_WALLS = 4;
    private static final int MOST_WALLS = 8;
    /** Beats that are clicked after the last count. */
    private static final int BEATS_AFTER = 4;

    /** The first count where a sheet says nothing: two eights, or four sixes (common practice). */
    static CountOne.Intro usualIntro(Metre metre) {
        return new CountOne.Intro(metre == Metre.SIXES ? 24 : 16);
    }

    /**
     * The dance until the music ends: at the end of the file, or with the last beat.
     *
     * @param songSeconds length of the song
     */
    static Ground overSong(Dance dance, BeatGrid grid, double songSeconds) {
        Header header = dance.header();
        double end = Math.min(songSeconds, halfAfterLast(grid));
        CountOne countOne = header.countOne().orElseGet(() -> usualIntro(header.metre()));
        Laying laying = new Laying(countOne, header.countRate(), end, Laying.UNTIL_THE_MUSIC_ENDS).withTheEnding();
        return new Ground(dance, grid, laying, AS_IT_IS);
    }

    /** Enough walls, after a lead-in for the opening calls. */
    static Ground overClicks(Dance dance, Tempo tempo, CallSettings settings) {
        int leadIn = settings.openingCounts(dance.header().metre());
        return overClicks(dance, tempo, leadIn, wallsWithoutMusic(dance));
    }

    /**
     * A dance over clicks.
     *
     * @param leadInCounts before count 1
     * @param walls        how many are danced
     */
    static Ground overClicks(Dance dance, Tempo tempo, int leadInCounts, int walls) {
        Metre metre = dance.header().metre();
        Laying laying = new Laying(new CountOne.Intro(leadInCounts), CountRate.ONE, Double.MAX_VALUE, walls);
        Timeline endless = new Ground(dance, beats(tempo, 2, metre), laying, AS_IT_IS).timeline();
        DancedCount last = endless.ending().last().orElseThrow();
        int beats = Math.toIntExact(last.at().beatIndex() + 1 + BEATS_AFTER);
        BeatGrid grid = beats(tempo, beats, metre);
        return new Ground(dance, grid, laying.until(halfAfterLast(grid)), AS_IT_IS);
    }

    private static double halfAfterLast(BeatGrid grid) {
        return grid.secondsAt(BeatPosition.atBeat(grid.size() - 1).plus(Beats.HALF));
    }

    /** The dance laid over the beats. */
    Timeline timeline() {
        return Timeline.lay(dance, grid, laying);
    }

    /** The same song at one speed from its first frame on: its beats, the dance on them, and its {@link #map}. */
    Ground at(Speed speed, SampleRate rate) {
        return along(TimeMap.even(speed), rate);
    }

    /** The same song along another map. */
    Ground along(TimeMap other, SampleRate rate) {
        if (other.equals(map)) {
            return this;
        }
        DoubleUnaryOperator seconds = heard -> other.outputAt(map.songAt(heard * rate.hz())) / rate.hz();
        return new Ground(dance, grid.timed(seconds), laying.timed(seconds), other);
    }

    /** The same dance, so much later against the music. */
    Ground movedBy(Beats more) {
        return new Ground(dance, grid, laying.movedBy(more), map);
    }

    /** The same dance, from another first count. */
    Ground from(CountOne countOne) {
        return new Ground(dance, grid, laying.from(countOne), map);
    }

    private static BeatGrid beats(Tempo tempo, int beats, Metre metre) {
        return BeatGrid.steady(tempo, FIRST_BEAT_SECONDS, beats, metre.beatsInBar());
    }

    /** Enough to come home and to meet every tag and restart. */
    static int wallsWithoutMusic(Dance dance) {
        if (dance.isPhrased()) {
            return Laying.UNTIL_THE_MUSIC_ENDS;
        }
        IntStream tagged = dance.tags().stream()
                .map(Tag::afterWalls)
                .flatMapToInt(walls -> walls.stream().mapToInt(wall -> wall));
        IntStream restarted = dance.restarts().stream().mapToInt(Restart::wall);
        int lastChange = IntStream.concat(tagged, restarted).max().orElse(0);
        return Math.max(FEWEST_WALLS, Math.min(MOST_WALLS, lastChange + 1));
    }
}
