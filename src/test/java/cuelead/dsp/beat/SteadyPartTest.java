package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The supports are those measured on made songs at these tempi. */
class SteadyPartTest {
    @Test
    void aFastSongNeedsLessSupportABeat() {
        assertEquals(80, SteadyPart.longest(PathBeats.even(60 / 182.0, 80, 5.9)).size());
    }

    @Test
    void atMiddlingTempiSoLittleSupportIsNoBeat() {
        assertEquals(0, SteadyPart.longest(PathBeats.even(60 / 120.0, 80, 5.9)).size());
    }

    @Test
    void noiseIsNoBeatAtAnyTempo() {
        for (double tempo = 60; tempo < 210; tempo += 10) {
            assertEquals(
                    0, SteadyPart.longest(PathBeats.even(60 / tempo, 80, 5)).size());
        }
    }
}
