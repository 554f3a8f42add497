package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.dance.Metre;
import cuelead.lesson.Lesson;
import cuelead.lesson.Pass;
import cuelead.lesson.Pass.Over;
import cuelead.lesson.Piece;
import cuelead.lesson.PieceWords;
import cuelead.plan.CallSettings;
import cuelead.plan.LeftOut;
import cuelead.plan.Timeline;
import cuelead.plan.Title;
import cuelead.report.Refused;
import cuelead.sound.Balance;
import cuelead.sound.ClickAt;
import cuelead.sound.Levels;
import cuelead.sound.MixPlan;
import cuelead.sound.MusicPowers;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Makes the rounds of a lesson, each from beats, calls and clips of its own. Used on one thread. */
final class Rounds {
    private final Lesson lesson;
    private final Manner usual;
    private final TakeMaker overMusic;
    private final TakeMaker overClicks;
    private final PieceWords words;
    private final Tempo full;
    private final Map<Length, Double> lengths = new HashMap<>();

    /** What the length of a round depends on. */
    private record Length(Pass pass, int repeat) {}

    /** @param usual how the dance is played over its music, or over clicks where it has none */
    Rounds(Lesson lesson, Manner usual, TakeMaker takes) {
        this.lesson = lesson;
        this.usual = usual;
        overMusic = takes;
        overClicks = takes.withoutMusic();
        words = new PieceWords(dance());
        full = usual.ground().timeline().countTempo();
    }

    private Dance dance() {
        return usual.ground().dance();
    }

    Lesson lesson() {
        return lesson;
    }

    SampleRate rate() {
        return overMusic.rate();
    }

    /** Counts a minute at full speed. */
    Tempo full() {
        return full;
    }

    /**
     * How long the rounds of a pass take, without making them; parameters as {@link #round}.
     *
     * @param fromRepeat the first that counts
     */
    double seconds(int number, Pass pass, int fromRepeat) throws Refused {
        double seconds = 0;
        for (int repeat = fromRepeat; repeat <= pass.times(); repeat++) {
            seconds += secondsOfOne(number, pass, repeat);
        }
        return seconds;
    }

    private double secondsOfOne(int number, Pass pass, int repeat) throws Refused {
        Length wanted = new Length(pass, repeat);
        if (!lengths.containsKey(wanted)) {
            lengths.put(wanted, secondsOf(number, pass, repeat));
        }
        return lengths.get(wanted);
    }

    private double secondsOf(int number, Pass pass, int repeat) throws Refused {
        RoundSpan span = span(number, pass, repeat, ground(number, pass).timeline());
        return rate().secondsAt(span.toFrame() - span.fromFrame());
    }

    /**
     * One round.
     *
     * @param number of the pass, from 1
     * @param pass   it, or what the user has made of it
     * @param repeat from 1
     * @throws Refused when the pass cannot be danced, or the voice cannot speak
     */
    Round round(int number, Pass pass, int repeat) throws Refused {
        Ground ground = ground(number, pass);
        Timeline timeline = ground.timeline();
        RoundSpan span = span(number, pass, repeat, timeline);
        TakeMaker maker = maker(pass);
        Manner even = even(ground, pass);
        Take take = maker.makeSpoken(timeline, span.extent(title(pass, repeat)), even);
        maker.check();
        Levels levels = levels(pass, take);
        MixPlan mix = upTo(take.mix().withLevels(levels), span);
        return new Round(
                number,
                repeat,
                pass,
                even.with(levels),
                take.with(mix),
                span.runUpSeconds(),
                span.fromFrame(),
                span.toFrame());
    }

    /** What is not called when a pass is danced once, and why; parameters as {@link #round}. */
    List<LeftOut> leftOut(int number, Pass pass) throws Refused {
        Ground ground = ground(number, pass);
        Timeline timeline = ground.timeline();
        RoundSpan span = span(number, pass, 1, timeline);
        return maker(pass)
                .plan(timeline, span.extent(title(pass, 1)), even(ground, pass))
                .leftOut();
    }

