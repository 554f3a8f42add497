package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.BlockPowers;
import cuelead.dsp.IntegratedLoudness;
import cuelead.dsp.KWeighting;
import cuelead.sound.StemMix.Stem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The forecast against what is measured on the mix itself. */
class BalanceTest {
    private static final double SECONDS = 30;

    private static double measuredLufs(MixPlan plan) {
        float[] mix = Band.pull(new Mix(plan), 4_096);
        BlockPowers powers = new BlockPowers(plan.rate(), Sound.CHANNELS);
        powers.add(mix, mix.length / 2);
        return IntegratedLoudness.lufs(powers.powers()).orElseThrow();
    }

    private static MixPlan balanced(MixPlan plan) {
        MusicPowers powers = plan.music().map(Band::powers).orElse(MusicPowers.UNKNOWN);
        return plan.withLevels(Balance.of(plan, powers));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.3, 1})
    void theMixIsAsLoudAsForecast(double songGain) {
        MixPlan plan = balanced(Band.plan(SECONDS, songGain));
        assertEquals(Balance.PROGRAMME_LUFS, measuredLufs(plan), 0.3);
    }

    @Test
    void aCountInAndAPartAreForecastToo() {
        MixPlan part = Band.plan(SECONDS, 0.5).between(7 * 44_100 + 123, 26 * 44_100);
        assertEquals(Balance.PROGRAMME_LUFS, measuredLufs(balanced(part)), 0.3);
    }

    @Test
    void callsWithoutMusicHaveTheSameLoudness() {
        MixPlan plan = MixPlan.whole(Band.RATE, Optional.empty(), Band.calls(SECONDS), List.of(), Levels.EVEN);
        assertEquals(Balance.PROGRAMME_LUFS, measuredLufs(balanced(plan)), 0.5);
    }

    @Test
    void aSongThatIsStillLoadingIsTakenToGoOnAsItBegan() {
        MixPlan plan = Band.plan(SECONDS, 0.4);
        MusicPowers all = Band.powers(plan.music().orElseThrow());
        Levels early = Balance.of(plan, first(all, 200));
        assertEquals(Balance.PROGRAMME_LUFS, measuredLufs(plan.withLevels(early)), 1);
        Levels unknown = Balance.of(plan, MusicPowers.UNKNOWN);
        assertTrue(unknown.voiceDb() > unknown.musicDb(), "nothing known: " + unknown);
    }

    @Test
    void callsStandClearOfTheDippedMusic() {
        MixPlan plan = balanced(Band.plan(90, 0.6));
        float[] music = Band.pull(new StemMix(plan, Set.of(Stem.MUSIC)), 4_096);
        float[] voice = Band.pull(new StemMix(plan, Set.of(Stem.VOICE)), 4_096);
        double[] musicEnergy = weightedEnergyBefore(music);
        double[] voiceEnergy = weightedEnergyBefore(voice);
        long clear = plan.clips().stream()
                .filter(clip -> over(voiceEnergy, clip) >= 10 * over(musicEnergy, clip))
                .count();
        assertTrue(
                clear >= 0.95 * plan.clips().size(),
                clear + " of " + plan.clips().size());
    }

    @Test
    void wishesMoveOnePartAndKeepTheWhole() {
        MixPlan even = Band.plan(SECONDS, 0.5);
        MixPlan wished = even.withLevels(new Levels(0, 4, -3, 6));
        Levels levels = balanced(wished).levels();
        Levels plain = balanced(even.withLevels(new Levels(0, 0, 0, 6))).levels();
        assertEquals(4, (levels.voiceDb() - levels.musicDb()) - (plain.voiceDb() - plain.musicDb()), 1e-9);
        assertEquals(Balance.PROGRAMME_LUFS, measuredLufs(even.withLevels(levels)), 0.3);
    }

    @Test
    void silenceIsLeftAlone() {
        MixPlan plan =
                MixPlan.whole(Band.RATE, Optional.of(new Pcm(Band.RATE, 44_100)), List.of(), List.of(), Levels.EVEN);
        Levels levels = Balance.of(plan, new MusicPowers(new float[10], new float[10]));
        assertEquals(0, levels.musicDb());
    }

    private static MusicPowers first(MusicPowers all, int blocks) {
        return new MusicPowers(
                Arrays.copyOf(all.whole(), blocks), Arrays.copyOf(all.of(Dipping.Range.SPEECH_BAND), blocks));
    }

    private static double over(double[] energyBefore, PlacedClip clip) {
        return energyBefore[(int) clip.audibleEndFrame()] - energyBefore[(int) clip.audibleStartFrame()];
    }

    private static double[] weightedEnergyBefore(float[] interleaved) {
        KWeighting left = new KWeighting(Band.RATE);
        KWeighting right = new KWeighting(Band.RATE);
        double[] before = new double[interleaved.length / 2 + 1];
        for (int i = 0; i < interleaved.length / 2; i++) {
            double l = left.filter(interleaved[2 * i]);
            double r = right.filter(interleaved[2 * i + 1]);
            before[i + 1] = before[i] + l * l + r * r;
        }
        return before;
    }
}
