package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class HeardSyllablesTest {
    /** Words of the trade. */
    private static final List<String> WORDS = List.of(
            "step",
            "touch",
            "toe",
            "hook",
            "vine",
            "side",
            "behind",
            "cross",
            "rock",
            "recover",
            "shuffle",
            "coaster",
            "sailor",
            "pivot",
            "turn",
            "quarter",
            "left",
            "right",
            "forward",
            "back",
            "together",
            "kick",
            "change",
            "stomp",
            "clap",
            "scuff",
            "brush",
            "hitch",
            "point",
            "hold",
            "sway",
            "bump",
            "restart",
            "tag",
            "weave",
            "lock",
            "slide",
            "drag",
            "swivel",
            "monterey",
            "mambo",
            "triple",
            "unwind",
            "lunge",
            "flick",
            "again");

    @Property(tries = 30, seed = "20261125")
    void aHissAndAVowelHaveTheirCentreByMarcus(
            @ForAll @DoubleRange(min = 0.06, max = 0.15) double hiss,
            @ForAll @DoubleRange(min = 0.12, max = 0.4) double vowel) {
        MonoSound sound = Sounds.sound(
                Sounds.silence(0.05), Sounds.noise(hiss, 0.005), Sounds.vowel(vowel), Sounds.silence(0.05));
        double marcus = 0.05 + 0.65 * hiss + 0.25 * vowel;
        assertEquals(marcus, heard(sound, "sah").centreSeconds(), 0.010);
    }

    @Property(tries = 20, seed = "20261125")
    void theSecondHillIsFeltWhereTheStressIsLate(@ForAll @DoubleRange(min = 0.06, max = 0.15) double pause) {
        MonoSound sound =
                Sounds.sound(Sounds.vowel(0.08), Sounds.noise(pause, 0.002), Sounds.vowel(0.25), Sounds.silence(0.05));
        assertEquals(0.08 + pause, heard(sound, "behind").vowelSeconds(), 0.015);
        assertEquals(0, heard(sound, "shuffle").vowelSeconds(), 0.015);
    }

    @Test
    void aShortBurstIsNoVowel() {
        MonoSound sound =
                Sounds.sound(Sounds.noise(0.02, 0.2), Sounds.silence(0.05), Sounds.vowel(0.2), Sounds.silence(0.05));
        assertEquals(0.07, heard(sound, "kick").vowelSeconds(), 0.015);
    }

    /** As at the end of "unwind", whose first vowel is cut short by the beginning. */
    @Test
    void aWeakSoundBehindTheVowelsIsNoSyllable() {
        MonoSound sound = Sounds.sound(
                Sounds.vowel(0.03),
                Sounds.silence(0.08),
                Sounds.vowel(0.2),
                Sounds.silence(0.05),
                scaled(Sounds.vowel(0.08), 0.15f),
                Sounds.silence(0.05));
        assertEquals(0.11, heard(sound, "behind").vowelSeconds(), 0.015);
    }

    @Test
    void oneSyllableWordsAreOneSyllableHoweverTheySwell() {
        MonoSound sound = Sounds.sound(Sounds.vowel(0.12), Sounds.vowel(0.12), Sounds.silence(0.05));
        assertEquals(0, heard(sound, "weave").vowelSeconds(), 0.015);
        assertEquals(0.24, heard(sound, "weave").endSeconds(), 0.005);
    }

    /** Against the synthesizer's own phones, which the ear does not get to know. */
    @Test
    void heardCentresAgreeWithKnownOnes() throws Refused {
        double[] errors = new double[WORDS.size()];
        for (int i = 0; i < errors.length; i++) {
            Clip clip = Sounds.SYNTH.say(WORDS.get(i)).orElseThrow();
            MonoSound sound = new MonoSound(clip.samples(), clip.rate());
            errors[i] = Math.abs(heard(sound, WORDS.get(i)).centreSeconds() - clip.centreSeconds());
        }
        Arrays.sort(errors);
        assertTrue(errors[errors.length / 2] < 0.010, "median " + errors[errors.length / 2]);
        assertTrue(errors[(int) (0.95 * errors.length)] < 0.025, "p95 " + errors[(int) (0.95 * errors.length)]);
        assertTrue(errors[errors.length - 1] < 0.040, "most " + errors[errors.length - 1]);
    }

    private static float[] scaled(float[] samples, float gain) {
        float[] scaled = samples.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= gain;
        }
        return scaled;
    }

    private static StressedSyllable heard(MonoSound sound, String text) {
        return WordInTake.of(sound, text).orElseThrow().syllable().orElseThrow();
    }
}
