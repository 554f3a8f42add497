package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.sound.Sound;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class FeedTest {
    private static final int BLOCK = 8;
    private static final int MEMORY = 50;

    private final Feed feed = new Feed(BLOCK, MEMORY);
    private final float[] block = new float[BLOCK * Sound.CHANNELS];

    /** Every frame is its own number, from 1, on the left and less than nothing on the right. */
    private static Sound numbers(int length) {
        return new Sound() {
            private int given;

            @Override
            public int read(float[] interleaved, int frames) {
                int got = Math.min(frames, length - given);
                for (int i = 0; i < got; i++) {
                    given++;
                    interleaved[2 * i] = given;
                    interleaved[2 * i + 1] = -given;
                }
                return got;
            }
        };
    }

    private List<Integer> next() {
        feed.next(block);
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < BLOCK; i++) {
            left.add((int) block[2 * i]);
            assertEquals(0, block[2 * i] + block[2 * i + 1]);
        }
        return left;
    }

    @Test
    void afterTheEndComesSilence() {
        feed.begin(new Track(numbers(11), 0));
        assertEquals(List.of(1, 2, 3, 4, 5, 6, 7, 8), next());
        assertEquals(List.of(9, 10, 11, 0, 0, 0, 0, 0), next());
        assertEquals(List.of(0, 0, 0, 0, 0, 0, 0, 0), next());
        assertEquals(11, feed.lengthFrames());
    }

    @Property
    void whateverIsGivenAgainIsTheSame(
            @ForAll @IntRange(max = 20) int before, @ForAll @IntRange(max = 42) int back, @ForAll boolean ends) {
        int length = ends ? 60 : 10_000;
        feed.begin(new Track(numbers(length), 0));
        for (int i = 0; i < before; i++) {
            next();
        }
        feed.rewindTo(Math.max(0, feed.nextFrame() - back));
        long at = Math.max(0, before * BLOCK - back);
        assertEquals(at, feed.nextFrame());
        for (int i = 0; i < 12; i++) {
            for (int frame : next()) {
                at++;
                assertEquals(at <= length ? at : 0, frame);
            }
        }
    }

    @Test
    void itGoesBackNoFurtherThanItRemembers() {
        feed.begin(new Track(numbers(1_000), 0));
        for (int i = 0; i < 20; i++) {
            next();
        }
        feed.rewindTo(3);
        assertEquals(20 * BLOCK - MEMORY, feed.nextFrame());
        feed.rewindTo(500);
        assertEquals(20 * BLOCK - MEMORY, feed.nextFrame());
    }
}
