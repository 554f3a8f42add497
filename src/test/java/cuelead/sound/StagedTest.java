package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StagedTest {
    /** So many frames of one value. */
    private static Sound of(float value, int length) {
        return new Sound() {
            private int left = length;

            @Override
            public int read(float[] interleaved, int frames) {
                int count = Math.min(left, frames);
                java.util.Arrays.fill(interleaved, 0, 2 * count, value);
                left -= count;
                return count;
            }
        };
    }

    private static float[] read(Sound sound, int frames) {
        float[] block = new float[2 * frames];
        java.util.Arrays.fill(block, 9);
        assertEquals(frames, sound.read(block, frames));
        float[] left = new float[frames];
        for (int i = 0; i < frames; i++) {
            assertEquals(block[2 * i], block[2 * i + 1]);
            left[i] = block[2 * i];
        }
        return left;
    }

    @Test
    void itIsSilentWithoutEndAndKnowsWhereEachSoundLay() {
        Staged stream = new Staged();
        assertArrayEquals(new float[3], read(stream, 3));
        Staged.Stage first = stream.begin(of(1, 5));
        assertFalse(first.hasBegun());
        assertArrayEquals(new float[] {1, 1, 1, 1}, read(stream, 4));
        assertTrue(first.hasBegun());
        assertEquals(3, first.firstFrame());
        assertEquals(Long.MAX_VALUE, first.endFrame());
        assertArrayEquals(new float[] {1, 0, 0}, read(stream, 3));
        assertEquals(8, first.endFrame());
        assertArrayEquals(new float[2], read(stream, 2));
        assertEquals(8, first.endFrame());
    }

    @Test
    void aSoundEndsWhereTheNextBegins() {
        Staged stream = new Staged();
        Staged.Stage first = stream.begin(of(1, 100));
        read(stream, 4);
        Staged.Stage second = stream.begin(of(2, 2));
        assertArrayEquals(new float[] {2, 2, 0}, read(stream, 3));
        assertEquals(4, first.endFrame());
        assertEquals(4, second.firstFrame());
        assertEquals(6, second.endFrame());
    }
}
