package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.speech.PhoneOdds;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WordSearchTest {
    private static final int FRAMES = 300;
    private static final int S = PhoneOdds.phone("s");
    private static final int T = PhoneOdds.phone("t");
    private static final int EH = PhoneOdds.phone("eh");
    private static final int P = PhoneOdds.phone("p");
    private static final int AH = PhoneOdds.phone("ah");
    private static final int CH = PhoneOdds.phone("ch");
    private static final Pronounced STEP = new Pronounced("step", List.of(S, T, EH, P));
    private static final Pronounced TOUCH = new Pronounced("touch", List.of(T, AH, CH));
    private static final List<Pronounced> WORDS = List.of(STEP, TOUCH);

    private final float[][] odds = new float[PhoneOdds.phones()][FRAMES];

    WordSearchTest() {
        for (int phone = 0; phone < odds.length; phone++) {
            Arrays.fill(odds[phone], phone == PhoneOdds.SILENCE ? 0 : -6);
        }
    }

    /** Each sound for 8 frames. */
    private void say(int fromFrame, int... phones) {
        for (int i = 0; i < 8 * phones.length; i++) {
            odds[PhoneOdds.SILENCE][fromFrame + i] = -6;
            odds[phones[i / 8]][fromFrame + i] = 0;
        }
    }

    private List<HeardWord> find(PlannedCall... plan) {
        WordOdds entry = new WordOdds(WORDS, List.of(plan), 0, FRAMES);
        return new WordSearch(WORDS, new PhoneOdds(odds), entry).find();
    }

    private static PlannedCall planned(String word, double seconds) {
        return PlannedCall.of(word, seconds, OptionalDouble.empty(), 0, 0, "");
    }

    @Test
    void silenceHoldsNoWord() {
        assertTrue(find(planned("step", 1)).isEmpty());
    }

    @Test
    void wordsAreFoundWhereTheyAreSaid() {
        say(50, S, T, EH, P);
        say(150, T, AH, CH);
        List<HeardWord> heard = find(planned("step", 0.6), planned("touch", 1.6));
        assertEquals(
                List.of("step", "touch"), heard.stream().map(HeardWord::word).toList());
        assertEquals(0.50, heard.get(0).startSeconds(), 0.021);
        assertEquals(0.82, heard.get(0).endSeconds(), 0.021);
        assertEquals(1.50, heard.get(1).startSeconds(), 0.021);
    }

    @Test
    void whatIsClearlySaidCountsAlsoWhereAnotherIsPlanned() {
        say(50, T, AH, CH);
        assertEquals("touch", find(planned("step", 0.6)).get(0).word());
    }

    @Test
    void aWordThatEndsWithTheTakeIsFound() {
        say(FRAMES - 24, T, AH, CH);
        assertEquals("touch", find(planned("touch", 2.9)).get(0).word());
    }

    @Test
    void aSoundAloneIsNoWord() {
        say(100, AH);
        assertTrue(find().isEmpty());
    }

    @Test
    void wordsMayFollowEachOtherWithoutAPause() {
        say(50, S, T, EH, P, T, AH, CH);
        assertEquals(
                List.of("step", "touch"),
                find(planned("step", 0.6), planned("touch", 0.9)).stream()
                        .map(HeardWord::word)
                        .toList());
    }
}
