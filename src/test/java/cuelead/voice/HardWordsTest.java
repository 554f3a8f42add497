package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HardWordsTest {
    @Test
    void offersOtherWordsOfTheTrade() {
        assertEquals(
                List.of("hook across", "cross shin"), HardWords.offers("Hook").orElseThrow());
        assertEquals(HardWords.offers("eight"), HardWords.offers("8"));
    }

    @Test
    void anOfferIsNoHardWordItself() {
        for (String word : List.of("clap", "eight", "half", "hip", "hitch", "hook", "kick", "lock", "tag")) {
            for (String offer : HardWords.offers(word).orElseThrow()) {
                assertTrue(HardWords.offers(offer).isEmpty(), offer);
            }
        }
    }

    @Test
    void othersAreSaidWell() {
        assertEquals(Optional.empty(), HardWords.offers("rock"));
        assertEquals(Optional.empty(), HardWords.offers("!!!"));
    }
}
