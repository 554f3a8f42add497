package cuelead.practice;

import cuelead.report.Refused;
import cuelead.song.Song;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;

/** How the loading of a song has ended, if it has. */
final class LoadEnd {
    private LoadEnd() {}

    /** Throws what kept the song from being loaded to its end; returns at once while it still loads. */
    static void check(Song song) throws Refused {
        if (!song.loaded().isCompletedExceptionally()) {
            return;
        }
        try {
            song.loaded().join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Refused refused) {
                throw refused;
            }
            throw e;
        } catch (CancellationException e) {
            throw new Refused("Loading " + song.file() + " was broken off.", e);
        }
    }
}
