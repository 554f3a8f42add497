package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HardWordsTest {
    @Test
    void offersOtherWordsOfTheTrade() {
        assertEquals(
                List.of("hook across", "cross shin"),
                HardWords.offers("Hook", Pronunciations.NONE).orElseThrow());
        assertEquals(HardWords.offers("eight", Pronunciations.NONE), HardWords.offers("8", Pronunciations.NONE));
    }

    @Test
    void anOfferIsNoHardWordItself() {
        for (String word : List.of("clap", "eight", "half", "hip", "hitch", "hook", "kick", "lock", "tag")) {
            for (String offer : HardWords.offers(word, Pronunciations.NONE).orElseThrow()) {
                assertTrue(HardWords.offers(offer, Pronunciations.NONE).isEmpty(), offer);
            }
        }
    }

    @Test
    void othersAreSaidWell() {
        assertEquals(Optional.empty(), HardWords.offers("rock", Pronunciations.NONE));
        assertEquals(Optional.empty(), HardWords.offers("!!!", Pronunciations.NONE));
    }

    @Test
    void nothingIsOfferedWhereAUserSaysHowAWordIsSpoken() {
        Pronunciations users = new Pronunciations(Map.of("kick", "kikk"), Map.of("hook", List.of("hh", "uh1", "k")));
        assertEquals(Optional.empty(), HardWords.offers("hook", users));
        assertEquals(Optional.empty(), HardWords.offers("Kick", users));
        assertTrue(HardWords.offers("clap", users).isPresent());
    }
}
