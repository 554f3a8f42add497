package cuelead.song;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sound.Music;
import cuelead.sound.Pcm;
import cuelead.sound.SlowedMusic;
import cuelead.time.TimeMap;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * A song that is open: its samples, still filling while it loads in the background, and what was found wrong
 * with its file. It loads a little further than somebody waits for its samples ({@link Pcm#await}), and all of it once
 * that is asked for. Close it to stop loading; what was loaded stays readable. Safe on any thread.
 */
public final class Song implements AutoCloseable {
    private final Path file;
    private final Pcm pcm;
    private final Supplier<List<Problem>> problems;
    private final CompletableFuture<Void> loaded;
    private Optional<SongOnsets> onsets = Optional.empty();

    Song(Path file, Pcm pcm, Supplier<List<Problem>> problems, CompletableFuture<Void> loaded) {
        this.file = file;
        this.pcm = pcm;
        this.problems = problems;
        this.loaded = loaded;
    }

    /** A song that was not read from a sound file, such as one that was just composed. */
    public static Song of(Path file, Pcm pcm) {
        return new Song(file, pcm, List::of, CompletableFuture.completedFuture(null));
    }

    /** Where it came from. */
    public Path file() {
        return file;
    }

    /** Its samples, timed as in other players (encoder delay trimmed); silent where they are missing. */
    public Pcm pcm() {
        return pcm;
    }

    /**
     * What is damaged or misnamed and could be used all the same, a warning each, and an error when loading had
     * to end early. Grows while the song loads; complete once {@link #loaded} is.
     */
    public List<Problem> problems() {
        return problems.get();
    }

    /** Goes on loading to the end. */
    public void loadAll() {
        pcm.want(pcm.lengthFrames());
    }

    /**
     * Goes on loading to the end, and completes when all samples are there; exceptionally with {@link Refused} when the file could
     * not be read to its end, with a {@link CancellationException} when the song was closed
     * before, and with anything else for a mistake of the program. Changing the future changes nothing here.
     */
    public CompletableFuture<Void> loaded() {
        loadAll();
        return loaded.copy();
    }

    /** Where it is struck; the search begins when this is first asked for. */
    public synchronized SongOnsets onsets() {
        SongOnsets searching = onsets.orElseGet(() -> SongOnsets.searching(pcm));
        onsets = Optional.of(searching);
        return searching;
    }

    /**
     * The same song slower or faster, at its own pitch. While it loads, it can be heard as far as its onsets are found.
     */
    public Music along(TimeMap map) {
        return map.isOriginal() ? pcm : slowed(map);
    }

    /** The same, also where the speed is the original. */
    public SlowedMusic slowed(TimeMap map) {
        return new SlowedMusic(pcm, onsets().soFar(), map);
    }

    /**
     * Waits until all samples are there.
     *
     * @throws Refused what kept the file from being read to its end
     */
    public void awaitLoaded() throws Refused {
        loadAll();
        try {
            loaded.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Refused refused) {
                throw refused;
            }
            throw e;
        } catch (CancellationException e) {
            throw new Refused("Loading " + file + " was broken off.", e);
        }
    }

    /** Throws what kept the song from being loaded to its end; returns at once while it still loads. */
    public void checkLoading() throws Refused {
        if (loaded.isCompletedExceptionally()) {
            awaitLoaded();
        }
    }

    /** Stops loading, if it still goes on; does not wait. */
    @Override
    public void close() {
        loaded.cancel(false);
        loadAll(); // a loader that rests must see that it is over
    }
}
