package cuelead.cli;

import cuelead.report.Refused;

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
                for (String news : lost.news()) {
                    screen.clear();
                    surroundings.err().print(news + "\r\n"); // a raw terminal does not go back by itself
                }
                for (String stroke : keys.next(POLL_MILLIS).stream().toList()) {
                    shown.obey(stroke);
                }
            }
        } finally {
            screen.clear();
        }
    }
}
