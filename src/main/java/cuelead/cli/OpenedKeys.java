package cuelead.cli;

import java.util.Optional;

/**
 * The keys for as long as a practice is made ready and plays.
 *
 * @param keys empty where none can be read
 */
record OpenedKeys(Optional<PlayerKeys> keys) implements AutoCloseable {
    static OpenedKeys of(Surroundings surroundings) {
        return new OpenedKeys(PlayerKeys.open(surroundings));
    }

    @Override
    public void close() {
        keys.ifPresent(PlayerKeys::close);
    }
}
