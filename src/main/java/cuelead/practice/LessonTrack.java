package cuelead.practice;

import cuelead.sound.GentleStart;
import cuelead.sound.Mix;
import cuelead.sound.MixPlan;
import cuelead.sound.Sound;
import cuelead.sound.StemMix;
import cuelead.sound.StemMix.Stem;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Function;

/** Rounds one after the other on one time line, which begins at 0. */
final class LessonTrack implements Track {
    private final SampleRate rate;
    private final List<Round> rounds;

    LessonTrack(SampleRate rate, List<Round> rounds) {
        this.rate = rate;
        this.rounds = List.copyOf(rounds);
    }

    @Override
    public SampleRate rate() {
        return rate;
    }

    @Override
    public long fromFrame() {
        return 0;
    }

    @Override
    public long toFrame() {
        return rounds.stream().mapToLong(Round::frames).sum();
    }

    @Override
    public boolean hasMusic() {
        return rounds.stream().anyMatch(round -> round.take().mix().music().isPresent());
    }

    @Override
    public List<SpokenCall> spokenCalls() {
        List<SpokenCall> all = new ArrayList<>();
        long before = 0;
        for (Round round : rounds) {
            long laterFrames = before - round.fromFrame();
            round.take().calls().stream().map(call -> call.laterBy(laterFrames)).forEach(all::add);
            before += round.frames();
        }
        return all;
    }

    @Override
    public Sound mix() {
        return inTurn(Mix::new);
    }

    @Override
    public Sound voiceStem() {
        return inTurn(plan -> new StemMix(plan, EnumSet.of(Stem.VOICE)));
    }

    @Override
    public Sound musicStem() {
        return inTurn(plan -> new StemMix(plan, EnumSet.of(Stem.MUSIC)));
    }

    private Sound inTurn(Function<MixPlan, Sound> part) {
        return new InTurn(rate, plans(), part);
    }

    /** As they are heard live: music comes in gently where it begins from silence, not at each round of it. */
    private List<MixPlan> plans() {
        List<MixPlan> plans = new ArrayList<>();
        boolean isMusicOn = false;
        for (Round round : rounds) {
            MixPlan plan = round.take().mix();
            plans.add(isMusicOn ? plan.with(GentleStart.NONE) : plan);
            isMusicOn = plan.music().isPresent();
        }
        return plans;
    }
}
