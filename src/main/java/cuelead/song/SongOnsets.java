package cuelead.song;

import cuelead.dsp.stretch.OnsetFinder;
import cuelead.dsp.stretch.Onsets;
import cuelead.sound.Pcm;
import java.util.concurrent.CompletableFuture;

/** Where a song is struck, found on a thread of its own while it loads, so that it can be slowed at once. Thread-safe. */
public final class SongOnsets {
    private static final double STEP_SECONDS = 2;

    private final Pcm pcm;
    private final OnsetFinder finder;
    private final Object progress = new Object();
    private final CompletableFuture<Void> found = new CompletableFuture<>();

    private SongOnsets(Pcm pcm) {
        this.pcm = pcm;
        finder = new OnsetFinder(pcm::copy, pcm.rate(), pcm.lengthFrames());
    }

    /** Begins to search. */
    static SongOnsets searching(Pcm pcm) {
        SongOnsets onsets = new SongOnsets(pcm);
        Thread thread = new Thread(onsets::search, "onset search");
        thread.setDaemon(true);
        thread.start();
        return onsets;
    }

    private void search() {
        try {
            long step = pcm.rate().framesIn(STEP_SECONDS);
            boolean goesOn = true;
            for (long at = step; goesOn; at += step) {
                goesOn = pcm.await(at) && at < pcm.lengthFrames();
                finder.advance(goesOn ? at : pcm.lengthFrames());
                tell();
            }
            found.complete(null);
        } catch (InterruptedException e) {
            found.cancel(false);
        } catch (RuntimeException | Error mistake) {
            found.completeExceptionally(mistake);
        }
        tell();
    }

    private void tell() {
        synchronized (progress) {
            progress.notifyAll();
        }
    }

    /** Those that are found so far. */
    public Onsets soFar() {
        return finder.onsets();
    }

    /**
     * Waits until those before a frame of the song are found, or as many as will be. Not on the audio thread.
     *
     * @throws IllegalStateException when the search broke down; its cause says how
     */
    public void await(long songFrame) throws InterruptedException {
        long wanted = Math.min(songFrame, pcm.lengthFrames());
        synchronized (progress) {
            while (finder.onsets().knownUntilFrame() < wanted && !found.isDone()) {
                progress.wait();
            }
        }
        if (found.isCompletedExceptionally()) {
            throw new IllegalStateException(
                    "the onset search broke down", found.handle((done, e) -> e).join());
        }
    }

    /** All of them, once the song is loaded and searched. Waits; not on the audio thread. */
    public Onsets all() {
        found.join();
        return finder.onsets();
    }
}
