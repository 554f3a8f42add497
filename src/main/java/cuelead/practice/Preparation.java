package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.plan.Call;
import cuelead.plan.CallSettings;
import cuelead.plan.Timeline;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sheet.OwnFigures;
import cuelead.sheet.ReadSheet;
import cuelead.sheet.SheetFile;
import cuelead.sound.Levels;
import cuelead.time.Beats;
import cuelead.time.SampleRate;
import cuelead.time.Tempo;
import cuelead.time.TimeMap;
import cuelead.voice.Voice;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes one practice ready, stage by stage; see {@link Practice#prepare}. Used once. */
final class Preparation {
    private static final SampleRate RATE_WITHOUT_MUSIC = new SampleRate(44_100);
    /** Where neither the user nor the sheet says a tempo: an easy one, "about 104" (common practice). */
    private static final Tempo USUAL_TEMPO = new Tempo(104);

    /** Kinds of mistake after which calls would come at wrong counts; others are told, and practice goes on. */
    private static final Set<String> COUNTS_DO_NOT_ADD_UP =
            Set.of("missing_counts", "extra_count", "count_total", "count_order");

    private final Wish wish;
    private final Places places;
    private final Progress progress;
    private final Purpose purpose;
    private final List<Problem> problems = new ArrayList<>();

    /** What a practice is made for. */
    enum Purpose {
        /** Every word is waited for. */
        A_TRACK,
        /** Only those that are heard soon. */
        PLAYING
    }

    Preparation(Wish wish, Places places, Progress progress, Purpose purpose) {
        this.wish = wish;
        this.places = places;
        this.progress = progress;
        this.purpose = purpose;
    }

    Practice prepare() throws Refused {
        Voicing voice = Voicing.of(wish.voice(), places.cache());
        if (purpose == Purpose.A_TRACK || isCalledAtOnce()) {
            voice.expect(wish.sheet());
        }
        Dance dance = dance();
        Optional<OpenSong> song = OpenSong.of(wish, dance, places, progress);
        try {
            return prepare(song.map(open -> open.begun(dance)).orElse(dance), song, voice);
        } catch (Refused | RuntimeException | Error e) {
            song.ifPresent(open -> open.song().close());
            throw e;
        }
    }

    /** A song has an introduction, in which there is time to speak what comes after it. */
    private boolean isCalledAtOnce() {
        return wish.tempo().isPresent() || wish.fromSeconds() > 0;
    }

    private Practice prepare(Dance dance, Optional<OpenSong> song, Voicing voice) throws Refused {
        if (song.isEmpty() && !wish.speed().isOriginal()) {
            throw new Refused("A speed is for practice with a song; without music choose a tempo (--tempo 80).");
        }
        Listening listening = Listening.to(song, places);
        song.ifPresent(open -> problems.addAll(open.problems()));
        if (song.isPresent() && dance.header().countOne().isEmpty()) {
            problems.add(noCountOne(dance));
        }
        SampleRate rate =
                song.map(open -> open.song().pcm().rate()).orElse(wish.rate().orElse(RATE_WITHOUT_MUSIC));
        Ground ground = song.map(open -> Ground.overSong(
                                dance, open.grid(), open.song().pcm().lengthSeconds())
                        .at(wish.speed(), rate))
                .orElseGet(() -> Ground.overClicks(dance, tempo(dance), settings(dance)));
        Voice speaker = voice.at(rate, problems);
        VoiceTimes words = purpose == Purpose.PLAYING ? VoiceTimes.atHand(speaker, rate) : VoiceTimes.spoken(speaker);
        Timeline timeline = ground.timeline();
        problems.addAll(NeverDanced.check(timeline, wish.sheet().toString()));
        TakeMaker takes = new TakeMaker(words, new MixMaker(rate, song.map(OpenSong::song)));
        Manner even = new Manner(ground, settings(dance), wish.click(), Levels.EVEN);
        double fromSeconds = rate.secondsAt(heardFrame(wish.fromSeconds(), rate));
        Take take = new FirstTake(takes, words).make(timeline, even, fromSeconds);
        words.check();
        WordDoubts doubts = new WordDoubts(wish.sheet().toString(), voice.pronunciations());
        problems.addAll(doubts.unsaid(words.asked()));
        doubts.hard(saidByBuiltInVoice(take, words)).ifPresent(problems::add);
        Runnable allSpoken = () -> voice.noteSpoken(wish.sheet());
        LateWords late = new LateWords(words, new Speaking(speaker, voice::writeNoMore), doubts, allSpoken);
        late.noteIfAllSpoken(take);
        CallsGo go = wish.callsGo();
        Balancing balancing =
                new Balancing(listening, takes.expected(take, even), wish.dip().on(go), go.sides());
        return new ReadyPractice(problems, song.map(OpenSong::song), takes, even, wished(take), balancing, late);
    }

    /** In the order of the calls; what is not spoken yet is no recording. */
    private Set<String> saidByBuiltInVoice(Take take, VoiceTimes words) {
        boolean isUnspokenToo = wish.voice().speaker() == VoiceWish.Speaker.BUILT_IN;
        return take.plan().calls().stream()
                .map(Call::words)
                .filter(said -> words.knows(said) ? !words.clip(said).phones().isEmpty() : isUnspokenToo)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Only what lies between the wish's times. */
    private Take wished(Take take) {
        SampleRate rate = take.mix().rate();
        long from = heardFrame(wish.fromSeconds(), rate);
        long to = wish.toSeconds().isPresent()
                ? heardFrame(wish.toSeconds().getAsDouble(), rate)
                : take.mix().toFrame();
        return take.with(take.mix().between(from, to).withoutClipsBefore(from));
    }

    private long heardFrame(double songSeconds, SampleRate rate) {
        return TimeMap.even(wish.speed()).outputFrameAt(rate.frameAt(songSeconds));
    }

    private Dance dance() throws Refused {
        OwnFigures own = OwnFigures.read(wish.ownFigures());
        problems.addAll(own.problems());
        ReadSheet read = SheetFile.read(wish.sheet(), own);
        problems.addAll(read.problems());
        read.dance()
                .ifPresent(dance ->
                        problems.addAll(DanceCheck.check(dance, wish.sheet().toString())));
        List<Problem> fatal = problems.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .filter(problem -> read.dance().isEmpty() || COUNTS_DO_NOT_ADD_UP.contains(problem.kind()))
                .toList();
        if (!fatal.isEmpty()) {
            String more = fatal.size() == 1 ? "" : " (" + (fatal.size() - 1) + " more: cuelead check lists them.)";
            throw new Refused(fatal.get(0).message() + more);
        }
        Dance dance = read.dance().orElseThrow();
        return wish.way() == Wish.Way.EASIER ? easier(dance) : dance;
    }

    private Dance easier(Dance dance) {
        if (dance.options().stream().noneMatch(dance::isDanced)) {
            problems.add(new Problem(
                    Problem.Severity.WARNING,
                    "no_easy_option",
                    wish.sheet().toString(),
                    0,
                    0,
                    "The sheet offers no easier steps that could be called, so it is called as written.",
                    "Write them behind their count line: \"(easy option: walk R, L)\"."));
        }
        return dance.easy();
    }

    private Tempo tempo(Dance dance) {
        return wish.tempo()
                .orElseGet(() -> dance.header().statedTempo().isPresent()
                        ? new Tempo(dance.header().statedTempo().getAsDouble())
                        : USUAL_TEMPO);
    }

    private Problem noCountOne(Dance dance) {
        int counts = Ground.usualIntro(dance.header().metre()).counts();
        return new Problem(
                Problem.Severity.WARNING,
                "no_count_one",
                wish.sheet().toString(),
                0,
                0,
                "The sheet does not say where the dance begins in the song; " + counts
                        + " counts after the first bar are taken.",
                "Write a line such as \"Intro: 16 counts\" or \"Count 1: 7.46\" (seconds) at its head.");
    }

    private CallSettings settings(Dance dance) {
        double asked =
                wish.leadBeats().orElse(dance.header().leadBeats().orElse(CallSettings.DEFAULT_LEAD.toDecimal()));
        CallSettings usual = CallSettings.withLead(Beats.ofDecimal(asked));
        return new CallSettings(usual.lead(), usual.sectionLead(), wish.level(), wish.fading());
    }
}
