package cuelead.song;

import cuelead.report.Refused;
import cuelead.sound.Pcm;
import cuelead.sound.Sound;
import java.io.IOException;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;

/**
 * Fills a song's samples on a thread of its own, not far beyond what is asked for: a song that is opened is not all
 * decoded while other work must be done before it is heard. However it ends, nobody is left waiting.
 */
final class Loader implements Runnable {
    /** Short, so that the first sound is there at once. */
    private static final int BLOCK_FRAMES = 4_096;

    /** Enough to begin to play, and for one who reads as fast as it loads. */
    private static final double AHEAD_SECONDS = 4;

    private final Decoder decoder;
    private final Pcm pcm;
    private final Findings findings;
    private final CompletableFuture<Void> loaded = new CompletableFuture<>();

    Loader(Decoder decoder, Pcm pcm, Findings findings) {
        this.decoder = decoder;
        this.pcm = pcm;
        this.findings = findings;
    }

    /** Begins in the background; cancelling the future ends it. */
    CompletableFuture<Void> start() {
        Thread thread = new Thread(this, "song loader");
        thread.setDaemon(true);
        thread.start();
        return loaded;
    }

    @Override
    public void run() {
        try (decoder) {
            fill();
            pcm.finish();
            loaded.complete(null);
        } catch (CancellationException closed) {
            pcm.finish();
        } catch (IOException | OutOfMemoryError broken) {
            stopEarly(broken);
        } catch (RuntimeException | Error mistake) {
            pcm.fail(mistake);
            loaded.completeExceptionally(mistake);
        }
    }

    private void fill() throws IOException {
        float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
        long ahead = pcm.rate().framesIn(AHEAD_SECONDS);
        for (int got = decoder.read(block, BLOCK_FRAMES); got > 0; got = decoder.read(block, BLOCK_FRAMES)) {
            pcm.append(block, got);
            pcm.awaitWanted(ahead);
            if (loaded.isCancelled()) {
                throw new CancellationException();
            }
        }
    }

    private void stopEarly(Throwable broken) {
        String where = Clock.minutesSeconds(pcm.rate().secondsAt(pcm.availableFrames()));
        String sentence = broken instanceof OutOfMemoryError
                ? "There is no memory for more than the first " + where + "; the rest is silent."
                : "The file cannot be read beyond " + where + "; the rest is silent.";
        String tryThis = broken instanceof OutOfMemoryError
                ? "Close other programs, or give Java more memory."
                : "Check the disk or the network that it lies on.";
        findings.error("loading_stopped", sentence, tryThis);
        pcm.finish();
        loaded.completeExceptionally(new Refused(findings.file() + ": " + sentence + " " + tryThis, broken));
    }
}
