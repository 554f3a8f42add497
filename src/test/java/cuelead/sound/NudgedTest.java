package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.Allocations;
import cuelead.sound.StemMix.Stem;
import java.util.Arrays;
import java.util.EnumSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class NudgedTest {
    private static final MixPlan PLAN = Band.plan(8, 0.5);
    private static final float[] VOICE = Band.pull(voice(), 512);

    private static Sound voice() {
        return new StemMix(PLAN, EnumSet.of(Stem.VOICE));
    }

    /** Whatever it is moved by, every call is heard whole, in order, only at another time. */
    @Property(tries = 40, seed = "20261125")
    void onlySilenceGrowsAndShrinks(
            @ForAll @IntRange(min = -9_000, max = 9_000) int first,
            @ForAll @IntRange(min = -9_000, max = 9_000) int second) {
        Nudged nudged = new Nudged(voice());
        nudged.moveTo(first);
        float[] heard = Band.pull(
                new Sound() {
                    private int blocks;

                    @Override
                    public int read(float[] interleaved, int frames) {
                        if (blocks++ == 300) {
                            nudged.moveTo(second);
                        }
                        return nudged.read(interleaved, frames);
                    }
                },
                512);
        assertArrayEquals(sounding(VOICE), sounding(heard), 0f);
        assertEquals(second, nudged.movedFrames());
        assertEquals(VOICE.length + 2L * second, heard.length);
    }

    private static float[] sounding(float[] stereo) {
        float[] left = new float[stereo.length];
        int found = 0;
        for (float sample : stereo) {
            if (sample != 0) {
                left[found++] = sample;
            }
        }
        return Arrays.copyOf(left, found);
    }

    @Test
    void unmovedItIsTheSource() {
        assertArrayEquals(VOICE, Band.pull(new Nudged(voice()), 700), 0f);
    }

    @Test
    void readingAllocatesNothing() {
        float[] block = new float[2 * 512];
        Nudged[] nudged = new Nudged[1];
        Runnable begin = () -> {
            nudged[0] = new Nudged(voice());
            nudged[0].moveTo(5_000);
        };
        assertEquals(0, Allocations.leastBytes(begin, () -> {
            for (int blocks = 0; blocks < 600; blocks++) {
                nudged[0].moveTo(blocks < 300 ? 5_000 : -5_000);
                nudged[0].read(block, 512);
            }
        }));
    }
}
