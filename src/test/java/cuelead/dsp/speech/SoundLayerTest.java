package cuelead.dsp.speech;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.beat.Weights;
import java.nio.FloatBuffer;
import org.junit.jupiter.api.Test;

class SoundLayerTest {
    /** Two sounds, two inputs: sound 0 where the first input is larger. */
    private static SoundLayer layer() {
        return SoundLayer.read(new Weights(FloatBuffer.wrap(new float[] {1, 0, 0, 1, 0.5f, 0})), 2, 2);
    }

    @Test
    void itWeighsAndAddsItsBias() {
        float[][] out = layer().apply(new float[][] {{2, 3}, {5, 7}});
        assertEquals(2.5f, out[0][0]);
        assertEquals(7, out[1][1]);
    }

    @Test
    void probabilitiesAddUpToOne() {
        float[][] odds = {{3, 100}, {1, -100}};
        SoundLayer.normalize(odds);
        assertEquals(1, Math.exp(odds[0][0]) + Math.exp(odds[1][0]), 1e-6);
        assertEquals(0, odds[0][1], 1e-6);
    }

    @Test
    void whatItIsFittedToBecomesLikelier() {
        float[][] heard = {{1, 1, 2, 0}, {2, 1.5f, 3, 1}};
        int[] sounds = {0, 0, 0, 0}; // of this speaker, sound 0 has a larger second input
        float[][] before = layer().apply(heard);
        float[][] after = layer().fitted(heard, sounds).apply(heard);
        SoundLayer.normalize(before);
        SoundLayer.normalize(after);
        for (int t = 0; t < sounds.length; t++) {
            assertTrue(after[0][t] > before[0][t], "frame " + t);
        }
    }

    @Test
    void theLayerItselfDoesNotChange() {
        SoundLayer layer = layer();
        layer.fitted(new float[][] {{1}, {2}}, new int[] {0});
        assertEquals(2.5f, layer.apply(new float[][] {{2}, {5}})[0][0]);
    }
}
