package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.lesson.Lesson;
import cuelead.plan.CallPlan;
import cuelead.plan.Timeline;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.sound.Levels;
import cuelead.sound.Mix;
import cuelead.sound.MixPlan;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.sound.StemMix;
import cuelead.time.SampleRate;
import cuelead.time.TimeMap;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** A practice whose stages are all done. */
final class ReadyPractice implements Practice {
    /** Slowed music is made of what lies so far ahead. */
    private static final double AHEAD_SECONDS = 1;

    private final List<Problem> problems;
    private final Optional<Song> song;
    private final TakeMaker takes;
    private final Manner manner;
    private final Take take;
    private final Balancing balancing;
    private final LateWords late;
    /** The same take, made anew when all its words have been spoken. */
    private Take spoken;

    /**
     * @param manner    at even levels
     * @param take      the same
     * @param balancing finds its levels
     * @param late      has the words spoken that the take had to guess
     */
    ReadyPractice(
            List<Problem> problems,
            Optional<Song> song,
            TakeMaker takes,
            Manner manner,
            Take take,
            Balancing balancing,
            LateWords late) {
        this.problems = List.copyOf(problems);
        this.song = song;
        this.takes = takes;
        this.manner = manner;
        this.take = take;
        this.balancing = balancing;
        this.late = late;
        spoken = take;
    }

    @Override
    public Dance dance() {
        return manner.ground().dance();
    }

    @Override
    public List<Problem> problems() {
        List<Problem> all = new ArrayList<>(problems);
        all.addAll(late.unsaid());
        song.ifPresent(open -> all.addAll(open.problems()));
        return all.stream().distinct().toList();
    }

    @Override
    public Optional<Song> song() {
        return song;
    }

    @Override
    public Timeline timeline() {
        return take.timeline();
    }

    @Override
    public CallPlan plan() {
        return spoken().plan();
    }

    @Override
    public List<SpokenCall> spokenCalls() {
        return spoken().heardCalls();
    }

    private Take spoken() {
        if (!spoken.guessed().isEmpty() && late.areAllThereFor(spoken)) {
            long from = take.mix().fromFrame();
            Take whole = takes.make(take.timeline(), take.extent(), manner).endingLike(take);
            spoken = whole.with(whole.mix().between(from, whole.mix().toFrame()).withoutClipsBefore(from));
        }
        return spoken;
    }

    @Override
    public SampleRate rate() {
        return take.mix().rate();
    }

    @Override
    public long fromFrame() {
        return take.mix().fromFrame();
    }

    @Override
    public long toFrame() {
        return take.mix().toFrame();
    }

    @Override
    public boolean hasMusic() {
        return song.isPresent();
    }

    @Override
    public Sound mix() {
        return new Mix(balanced());
    }

    @Override
    public Sound voiceStem() {
        return new StemMix(balanced(), EnumSet.of(StemMix.Stem.VOICE));
    }

    @Override
    public Sound musicStem() {
        return new StemMix(balanced(), EnumSet.of(StemMix.Stem.MUSIC));
    }

    @Override
    public LivePractice live(Speakers speakers, Optional<Speakers> calls, Delays delays) {
        song.ifPresent(Song::loadAll); // the audio thread asks for nothing
        Levels levels = balancing.toBeginWith();
        balancing.goOn();
        return new LivePractice(
                takes,
                manner.with(levels),
                take.with(levels),
                Outputs.ofPractice(speakers, calls, delays, takes.rate()),
                new CatchingUp(late, new Settling(balancing::found, levels)));
    }

    @Override
    public Walkthrough walkthrough(Lesson lesson) throws Refused {
        return Walkthrough.of(new Rounds(lesson, manner.with(balancing.await(Progress.UNTOLD)), takes));
    }

    private MixPlan balanced() {
        if (!take.guessed().isEmpty()) {
            throw new IllegalStateException("prepared to be played live: not all of its words are spoken");
        }
        try {
            return take.mix().withLevels(balancing.await(Progress.UNTOLD));
        } catch (Refused untold) {
            throw new IllegalStateException("nobody waited for the mix", untold);
        }
    }

    @Override
    public void await(long frame, Progress progress) throws InterruptedException, Refused {
        balancing.await(progress);
        awaitPlayable(frame);
    }

    @Override
    public void awaitPlayable(long frame) throws InterruptedException, Refused {
        if (song.isEmpty()) {
            return;
        }
        TimeMap map = manner.ground().map();
        long wanted = map.songFrameAt(frame);
        song.get().pcm().await(wanted);
        if (!map.isOriginal()) {
            song.get().onsets().await(wanted + rate().framesIn(AHEAD_SECONDS));
        }
        song.get().checkLoading();
    }

    @Override
    public boolean isSongLoaded() {
        song.ifPresent(Song::loadAll);
        return song.isEmpty() || song.get().pcm().isFinished();
    }

    @Override
    public void close() {
        song.ifPresent(Song::close);
        late.close();
        balancing.goOn(); // and ends at once, for the song is closed
    }
}
