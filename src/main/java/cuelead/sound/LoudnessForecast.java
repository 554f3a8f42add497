package cuelead.sound;

import cuelead.dsp.BlockPowers;
import cuelead.dsp.IntegratedLoudness;
import cuelead.dsp.KWeighting;
import cuelead.time.SampleRate;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How loud a mix will be, told from its plan without making it: in every 100 ms the K-weighted powers of music
 * (with its dips), calls and clicks add up, for they are not correlated; the gating of {@link IntegratedLoudness}
 * does the rest. The limiter is left out: it moves the loudness of a sane mix by less than 0.1 LU.
 */
public final class LoudnessForecast {
    private final MixPlan plan;
    private final int stepFrames;
    private final MusicPower music;
    /** What of it the dip takes down. */
    private final MusicPower dipped;

    private final Dip dip;
    private final IdentityHashMap<float[], ClipPower> clipPowers = new IdentityHashMap<>();
    private final float[] plainMusicSteps;
    private final float[] musicSteps;
    private final float[] voiceSteps;
    private final float[] clickSteps;
    private final double[] voiceOverMusicDb;

    /**
     * @param plan         the mix; of its levels only the dip counts
     * @param musicPowers  how loud the song is where; too short while not all is known
     */
    public LoudnessForecast(MixPlan plan, MusicPowers musicPowers) {
        this.plan = plan;
        SampleRate rate = plan.rate();
        stepFrames = BlockPowers.stepFrames(rate);
        Music heard = plan.music().orElseGet(() -> new Pcm(rate, 0));
        music = new MusicPower(heard, musicPowers.whole(), MusicPower.USUAL_LUFS);
        dipped = plan.levels().dip().range() == Dipping.Range.WHOLE
                ? music
                : new MusicPower(heard, musicPowers.of(Dipping.Range.SPEECH_BAND), MusicPower.USUAL_BAND_LUFS);
        dip = plan.dip();
        int steps = (int) (plan.lengthFrames() / stepFrames);
        plainMusicSteps = new float[steps];
        musicSteps = new float[steps];
        voiceSteps = new float[steps];
        clickSteps = new float[steps];
        for (int step = 0; step < steps; step++) {
            long from = plan.fromFrame() + (long) step * stepFrames;
            plainMusicSteps[step] = (float) music.mean(from, from + stepFrames);
            long played = MixPlan.playedFrames(from + stepFrames / 2, plan.fromFrame());
            double start = Decibels.powerGain(plan.start().dbAt(played));
            musicSteps[step] = (float) (start * dippedMusic(from, from + stepFrames));
        }
        plan.clips().forEach(clip -> spread(clip, voiceSteps));
        addClicks();
        voiceOverMusicDb = plan.clips().stream()
                .mapToDouble(this::voiceOverMusicDb)
                .sorted()
                .toArray();
    }

    private void addClicks() {
        for (ClickSound sound : ClickSound.values()) {
            float[] samples = sound.samples(plan.rate());
            plan.clicks().stream()
                    .filter(click -> click.sound() == sound)
                    .forEach(click -> spread(PlacedClip.whole(click.frame(), samples), clickSteps));
        }
    }

    private ClipPower powerOf(PlacedClip clip) {
        return clipPowers.computeIfAbsent(clip.mono(), mono -> new ClipPower(mono, plan.rate()));
    }

    private void spread(PlacedClip clip, float[] steps) {
        ClipPower power = powerOf(clip);
        double gain = Decibels.powerGain(clip.gainDb());
        long offset = clip.startFrame() - plan.fromFrame();
        int first = (int) Math.max(0, Math.floorDiv(offset, stepFrames));
        for (int step = first; step < steps.length && (long) step * stepFrames < offset + clip.mono().length; step++) {
            long from = (long) step * stepFrames - offset;
            steps[step] += (float) (gain * power.energy(from, from + stepFrames) / stepFrames);
        }
    }

    private double voiceOverMusicDb(PlacedClip clip) {
        long from = clip.audibleStartFrame();
        long to = clip.audibleEndFrame();
        double musicPower = dippedMusic(from, to);
        return Decibels.ofPowerRatio((voicePower(clip) + Double.MIN_NORMAL) / (musicPower + Double.MIN_NORMAL));
    }

    /** Mean power of the music with its dips. */
    private double dippedMusic(long from, long to) {
        return music.mean(from, to) - (1 - dip.meanPowerGain(from, to)) * dipped.mean(from, to);
    }

    private double voicePower(PlacedClip clip) {
        int length = Math.max(1, clip.audibleTo() - clip.audibleFrom());
        return Decibels.powerGain(clip.gainDb()) * powerOf(clip).energy(clip.audibleFrom(), clip.audibleTo()) / length;
    }

    /** Programme loudness of the mix at some levels, LUFS; empty where it stays below the absolute gate. */
    public OptionalDouble programmeLufs(Levels levels) {
        double musicPower = Decibels.powerGain(levels.musicDb());
        double voicePower = Decibels.powerGain(levels.voiceDb());
        double clickPower = Decibels.powerGain(levels.clickDb());
        float[] sum = new float[musicSteps.length];
        for (int step = 0; step < sum.length; step++) {
            sum[step] = (float)
                    (musicPower * musicSteps[step] + voicePower * voiceSteps[step] + clickPower * clickSteps[step]);
        }
        return IntegratedLoudness.lufs(sum);
    }

    /**
     * How far the calls stand above the dipped music at some levels.
     *
     * @param share of the calls, 0 to 1, that are at least so far above it
     * @return LU over each call's own audible span; empty without calls
     */
    public OptionalDouble voiceAboveMusicLu(Levels levels, double share) {
        if (voiceOverMusicDb.length == 0) {
            return OptionalDouble.empty();
        }
        int fewest = (int) Math.floor((1 - share) * voiceOverMusicDb.length);
        double db = voiceOverMusicDb[Math.min(fewest, voiceOverMusicDb.length - 1)];
        return OptionalDouble.of(db + levels.voiceDb() - levels.musicDb());
    }

    /** Loudness of the music alone, without dips and at its own level; empty where there is none. */
    OptionalDouble musicLufs() {
        return IntegratedLoudness.lufs(plainMusicSteps);
    }

    /** Mean loudness of the calls while they sound, at their own level; empty without calls. */
    OptionalDouble voiceLufs() {
        return meanLufs(plan.clips());
    }

    /** Loudness of the accented click while it sounds, at its own level. */
    double clickLufs() {
        return meanLufs(List.of(PlacedClip.whole(0, ClickSound.ACCENTED.samples(plan.rate()))))
                .orElseThrow();
    }

    private OptionalDouble meanLufs(List<PlacedClip> clips) {
        OptionalDouble power = clips.stream().mapToDouble(this::voicePower).average();
        return power.isPresent()
                ? OptionalDouble.of(KWeighting.lufsOfPower(power.getAsDouble()))
                : OptionalDouble.empty();
    }
}
