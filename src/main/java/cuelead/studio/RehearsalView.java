package cuelead.cli;

import cuelead.report.Refused;
import cuelead.sound.Speakers;
import java.util.Optional;

/** Where a rehearsal is followed. Used on one thread. */
interface RehearsalView extends AutoCloseable {
    /** How the moment is shown; called some times a second. */
    void show(String line);

    /** A prompt whose moment has come. */
    void prompt(String line);

    /** Tells a sentence that stays. */
    void tell(String sentence);

    /** Whether keys can be pressed here; if not, nothing is waited for. */
    boolean hasKeys();

    /** The next key, as {@link KeyDecoder} names it; empty when none comes in time. */
    Optional<String> key(Speakers speakers, long timeoutMillis) throws InterruptedException;

    @Override
    void close();

    /** What suits where input and output lead. */
    static RehearsalView of(Surroundings surroundings) throws Refused {
        Terminal terminal = surroundings.terminal();
        boolean isTerminal = terminal.input() == Terminal.End.TERMINAL && terminal.errors() == Terminal.End.TERMINAL;
        Optional<RawKeys> keys = isTerminal ? RawKeys.open() : Optional.empty();
        return keys.<RehearsalView>map(open -> new Keyed(surroundings, open)).orElseGet(() -> new Lines(surroundings));
    }

    /** A line of a terminal that is drawn again and again; standard output is left to the report. */
    final class Keyed implements RehearsalView {
        private final Surroundings surroundings;
        private final RawKeys keys;
        private final Screen screen;

        Keyed(Surroundings surroundings, RawKeys keys) {
            this.surroundings = surroundings;
            this.keys = keys;
            screen = new Screen(surroundings.err(), TerminalWidth.ofOutput(surroundings.environment()) - 1);
        }

        @Override
        public void show(String line) {
            screen.show(line);
        }

        @Override
        public void prompt(String line) {
            // it is part of the line that is shown
        }

        @Override
        public void tell(String sentence) {
            screen.clear();
            surroundings.err().print(sentence + "\r\n"); // a raw terminal does not go back by itself
            surroundings.err().flush();
        }

        @Override
        public boolean hasKeys() {
            return true;
        }

        @Override
        public Optional<String> key(Speakers speakers, long timeoutMillis) throws InterruptedException {
            return keys.next(timeoutMillis);
        }

        @Override
        public void close() {
            screen.clear();
            keys.close();
        }
    }

    /** A line a prompt, for another program. */
    final class Lines implements RehearsalView {
        private final Surroundings surroundings;

        Lines(Surroundings surroundings) {
            this.surroundings = surroundings;
        }

        @Override
        public void show(String line) {
            // only prompts are told
        }

        @Override
        public void prompt(String line) {
            tell(line);
        }

        @Override
        public void tell(String sentence) {
            surroundings.err().println(sentence);
            surroundings.err().flush();
        }

        @Override
        public boolean hasKeys() {
            return false;
        }

        @Override
        public Optional<String> key(Speakers speakers, long timeoutMillis) throws InterruptedException {
            speakers.awaitEnd(timeoutMillis);
            return Optional.empty();
        }

        @Override
        public void close() {
            // nothing was taken
        }
    }
}
