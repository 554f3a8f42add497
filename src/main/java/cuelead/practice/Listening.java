package cuelead.practice;

import cuelead.report.Refused;
import cuelead.sound.MusicPowers;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** Listens to a song beside other work: how loud it is where. */
final class Listening {
    private final CompletableFuture<MusicPowers> powers;

    private Listening(CompletableFuture<MusicPowers> powers) {
        this.powers = powers;
    }

    /** Begins at once, on a thread of its own. */
    static Listening to(Optional<OpenSong> song, Places places, Progress progress) {
        CompletableFuture<MusicPowers> powers = new CompletableFuture<>();
        Runnable listen = () -> {
            try {
                powers.complete(
                        song.isPresent()
                                ? new SongMemory(places, progress)
                                        .musicPowers(song.get().song())
                                : MusicPowers.UNKNOWN);
            } catch (Refused | RuntimeException | Error e) {
                powers.completeExceptionally(e);
            }
        };
        Thread thread = new Thread(listen, "cuelead-listening");
        thread.setDaemon(true);
        thread.start();
        return new Listening(powers);
    }

    /** Waits for it: how loud the song is where; unknown without one. */
    MusicPowers powers() throws Refused {
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
