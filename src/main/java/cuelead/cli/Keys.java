package cuelead.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;

/** The keys that a user presses while something plays. Where the input ends, no more come, and nothing else happens. */
final class Keys implements AutoCloseable {
    private final ConcurrentLinkedQueue<Key> pressed = new ConcurrentLinkedQueue<>();
    private final Optional<Stty> terminal;

    /** What a key asks for. */
    enum Key {
        PAUSE_OR_GO_ON,
        QUIT
    }

    private Keys(Optional<Stty> terminal) {
        this.terminal = terminal;
    }

    /** Reads keys from a terminal; from anything else nothing is ever read. */
    static Keys of(Surroundings surroundings) {
        if (surroundings.terminal().input() != Terminal.End.TERMINAL) {
            return new Keys(Optional.empty());
        }
        Keys keys = new Keys(Stty.singleKeys());
        Thread reader = new Thread(() -> keys.read(surroundings.in()), "cuelead-keys");
        reader.setDaemon(true);
        reader.start();
        return keys;
    }

    /** How the keys are to be pressed, to be told to the user; empty when none are read. */
    static String usage(Surroundings surroundings) {
        return surroundings.terminal().input() == Terminal.End.TERMINAL ? "p: pause and go on   q: quit" : "";
    }

    /** The next key, if one was pressed. */
    Optional<Key> poll() {
        return Optional.ofNullable(pressed.poll());
    }

    /** Reads to the end of the input; without single keys the letters come a line at a time. */
    void read(InputStream in) {
        try {
            for (int letter = in.read(); letter >= 0; letter = in.read()) {
                switch (letter) {
                    case 'p', 'P', ' ' -> pressed.add(Key.PAUSE_OR_GO_ON);
                    case 'q', 'Q' -> pressed.add(Key.QUIT);
                    default -> {
                        // any other key means nothing
                    }
                }
            }
        } catch (IOException gone) {
            // a terminal that went away gives no more keys; the sound goes on
        }
    }

    /** Keys from a stream, for those who read it themselves. */
    static Keys unread() {
        return new Keys(Optional.empty());
    }

    @Override
    public void close() {
        terminal.ifPresent(Stty::close);
    }
}
