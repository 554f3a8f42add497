package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.Allocations;
import cuelead.sound.StemMix.Stem;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class LiveMixTest {
    private static final long SECOND = Band.RATE.hz();
    private static final MixPlan PLAN = Band.plan(12, 0.5);
    private static final float[] WHOLE = read(new Mix(PLAN), 12 * SECOND);
    private static final long FADE = SECOND / 100;

    private static LiveMix live(long startFrame, Optional<Change.Loop> loop) {
        return new LiveMix(0, PLAN, startFrame, loop, EnumSet.allOf(Stem.class));
    }

    private static float[] read(Sound sound, long frames) {
        float[] all = new float[(int) (2 * frames)];
        float[] block = new float[2 * 777];
        int done = 0;
        for (int got = 1; got > 0 && done < frames; done += got) {
            got = sound.read(block, (int) Math.min(777, frames - done));
            System.arraycopy(block, 0, all, 2 * done, 2 * got);
        }
        return Arrays.copyOf(all, 2 * done);
    }

    private static float[] whole(long fromFrame, long frames) {
        return slice(WHOLE, fromFrame, frames);
    }

    private static float[] slice(float[] stereo, long fromFrame, long frames) {
        return Arrays.copyOfRange(stereo, (int) (2 * fromFrame), (int) (2 * (fromFrame + frames)));
    }

    @Test
    void withoutChangesItIsTheMix() {
        assertArrayEquals(WHOLE, read(live(0, Optional.empty()), 13 * SECOND), 0f);
    }

    @Test
    @Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD) // a mistake here reads for ever
    void aRunUpBeforeTheSongIsSilentAndThenTheMix() {
        float[] heard = read(live(-3 * SECOND, Optional.empty()), 8 * SECOND);
        assertArrayEquals(new float[(int) (2 * SECOND)], slice(heard, 0, SECOND));
        assertArrayEquals(whole(SECOND, 4 * SECOND), slice(heard, 4 * SECOND, 4 * SECOND), 1e-6f);
    }

    @Test
    void aJumpLandsOnTheFrameThatWasAsked() {
        LiveMix mix = live(0, Optional.empty());
        mix.change(new Change(1, 3 * SECOND, PLAN, 7 * SECOND, Optional.empty()));
        float[] heard = read(mix, 5 * SECOND);
        assertArrayEquals(whole(0, 3 * SECOND), slice(heard, 0, 3 * SECOND), 1e-6f);
        long settled = 3 * SECOND + FADE;
        assertArrayEquals(whole(7 * SECOND + FADE, SECOND), slice(heard, settled, SECOND), 1e-6f);
        assertEquals(new Route.Piece(3 * SECOND, 7 * SECOND, 1), mix.route().pieceAt(4 * SECOND));
        assertEquals(new Route.Piece(0, 0, 0), mix.route().pieceAt(3 * SECOND - 1));
    }

    @Test
    void aJumpThatComesTooLateKeepsTheBeat() {
        LiveMix mix = live(0, Optional.empty());
        read(mix, 4 * SECOND);
        long passed = mix.nextFrame();
        mix.change(new Change(1, 3 * SECOND, PLAN, 7 * SECOND, Optional.empty()));
        read(mix, SECOND);
        assertEquals(
                new Route.Piece(passed, passed + 4 * SECOND, 1), mix.route().last());
    }

    @Test
    void goingOverToAnEqualPlanChangesNothing() {
        LiveMix mix = live(0, Optional.empty());
        mix.change(new Change(1, 2 * SECOND, PLAN, 2 * SECOND, Optional.empty()));
        assertArrayEquals(WHOLE, read(mix, 12 * SECOND), 0f);
    }

    @Test
    void aLoopGoesBackAgainAndAgain() {
        LiveMix mix = live(2 * SECOND, Optional.of(new Change.Loop(2 * SECOND, 3 * SECOND)));
        float[] heard = read(mix, 4 * SECOND);
        for (int round = 0; round < 4; round++) {
            long from = round * SECOND + FADE;
            assertArrayEquals(whole(2 * SECOND + FADE, SECOND / 2), slice(heard, from, SECOND / 2), 1e-6f);
        }
        assertEquals(2 * SECOND + 10, mix.route().pieceAt(3 * SECOND + 10).songFrameAt(3 * SECOND + 10));
    }

    @Test
    void aLoopEndsWithTheNextChange() {
        LiveMix mix = live(2 * SECOND, Optional.of(new Change.Loop(2 * SECOND, 3 * SECOND)));
        read(mix, 2 * SECOND);
        mix.change(new Change(1, 5 * SECOND / 2, PLAN, 5 * SECOND / 2, Optional.empty()));
        float[] heard = read(mix, 2 * SECOND);
        assertArrayEquals(whole(3 * SECOND, SECOND / 2), slice(heard, SECOND, SECOND / 2), 1e-6f);
    }

    @Test
    void theNewestOrderReplacesOneThatIsStillWaiting() {
        LiveMix mix = live(0, Optional.empty());
        mix.change(new Change(1, SECOND, PLAN, 5 * SECOND, Optional.empty()));
        read(mix, SECOND / 2);
        mix.change(new Change(2, SECOND, PLAN, 9 * SECOND, Optional.empty()));
        read(mix, SECOND);
        assertEquals(new Route.Piece(SECOND, 9 * SECOND, 2), mix.route().last());
    }

    @Test
    void stemsOfALiveMixAddUpToIt() {
        MixPlan soft = PLAN.withLevels(new Levels(-20, -20, -20, 10));
        Change change = new Change(1, 2 * SECOND, soft, 4 * SECOND, Optional.empty());
        LiveMix all = new LiveMix(0, soft, 0, Optional.empty(), EnumSet.allOf(Stem.class));
        LiveMix music = new LiveMix(0, soft, 0, Optional.empty(), EnumSet.of(Stem.MUSIC));
        LiveMix calls = new LiveMix(0, soft, 0, Optional.empty(), EnumSet.of(Stem.VOICE, Stem.CLICK));
        List.of(all, music, calls).forEach(mix -> mix.change(change));
        float[] sum = read(music, 4 * SECOND);
        float[] other = read(calls, 4 * SECOND);
        for (int i = 0; i < sum.length; i++) {
            sum[i] += other[i];
        }
        assertArrayEquals(read(all, 4 * SECOND), sum, 1e-6f);
    }

    /** No jump is heard as a click: from sample to sample the output never moves further than the music itself. */
    @Test
    void twoHundredChangesMakeNoStepThatTheMusicDoesNotMake() {
        Random random = new Random(3);
        LiveMix mix = live(0, Optional.empty());
        float[] heard = new float[0];
        for (int number = 1; number <= 200; number++) {
            long at = mix.nextFrame() + random.nextInt((int) (SECOND / 20));
            long to = random.nextInt((int) (9 * SECOND));
            Optional<Change.Loop> loop =
                    number % 3 == 0 ? Optional.of(new Change.Loop(to, to + SECOND / 10)) : Optional.empty();
            mix.change(new Change(number, at, PLAN, to, loop));
            float[] more = read(mix, SECOND / 10 + random.nextInt((int) (SECOND / 10)));
            int length = heard.length;
            heard = Arrays.copyOf(heard, length + more.length);
            System.arraycopy(more, 0, heard, length, more.length);
            assertEquals(number, mix.route().last().change());
        }
        assertTrue(largestStep(heard) <= largestStep(WHOLE), largestStep(heard) + " > " + largestStep(WHOLE));
    }

    private static float largestStep(float[] stereo) {
        float largest = 0;
        for (int i = 2; i < stereo.length; i++) {
            largest = Math.max(largest, Math.abs(stereo[i] - stereo[i - 2]));
        }
        return largest;
    }

    @Test
    void readingAllocatesNothingWhileChangesArrive() {
        AtomicReference<LiveMix> mix = new AtomicReference<>();
        float[] block = new float[2 * 512];
        Runnable begin = () -> {
            mix.set(live(0, Optional.of(new Change.Loop(0, 4 * SECOND))));
            mix.get().change(new Change(1, 3 * SECOND, PLAN, SECOND, Optional.of(new Change.Loop(0, SECOND / 3))));
        };
        assertEquals(0, Allocations.leastBytes(begin, () -> {
            for (int blocks = 0; blocks < 1_000; blocks++) {
                mix.get().read(block, 512);
            }
        }));
        assertEquals(1, mix.get().route().last().change());
    }
}
