package cuelead.practice;

import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.sound.MusicPowers;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;

/**
 * Listens to a song beside other work: how loud it is where. What is remembered is there soon; else the listening waits
 * until it is asked to {@link #goOn}, since it takes a while and what sounds first must be ready first. Thread-safe.
 */
final class Listening {
    private final CompletableFuture<MusicPowers> powers = new CompletableFuture<>();
    private final CountDownLatch goesOn = new CountDownLatch(1);
    private volatile Progress told = Progress.UNTOLD;

    private Listening() {}

    /** Begins at once, on a thread of its own. */
    static Listening to(Optional<OpenSong> song, Places places) {
        Listening listening = new Listening();
        Thread thread = new Thread(() -> listening.listen(song, places), "cuelead-listening");
        thread.setDaemon(true);
        thread.start();
        return listening;
    }

    private void listen(Optional<OpenSong> song, Places places) {
        try {
            powers.complete(song.isPresent() ? powersOf(song.get().song(), places) : MusicPowers.UNKNOWN);
        } catch (Refused | InterruptedException | RuntimeException | Error e) {
            powers.completeExceptionally(e);
        }
    }

    private MusicPowers powersOf(Song song, Places places) throws Refused, InterruptedException {
        SongMemory memory = new SongMemory(places, (work, done) -> told.at(work, done));
        Optional<MusicPowers> known = memory.knownPowers(song);
        if (known.isPresent()) {
            return known.get();
        }
        goesOn.await();
        return memory.measuredPowers(song);
    }

    /** How loud the song is where, once that is known; unknown without one. Fails with what kept it from being known. */
    CompletableFuture<MusicPowers> powers() {
        return powers.copy();
    }

    /** Listens to the whole song now, where that has not been done before; does not wait for it. */
    void goOn() {
        goesOn.countDown();
    }

    /** From now on this is told how far it is. */
    void tell(Progress progress) {
        told = progress;
    }
}
