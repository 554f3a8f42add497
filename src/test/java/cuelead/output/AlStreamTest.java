package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.Allocations;
import cuelead.report.Refused;
import cuelead.sound.Band;
import cuelead.sound.Mix;
import cuelead.sound.MixPlan;
import cuelead.sound.Sound;
import java.nio.FloatBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lwjgl.system.MemoryUtil;

/** Through OpenAL and out of its loopback device, which needs no hardware and no clock. */
class AlStreamTest {
    private static final int RENDER_FRAMES = 441;
    private static final QueueDepth DEPTH = QueueDepth.SHIPPED;
    private static final MixPlan PLAN = Band.plan(6, 0.8);
    private static final float[] MIX = Band.pull(new Mix(PLAN), 4_096);

    private final FloatBuffer rendered = MemoryUtil.memAllocFloat(2 * RENDER_FRAMES);
    private AlDevice device;
    private long nanos;
    private AlStream stream;

    @BeforeEach
    void open() throws Refused {
        device = AlDevice.openLoopback(Band.RATE);
        device.useOnThisThread();
        stream = new AlStream(device, Band.RATE, DEPTH, () -> nanos);
    }

    @AfterEach
    void close() {
        stream.close();
        device.leaveThisThread();
        device.close();
        MemoryUtil.memFree(rendered);
    }

    /** What the device sounds like for some frames, a whole number of renderings, fed in time. */
    private float[] hear(int frames) {
        float[] heard = new float[2 * frames];
        for (int at = 0; at < frames; at += RENDER_FRAMES) {
            stream.pump();
            render();
            rendered.get(0, heard, 2 * at, Math.min(2 * RENDER_FRAMES, heard.length - 2 * at));
        }
        return heard;
    }

    /** The device plays on, and the clock with it. */
    private void render() {
        device.render(rendered, RENDER_FRAMES);
        nanos += 10_000_000;
    }

    private static float[] afterFade(float[] samples) {
        return Arrays.copyOfRange(samples, 2 * Band.RATE.framesIn(FadeIn.SECONDS), samples.length);
    }

    @Test
    void whatComesOutIsTheMixSampleForSample() {
        Track track = new Track(new Mix(PLAN), 0);
        stream.begin(track);
        int frames = MIX.length / 2;
        assertArrayEquals(afterFade(MIX), afterFade(hear(frames)), 0);
        stream.pump();
        assertTrue(track.hasEnded());
        assertEquals(frames, track.heardFrame());
        assertEquals(0, stream.dropOuts());
    }

    @Test
    void theHeardFrameIsThatOfTheSound() {
        Track track = new Track(new Mix(PLAN), 5_000);
        stream.begin(track);
        for (int renderings = 1; renderings < 300; renderings++) {
            hear(RENDER_FRAMES);
            stream.pump();
            assertEquals(5_000 + renderings * RENDER_FRAMES, (int) track.heardFrame(), 1.0);
        }
        assertFalse(track.hasEnded());
    }

    @Test
    void aPauseLosesNothing() {
        Track track = new Track(new Mix(PLAN), 0);
        stream.begin(track);
        float[] before = hear(100 * RENDER_FRAMES);
        stream.pause();
        hear(20 * RENDER_FRAMES);
        long heldAt = track.heardFrame();
        hear(20 * RENDER_FRAMES);
        assertEquals(heldAt, track.heardFrame());
        stream.resume();
        float[] after = hear(100 * RENDER_FRAMES);
        assertArrayEquals(afterFade(Arrays.copyOf(MIX, before.length)), afterFade(before), 0);
        assertContains(after, MIX, before.length);
    }

    /** OpenAL fades a little around a pause; after that every sample must be the mix's. */
    private static void assertContains(float[] heard, float[] whole, int from) {
        int settled = 2 * 20 * RENDER_FRAMES;
        for (int shift = -2 * 2_000; shift <= 2 * 2_000; shift += 2) {
            int at = from + settled + shift;
            if (Arrays.equals(whole, at, at + heard.length - settled, heard, settled, heard.length)) {
                return;
            }
        }
        throw new AssertionError("the mix does not go on");
    }

