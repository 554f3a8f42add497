package cuelead.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;

/** The keys that a user presses while something plays. Where the input ends, no more come, and nothing else happens. */
final class Keys implements AutoCloseable {
    private static final String USAGE = "p: pause and go on   q: quit";

    private final ConcurrentLinkedQueue<Key> pressed = new ConcurrentLinkedQueue<>();
    private final Optional<Stty> terminal;
    private final Optional<String> usage;

    /** What a key asks for. */
    enum Key {
        PAUSE_OR_GO_ON,
        QUIT
    }

    private Keys(Optional<Stty> terminal, Optional<String> usage) {
        this.terminal = terminal;
        this.usage = usage;
    }

    /** Reads keys from a terminal; from anything else nothing is ever read. */
    static Keys of(Surroundings surroundings) {
        if (surroundings.terminal().input() != Terminal.End.TERMINAL) {
            return unread();
        }
        Optional<Stty> single = Stty.singleKeys();
        Keys keys = new Keys(single, Optional.of(single.isPresent() ? USAGE : USAGE + "   (then Enter)"));
        Thread reader = new Thread(() -> keys.read(surroundings.in()), "cuelead-keys");
        reader.setDaemon(true);
        reader.start();
        return keys;
    }

    /** How the keys are to be pressed, where they are read. */
    Optional<String> usage() {
        return usage;
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

    /** No keys, unless they are given to {@link #read}. */
    static Keys unread() {
        return new Keys(Optional.empty(), Optional.empty());
    }

    @Override
    public void close() {
        terminal.ifPresent(Stty::close);
    }
}
