package cuelead.practice;

import cuelead.report.Refused;
import cuelead.sound.Balance;
import cuelead.sound.Dipping;
import cuelead.sound.Levels;
import cuelead.sound.MixPlan;
import cuelead.sound.MusicPowers;
import cuelead.sound.Sides;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;

/**
 * The levels of a practice, found while its song is listened to: at once where that was done before. What plays before
 * they are found plays at those of a song that is as loud as most. Thread-safe.
 */
final class Balancing {
    private final Listening listening;
    private final Function<MusicPowers, Levels> balance;
    private final CompletableFuture<Levels> found;

    /**
     * Begins.
     *
     * @param even  the mix at even levels
     * @param dip   how its music goes down under the calls
     * @param sides where its parts are heard
     */
    Balancing(Listening listening, MixPlan even, Dipping dip, Sides sides) {
        this.listening = listening;
        balance = powers -> Balance.of(even, powers, dip, sides);
        found = listening.powers().thenApply(balance);
    }

    /**
     * Waits for them.
     *
     * @param progress told how far the listening is
     * @throws Refused what kept the song from being listened to
     */
    Levels await(Progress progress) throws Refused {
        listening.tell(progress);
        listening.goOn();
        try {
            return found.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Refused refused) {
                throw refused;
            }
            throw e;
        } finally {
            listening.tell(Progress.UNTOLD);
        }
    }

    /** Finds them now, where that takes a while; does not wait for it. */
    void goOn() {
        listening.goOn();
    }

    /** Those to begin with: the found ones, or what they may be. */
    Levels toBeginWith() {
        return found.isDone() && !found.isCompletedExceptionally() ? found.join() : balance.apply(MusicPowers.UNKNOWN);
    }

    /**
     * Those that were found; empty while it is listened.
     *
     * @throws Refused what kept the song from being listened to
     */
    Optional<Levels> found() throws Refused {
        return found.isDone() ? Optional.of(await(Progress.UNTOLD)) : Optional.empty();
    }
}