    private TakeMaker maker(Pass pass) {
        return pass.over() == Over.MUSIC ? overMusic : overClicks;
    }

    private Manner even(Ground ground, Pass pass) {
        return new Manner(ground, settings(pass), usual.click(), Levels.EVEN);
    }

    private RoundSpan span(int number, Pass pass, int repeat, Timeline timeline) throws Refused {
        return RoundSpan.of(pass, repeat, timeline, rate())
                .orElseThrow(() -> new Refused("Pass " + number + ", " + words.written(pass.piece())
                        + ", is not danced" + (pass.over() == Over.MUSIC ? " before the music ends" : "")
                        + ": choose another in the lesson."));
    }

    private Ground ground(int number, Pass pass) throws Refused {
        if (pass.over() == Over.CLICKS) {
            Metre metre = dance().header().metre();
            int walls = Math.max(Ground.wallsWithoutMusic(dance()), wallOf(pass.piece()) + 1);
            return Ground.overClicks(dance(), pass.pace().at(full), 2 * metre.countsInSection(), walls);
        }
        if (!overMusic.hasMusic()) {
            throw new Refused(
                    "Pass " + number + " is danced to music, and there is none: name the song behind the sheet,"
                            + " or write \"clicks\" in the lesson.");
        }
        if (!isPossible(pass)) {
            throw new Refused(
                    "Pass " + number + " is danced to music at another tempo than it can be played at: choose 40"
                            + " to 125 % of its own, or clicks.");
        }
        return usual.ground().at(Speed.of(ratio(pass)), rate());
    }

    /** Whether the music of a pass, if it has any, can be played at its pace. */
    boolean isPossible(Pass pass) {
        return pass.over() == Over.CLICKS || Speed.isSpeed(ratio(pass));
    }

    /** Speed of a pass against the song's own, or against full speed without one. */
    private double ratio(Pass pass) {
        double ofFull = pass.pace().at(full).beatsPerMinute() / full.beatsPerMinute();
        return ofFull * usual.ground().map().lastSpeed().ratio();
    }

    /** Waits until music that is slowed or hurried can be read to its end. */
    void awaitMusic() {
        boolean isStretched = lesson.dancedPasses().stream()
                .anyMatch(pass -> pass.over() == Over.MUSIC && Math.abs(ratio(pass) - 1) > 1e-9);
        if (isStretched) {
            overMusic.awaitStrokes();
        }
    }

    private static int wallOf(Piece piece) {
        if (piece instanceof Piece.Wall wall) {
            return wall.wall();
        } else if (piece instanceof Piece.TagOf tag) {
            return tag.wall();
        }
        return piece instanceof Piece.RestartOf restart ? restart.wall() : 1;
    }

    /** Over clicks that are slower than the song, the lead is that of their pace. */
    private CallSettings settings(Pass pass) {
        CallSettings asked =
                new CallSettings(usual.calls().lead(), usual.calls().sectionLead(), pass.level(), pass.fading());
        return pass.over() == Over.CLICKS ? asked.atPace(ratio(pass)) : asked;
    }

    private Title title(Pass pass, int repeat) {
        String again = repeat == pass.times() ? "last time" : "again";
        return new Title(
                repeat == 1 ? words.spoken(pass.piece()) : again,
                pass.piece().isChange() ? Title.About.A_CHANGE : Title.About.A_PIECE);
    }

    /** Over music as loud as the practice; clicks with their calls are as loud as music would be. */
    private Levels levels(Pass pass, Take take) {
        return pass.over() == Over.MUSIC
                ? usual.levels()
                : Balance.of(take.mix(), MusicPowers.UNKNOWN)
                        .with(usual.levels().sides());
    }

    private static MixPlan upTo(MixPlan mix, RoundSpan span) {
        List<ClickAt> clicks = mix.clicks().stream()
                .filter(click -> click.frame() < span.quietFromFrame())
                .toList();
        return new MixPlan(
                mix.rate(),
                mix.music(),
                mix.clips(),
                clicks,
                mix.levels(),
                span.fromFrame(),
                span.toFrame(),
                mix.start());
    }
}
