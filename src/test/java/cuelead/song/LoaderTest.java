package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sound.Pcm;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongConsumer;
import org.junit.jupiter.api.Test;

/** However loading ends, nobody is left waiting and what was loaded stays. */
class LoaderTest {
    private static final SampleRate RATE = new SampleRate(8_000);
    private static final long LENGTH_FRAMES = 80_000;

    private final Findings findings = new Findings("song.mp3");
    private final Pcm pcm = new Pcm(RATE, LENGTH_FRAMES);

    /** A sound of ones that runs into trouble after five seconds. */
    private static final class Breaking implements Decoder {
        private final IOException trouble;
        private long framesDone;
        private boolean isClosed;

        Breaking(IOException trouble) {
            this.trouble = trouble;
        }

        @Override
        public SampleRate rate() {
            return RATE;
        }

        @Override
        public long lengthFrames() {
            return LENGTH_FRAMES;
        }

        @Override
        public int read(float[] stereo, int frames) throws IOException {
            if (framesDone >= LENGTH_FRAMES / 2) {
                throw trouble;
            }
            int run = (int) Math.min(frames, LENGTH_FRAMES / 2 - framesDone);
            Arrays.fill(stereo, 0, 2 * run, 1f);
            framesDone += run;
            return run;
        }

        @Override
        public void close() {
            isClosed = true;
        }
    }

    /** Tells how much it has been asked for before, each time that it is read. */
    private static final class Silence implements Decoder {
        private final long lengthFrames;
        private final LongConsumer told;
        private final CountDownLatch closed = new CountDownLatch(1);
        private long framesDone;

        Silence(long lengthFrames, LongConsumer told) {
            this.lengthFrames = lengthFrames;
            this.told = told;
        }

        @Override
        public SampleRate rate() {
            return RATE;
        }

        @Override
        public long lengthFrames() {
            return lengthFrames;
        }

        @Override
        public int read(float[] stereo, int frames) {
            told.accept(framesDone);
            int run = (int) Math.min(frames, lengthFrames - framesDone);
            framesDone += run;
            return run;
        }

        @Override
        public void close() {
            closed.countDown();
        }
    }

    @Test
    void aDiskThatGoesAwayIsToldAndTheRestIsSilent() throws Exception {
        Breaking decoder = new Breaking(new IOException("gone"));
        CompletableFuture<Void> loaded = new Loader(decoder, pcm, findings).start();
        pcm.want(LENGTH_FRAMES);
        CompletionException ended = assertThrows(CompletionException.class, loaded::join);
        String sentence = "The file cannot be read beyond 0:05; the rest is silent. "
                + "Check the disk or the network that it lies on.";
        assertTrue(ended.getCause() instanceof Refused);
        assertEquals("song.mp3: " + sentence, ended.getCause().getMessage());
        assertEquals(
                List.of("song.mp3: error: " + sentence),
                findings.list().stream().map(Problem::message).toList());
        assertFalse(pcm.await(LENGTH_FRAMES), "more than was there");
        assertTrue(pcm.await(LENGTH_FRAMES / 2));
        float[] samples = new float[4];
        pcm.copy(LENGTH_FRAMES / 2 - 1, samples, 2);
        assertEquals(List.of(1f, 1f, 0f, 0f), List.of(samples[0], samples[1], samples[2], samples[3]));
    }

    /** Loading may run at most four seconds and a block ahead of what is asked for. */
    @Test
    void nothingIsDecodedLongBeforeItIsAskedFor() throws Exception {
        long mostAhead = RATE.framesIn(4) + 4_096L;
        AtomicLong asked = new AtomicLong();
        Silence decoder = new Silence(LENGTH_FRAMES, done -> assertTrue(done < asked.get() + mostAhead));
        Song song = new Song(Path.of("song.mp3"), pcm, List::of, new Loader(decoder, pcm, findings).start());
        for (int frame : List.of(1, RATE.framesIn(1), RATE.framesIn(3))) {
            asked.set(frame);
            assertTrue(pcm.await(frame), "asserted in the loader");
        }
        asked.set(LENGTH_FRAMES);
        song.loaded().join();
        assertEquals(LENGTH_FRAMES, pcm.availableFrames());
    }

    @Test
    void aSongThatIsClosedWhileItsLoaderRestsLetsGoOfItsFile() throws Exception {
        Silence decoder = new Silence(LENGTH_FRAMES, done -> {});
        Song song = new Song(Path.of("song.mp3"), pcm, List::of, new Loader(decoder, pcm, findings).start());
        assertTrue(pcm.await(RATE.framesIn(4)));
        song.close();
        assertTrue(decoder.closed.await(1, TimeUnit.MINUTES));
        assertTrue(pcm.availableFrames() < LENGTH_FRAMES);
    }

    @Test
    void itsDecoderIsClosed() {
        Breaking decoder = new Breaking(new IOException("gone"));
        pcm.want(LENGTH_FRAMES);
        new Loader(decoder, pcm, findings).run();
        assertTrue(decoder.isClosed);
        assertTrue(pcm.isFinished());
    }
}
