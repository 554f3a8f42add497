package cuelead.practice;

import cuelead.report.Refused;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** Listens to a song beside other work: how loud it is where. */
final class Listening {
    private final CompletableFuture<float[]> powers;

    private Listening(CompletableFuture<float[]> powers) {
        this.powers = powers;
    }

    /** Begins at once, on a thread of its own. */
    static Listening to(Optional<OpenSong> song, Places places, Progress progress) {
        CompletableFuture<float[]> powers = new CompletableFuture<>();
        Runnable listen = () -> {
            try {
                powers.complete(
                        song.isPresent()
                                ? new SongMemory(places, progress)
                                        .musicPowers(song.get().song())
                                : new float[0]);
            } catch (Refused | RuntimeException | Error e) {
                powers.completeExceptionally(e);
            }
        };
        Thread thread = new Thread(listen, "cuelead-listening");
        thread.setDaemon(true);
        thread.start();
        return new Listening(powers);
    }

    /** Waits for it: K-weighted powers of the song's blocks; empty without a song. */
    float[] powers() throws Refused {
        try {
            return powers.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Refused refused) {
                throw refused;
            }
            throw e;
        }
    }
}
