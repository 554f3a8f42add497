package cuelead.steer;

import cuelead.dance.Count;
import cuelead.dance.Dance;
import cuelead.dance.Facing;
import cuelead.plan.Call;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.plan.Laying;
import cuelead.plan.Timeline;
import cuelead.practice.CallsGo;
import cuelead.practice.Heard;
import cuelead.practice.SpokenCall;
import cuelead.practice.Wish;
import cuelead.sheet.SheetReader;
import cuelead.sound.Levels;
import cuelead.time.BeatGrid;
import cuelead.time.Beats;
import cuelead.time.SampleRate;
import cuelead.time.Tempo;
import cuelead.voice.Clip;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A small dance of eight counts at 120 beats a minute, its count 1 at 8 seconds, and calls made by hand. */
public final class Calls {
    public static final SampleRate RATE = new SampleRate(1_000 * 8);

    private static final String SHEET = """
            SMALL
            Count: 8   Wall: 2
            Intro: 16 counts

            [1-8] SIDES AND A HALF
            1-2 Step right to side, step left beside right
            3-4 Step right to side, step left beside right
            5-6 Step right to side, step left beside right
            7-8 Step right forward, pivot 1/2 left (weight on left)
            """;

    private Calls() {}

    /** The small dance over music that ends there. */
    public static Timeline timeline(double endSeconds) {
        return timeline(SHEET, endSeconds);
    }

    /** While it plays as usual. */
    public static Moment moment(Timeline timeline, double songSeconds) {
        return moment(timeline, songSeconds, "");
    }

    public static Moment moment(Timeline timeline, double songSeconds, String notice) {
        Heard heard = new Heard(
                1,
                songSeconds,
                timeline,
                List.of(),
                CallSettings.withLead(Beats.of(2)),
                Heard.Repeating.NOTHING,
                Optional.empty(),
                new Heard.SongClock(songSeconds, timeline.endSeconds()));
        return new Moment(
                PassLines.NONE,
                KeyHelp.PRACTICE,
                heard,
                new PlayState(
                        PlayState.Motion.PLAYING,
                        heard.settings(),
                        Heard.Repeating.NOTHING,
                        Levels.EVEN.dip(),
                        0,
                        Wish.Click.SILENT,
                        CallsGo.WITH_THE_MUSIC,
                        Optional.empty()),
                notice);
    }

    /** A dance laid over 120 beats a minute as {@link #timeline(double)}. */
    public static Timeline timeline(String sheet, double endSeconds) {
        Dance dance = SheetReader.read("small.txt", sheet).dance().orElseThrow();
        BeatGrid grid = BeatGrid.steady(new Tempo(120), 0, 200, 4);
        return Timeline.lay(
                dance,
                grid,
                new Laying(
                        dance.header().countOne().orElseThrow(),
                        dance.header().countRate(),
                        endSeconds,
                        Laying.UNTIL_THE_MUSIC_ENDS));
    }

    /** A word whose centre is 0.1 s after its start and 0.2 s before its end, two beats ahead. */
    public static Call word(String words, double centreSeconds, int count) {
        return new Call(
                words,
                Call.Kind.WORD,
                CallLevel.WORDS,
                centreSeconds,
                centreSeconds - 0.1,
                centreSeconds + 0.2,
                OptionalDouble.of(centreSeconds + 1),
                Beats.of(2),
                1,
                "S1",
                Optional.of(Count.on(count)),
                Facing.FRONT);
    }

    public static Call countIn(String words, double centreSeconds, int count) {
        return new Call(
                words,
                Call.Kind.COUNT_IN,
                CallLevel.WORDS,
                centreSeconds,
                centreSeconds - 0.1,
                centreSeconds + 0.2,
                OptionalDouble.empty(),
                Beats.ZERO,
                0,
                "",
                Optional.of(Count.on(count)),
                Facing.FRONT);
    }

    /** With a clip of half a second that is felt 0.15 s after its first sample. */
    public static SpokenCall spoken(Call call) {
        List<Clip.Phone> phones = List.of(
                new Clip.Phone("r", 0.05, 0.1), new Clip.Phone("aa", 0.1, 0.3), new Clip.Phone("pau", 0.3, 0.5));
        Clip clip = new Clip(call.words(), RATE, new float[RATE.hz() / 2], 0.05, 0.15, 0.35, phones);
        return new SpokenCall(call, clip, RATE.frameAt(call.centreSeconds() - clip.centreSeconds()));
    }
}
