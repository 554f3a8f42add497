package cuelead.cli;

import cuelead.report.Refused;
import cuelead.steer.LostDevices;
import java.util.List;

/** One line of a terminal that is drawn again and again while its user presses keys. Used on one thread. */
final class KeyedLine {
    private static final long POLL_MILLIS = 16;

    private final Surroundings surroundings;
    private final String withoutKeys;

    /** What is shown and obeys. */
    interface Shown {
        boolean isOver();

        /** Obeys a key stroke, as {@link KeyDecoder} names it. */
        void obey(String stroke) throws Refused;

        /** To be called some times a second. */
        void tick() throws Refused;

        String line();

        /** Sentences since the last time that are to stand above the line. */
        default List<String> news() {
            return List.of();
        }
    }

    /**
     * A line that needs keys.
     *
     * @param withoutKeys what is told where they cannot be read
     * @throws Refused that, where input or output is no terminal
     */
    KeyedLine(Surroundings surroundings, String withoutKeys) throws Refused {
        this.surroundings = surroundings;
        this.withoutKeys = withoutKeys;
        Terminal terminal = surroundings.terminal();
        if (terminal.input() != Terminal.End.TERMINAL || terminal.output() != Terminal.End.TERMINAL) {
            throw new Refused(withoutKeys);
        }
    }

    /** Shows it until it is over, and says once which devices go and come back. */
    void show(Shown shown, LostDevices lost) throws Refused, InterruptedException {
        Screen screen = new Screen(surroundings.out(), TerminalWidth.ofOutput(surroundings.environment()) - 1);
        try (RawKeys keys = RawKeys.open().orElseThrow(() -> new Refused(withoutKeys))) {
            while (!shown.isOver()) {
                shown.tick();
                screen.show(shown.line());
                tell(lost.news(), screen);
                tell(shown.news(), screen);
                for (String stroke : keys.next(POLL_MILLIS).stream().toList()) {
                    shown.obey(stroke);
                }
            }
        } finally {
            screen.clear();
        }
    }

    private void tell(List<String> news, Screen screen) {
        for (String sentence : news) {
            screen.clear();
            surroundings.err().print(sentence + "\r\n"); // a raw terminal does not go back by itself
        }
    }
}
