package cuelead.steer;

import cuelead.sound.Speakers;
import java.util.Optional;

/**
 * Open speakers.
 *
 * @param main for everything, or for the music alone
 * @param ear  for calls and clicks, where they go to a device of their own
 */
public record SpeakerPair(Speakers main, Optional<Speakers> ear) implements AutoCloseable {
    public void stop() {
        main.stop();
        ear.ifPresent(Speakers::stop);
    }

    public int dropOuts() {
        return main.dropOuts() + ear.map(Speakers::dropOuts).orElse(0);
    }

    @Override
    public void close() {
        main.close();
        ear.ifPresent(Speakers::close);
    }
}
