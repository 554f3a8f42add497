package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.plan.CallPlan;
import cuelead.plan.Timeline;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.sound.Mix;
import cuelead.sound.MixPlan;
import cuelead.sound.Sound;
import cuelead.sound.StemMix;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** A practice whose stages are all done. */
final class ReadyPractice implements Practice {
    private final Dance dance;
    private final List<Problem> problems;
    private final Optional<Song> song;
    private final CallPlan plan;
    private final List<SpokenCall> calls;
    private final MixPlan mix;

    ReadyPractice(
            Dance dance,
            List<Problem> problems,
            Optional<Song> song,
            CallPlan plan,
            List<SpokenCall> calls,
            MixPlan mix) {
        this.dance = dance;
        this.problems = List.copyOf(problems);
        this.song = song;
        this.plan = plan;
        this.calls = calls.stream().filter(call -> isInside(call, mix)).toList();
        this.mix = mix;
    }

    private static boolean isInside(SpokenCall call, MixPlan mix) {
        return call.startFrame() >= mix.fromFrame()
                && call.startFrame() + call.clip().samples().length <= mix.toFrame();
    }

    @Override
    public Dance dance() {
        return dance;
    }

    @Override
    public List<Problem> problems() {
        List<Problem> all = new ArrayList<>(problems);
        song.ifPresent(open -> all.addAll(open.problems()));
        return all.stream().distinct().toList();
    }

    @Override
    public Optional<Song> song() {
        return song;
    }

    @Override
    public Timeline timeline() {
        return plan.timeline();
    }

    @Override
    public CallPlan plan() {
        return plan;
    }

    @Override
    public List<SpokenCall> spokenCalls() {
        return calls;
    }

    @Override
    public SampleRate rate() {
        return mix.rate();
    }

    @Override
    public long fromFrame() {
        return mix.fromFrame();
    }

    @Override
    public long toFrame() {
        return mix.toFrame();
    }

    @Override
    public Sound mix() {
        return new Mix(mix);
    }

    @Override
    public Sound voiceStem() {
        return new StemMix(mix, EnumSet.of(StemMix.Stem.VOICE));
    }

    @Override
    public Sound musicStem() {
        return new StemMix(mix, EnumSet.of(StemMix.Stem.MUSIC));
    }

    @Override
    public void await(long songFrame) throws InterruptedException, Refused {
        if (song.isEmpty()) {
            return;
        }
        song.get().pcm().await(songFrame);
        LoadEnd.check(song.get());
    }

    @Override
    public void close() {
        song.ifPresent(Song::close);
    }
}