    @Test
    void anotherTrackBeginsAtOnce() {
        stream.begin(new Track(new Mix(PLAN), 0));
        hear(50 * RENDER_FRAMES);
        int seekFrame = 100_000;
        Track second = new Track(new Mix(PLAN, seekFrame, Mix.BegunCalls.CUT_IN), seekFrame);
        stream.begin(second);
        float[] heard = hear(60 * RENDER_FRAMES);
        float[] expected = Arrays.copyOfRange(MIX, 2 * seekFrame, 2 * seekFrame + heard.length);
        // the library fades what was cut off over its next update
        int settled = 2 * 10 * RENDER_FRAMES;
        assertArrayEquals(
                Arrays.copyOfRange(expected, settled, expected.length),
                Arrays.copyOfRange(heard, settled, heard.length),
                0);
        assertEquals(seekFrame + 59 * RENDER_FRAMES, (int) second.heardFrame(), 1.0);
    }

    @Test
    void aQueueThatRunsDryIsCountedAndGoesOnWhereItWas() {
        Track track = new Track(new Mix(PLAN), 0);
        stream.begin(track);
        stream.pump();
        int queuedFrames = DEPTH.buffers() * DEPTH.bufferFrames(Band.RATE);
        for (int frames = 0; frames < queuedFrames + RENDER_FRAMES; frames += RENDER_FRAMES) {
            render();
        }
        stream.pump();
        assertEquals(1, stream.dropOuts());
        float[] heard = hear(20 * RENDER_FRAMES);
        assertArrayEquals(Arrays.copyOfRange(MIX, 2 * queuedFrames, 2 * queuedFrames + heard.length), heard, 0);
    }

    @Test
    void aShortSoundIsHeardToItsEnd() {
        Track track = new Track(shortSound(100), 0);
        stream.begin(track);
        float[] heard = hear(RENDER_FRAMES);
        assertEquals(tone(99), heard[2 * 99]);
        assertEquals(0, heard[2 * 100]);
        stream.pump();
        assertTrue(track.hasEnded());
        assertEquals(100, track.heardFrame());
    }

    /** A tone that begins in silence. */
    private static float tone(int frame) {
        return (float) (0.5 * Math.sin(0.1 * frame));
    }

    private static Sound shortSound(int length) {
        return toneFromTo(0, length);
    }

    private static Sound toneFrom(int start) {
        return toneFromTo(start, Integer.MAX_VALUE);
    }

    private static Sound toneFromTo(int start, int end) {
        return new Sound() {
            private int next = start;

            @Override
            public int read(float[] interleaved, int frames) {
                int got = Math.min(end - next, frames);
                for (int i = 0; i < got; i++, next++) {
                    interleaved[2 * i] = tone(next);
                    interleaved[2 * i + 1] = tone(next);
                }
                return got;
            }
        };
    }

    @Test
    void aTrackThatBeginsInAPauseLosesNothing() {
        stream.begin(new Track(new Mix(PLAN), 0));
        hear(20 * RENDER_FRAMES);
        stream.pause();
        hear(20 * RENDER_FRAMES);
        Track track = new Track(new Mix(PLAN), 0);
        stream.begin(track);
        hear(20 * RENDER_FRAMES);
        assertEquals(0, track.heardFrame());
        stream.resume();
        assertArrayEquals(
                afterFade(Arrays.copyOf(MIX, 2 * 50 * RENDER_FRAMES)), afterFade(hear(50 * RENDER_FRAMES)), 0);
        assertEquals(0, stream.dropOuts());
    }

