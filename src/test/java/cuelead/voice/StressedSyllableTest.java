package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Marcus 1981, equation 1: P = onset + 0.65 (vowel - onset) + 0.25 (end - vowel), worked by hand. */
class StressedSyllableTest {
    private static final double EXACT = 1e-9;

    @Test
    void oneSyllableGoesFromOnsetToEnd() {
        StressedSyllable step = syllable("s:100 t:40 eh1:120 p:80", 0.01, 0.34);
        assertEquals(new StressedSyllable(0.01, 0.14, 0.34), step);
        assertEquals(0.01 + 0.65 * 0.13 + 0.25 * 0.20, step.centreSeconds(), EXACT);
    }

    @Test
    void anUnstressedBeginningIsLeftOut() {
        StressedSyllable behind = syllable("b:50 ih:50 hh:60 ay1:140 n:60 d:40", 0, 0.4);
        assertEquals(new StressedSyllable(0.1, 0.16, 0.4), rounded(behind));
    }

    @Test
    void theSyllableEndsWhereTheLastConsonantBeforeTheNextVowelBegins() {
        assertEquals(new StressedSyllable(0, 0.1, 0.25), rounded(syllable("s:100 ih1:100 s:50 t:50 er:100", 0, 0.4)));
        assertEquals(new StressedSyllable(0, 0.1, 0.2), rounded(syllable("t:100 uw1:100 ao:100", 0, 0.3)));
    }

    @Test
    void onlyTheFirstWordCounts() {
        StressedSyllable walkOn = syllable("w:50 ao:100 k:50 | aa1:100 n:50", 0, 0.35);
        assertEquals(0.05, walkOn.vowelSeconds(), EXACT);
    }

    @Test
    void withoutAMarkTheFirstFullVowelIsTaken() {
        assertEquals(0.15, syllable("ax:50 g:100 eh:100 n:50", 0, 0.3).vowelSeconds(), EXACT);
        assertEquals(0.05, syllable("dh:50 ax:100", 0, 0.15).vowelSeconds(), EXACT);
    }

    @Test
    void withoutAVowelThereIsNoSyllable() {
        assertEquals(Optional.empty(), StressedSyllable.of(phones("s:100 t:50"), 0, 0.15));
        assertEquals(Optional.empty(), StressedSyllable.of(List.of(), 0, 0.15));
    }

    @Property(seed = "20261125")
    void theCentreLiesInItsSyllable(
            @ForAll @DoubleRange(min = 0, max = 1) double onset,
            @ForAll @DoubleRange(min = 0, max = 0.3) double consonant,
            @ForAll @DoubleRange(min = 0, max = 0.5) double rest) {
        StressedSyllable any = new StressedSyllable(onset, onset + consonant, onset + consonant + rest);
        assertEquals(onset + (consonant + rest) / 2, any.centreSeconds(), (consonant + rest) / 2 + EXACT);
    }

    private static StressedSyllable rounded(StressedSyllable s) {
        return new StressedSyllable(to(s.onsetSeconds()), to(s.vowelSeconds()), to(s.endSeconds()));
    }

    private static double to(double seconds) {
        return Math.round(seconds * 1e6) / 1e6;
    }

    private static StressedSyllable syllable(String phones, double onset, double end) {
        return StressedSyllable.of(phones(phones), onset, end).orElseThrow();
    }

    /** "s:100 eh1:90 | n:50": names, a mark of stress, milliseconds; a bar parts words. */
    private static List<SpokenPhone> phones(String text) {
        List<SpokenPhone> phones = new ArrayList<>();
        int word = 0;
        int at = 0;
        for (String token : text.split(" ")) {
            if (token.equals("|")) {
                word++;
                continue;
            }
            String[] parts = token.split(":");
            int end = at + Integer.parseInt(parts[1]);
            phones.add(new SpokenPhone(
                    parts[0].replace("1", ""), at / 1000.0, end / 1000.0, parts[0].endsWith("1"), word));
            at = end;
        }
        return phones;
    }
}
