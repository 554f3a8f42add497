package cuelead.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.KWeighting;
import java.util.List;
import org.junit.jupiter.api.Test;

class StandInTest {
    @Test
    void isAsLoudAsAClip() {
        float[] samples = StandIn.of("shuffle forward", Sounds.RATE).samples();
        assertEquals(ClipEditor.LOUDNESS_LUFS, KWeighting.loudnessLufs(samples, Sounds.RATE), 0.2);
    }

    @Test
    void isAboutAsLongAsTheWords() throws Exception {
        double off = 0;
        List<String> words =
                List.of("rock", "touch", "vine right", "shuffle forward", "half left to the front", "five");
        for (String said : words) {
            Clip real = Sounds.SYNTH.say(said).orElseThrow();
            Clip guess = StandIn.of(said, Sounds.RATE);
            assertEquals(0, guess.onsetSeconds());
            assertTrue(guess.centreSeconds() < guess.endSeconds());
            double realAfter = real.endSeconds() - real.centreSeconds();
            off += Math.abs(guess.endSeconds() - guess.centreSeconds() - realAfter);
        }
        assertTrue(off / words.size() < 0.12, off + " s");
    }
}
