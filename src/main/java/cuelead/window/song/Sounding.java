package cuelead.window.song;

import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import java.util.Optional;

/** A song that sounds. Used on one thread. */
interface Sounding extends AutoCloseable {
    /** The place in the song that is heard now. */
    double heardSeconds();

    /** To be called some times a second. */
    void tick() throws Refused;

    void pause();

    void resume();

    boolean isPaused();

    boolean hasEnded();

    /** From now on clicks at these beats are heard, or none. */
    void click(Optional<BeatGrid> beats);

    @Override
    void close();
}