    @Test
    void aTrackFromTheMiddleFadesIn() {
        int seekFrame = 100_000;
        stream.begin(new Track(new Mix(PLAN, seekFrame, Mix.BegunCalls.CUT_IN), seekFrame));
        float[] heard = hear(RENDER_FRAMES);
        float[] expected = Arrays.copyOfRange(MIX, 2 * seekFrame, 2 * seekFrame + heard.length);
        int faded = 2 * Band.RATE.framesIn(FadeIn.SECONDS);
        assertTrue(Math.abs(expected[0]) > 0.01);
        assertEquals(0, heard[0]);
        assertEquals(expected[faded / 2] / 2, heard[faded / 2], 0.001);
        assertArrayEquals(afterFade(expected), afterFade(heard), 0);
    }

    @Test
    void noneOfManyOrdersClicks() {
        Random random = new Random(4);
        // the tone's own, and what fading half of full scale in and out over 1.4 ms adds; a jump would be up to 0.5
        float allowed = 0.05f + 0.02f;
        float last = 0;
        for (int i = 0; i < 200; i++) {
            int seekFrame = random.nextInt(200_000);
            List<Runnable> orders = List.of(
                    stream::pause,
                    stream::resume,
                    stream::stop,
                    () -> stream.begin(new Track(toneFrom(seekFrame), seekFrame)));
            orders.get(random.nextInt(orders.size())).run();
            float[] heard = hear((1 + random.nextInt(4)) * RENDER_FRAMES);
            assertEquals(0, Math.max(0, largestStep(heard, last) - allowed), "order " + i);
            last = heard[heard.length - 2];
        }
    }

    /** On the left side. */
    private static float largestStep(float[] samples, float before) {
        float largest = 0;
        float last = before;
        for (int i = 0; i < samples.length; i += 2) {
            largest = Math.max(largest, Math.abs(samples[i] - last));
            last = samples[i];
        }
        return largest;
    }

    @Test
    void afterALossWhatWasNotHeardIsHeard() {
        Track track = new Track(new Mix(PLAN), 0);
        stream.begin(track);
        hear(100 * RENDER_FRAMES);
        stream.pump();
        int heardFrame = (int) track.heardFrame();
        stream.goOnAfterLoss();
        render();
        float[] heard = hear(50 * RENDER_FRAMES);
        int from = 2 * (heardFrame + RENDER_FRAMES); // behind the fade
        assertArrayEquals(Arrays.copyOfRange(MIX, from, from + heard.length), heard, 0);
        assertEquals(0, stream.dropOuts(), "a loss is no lack of time");
    }

    @Test
    void movingToAnotherDeviceLosesNothing() {
        Track track = new Track(new Mix(PLAN), 0);
        stream.begin(track);
        hear(100 * RENDER_FRAMES);
        stream.hold();
        render();
        stream.goOnAfterHold();
        render();
        float[] heard = hear(50 * RENDER_FRAMES);
        int from = 2 * 101 * RENDER_FRAMES;
        assertArrayEquals(Arrays.copyOfRange(MIX, from, from + heard.length), heard, 0);
        assertEquals(0, stream.dropOuts());
    }

    @Test
    void feedingAllocatesNothing() {
        MixPlan plan = Band.plan(12, 0.8);
        Orders orders = new Orders();
        Runnable begin = () -> {
            for (int i = 0; i < 20; i++) {
                orders.give(new Order.Begin(new Track(new Mix(plan), i)));
                orders.give(new Order.Pause());
                orders.give(new Order.Resume());
                orders.give(new Order.Stop());
                orders.give(new Order.Begin(new Track(new Mix(plan), 0)));
            }
            hearWithoutKeeping(50);
        };
        assertEquals(0, Allocations.leastBytes(begin, () -> {
            orders.obey(stream);
            hearWithoutKeeping(1_000);
            stream.goOnAfterLoss();
            hearWithoutKeeping(50);
        }));
    }

    private void hearWithoutKeeping(int renderings) {
        for (int i = 0; i < renderings; i++) {
            stream.pump();
            render();
        }
    }
}
