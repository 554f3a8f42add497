package cuelead.cli;

import cuelead.practice.Delays;

/** The keys with which two devices are brought together. */
final class AlignKeys {
    static final double SMALL_SECONDS = 0.005;
    private static final double LARGE_SECONDS = 0.05;
    private static final double FINE_SECONDS = 0.001;

    private AlignKeys() {}

    /**
     * What a key stroke makes of delays; the same when it means nothing. A later click is a smaller delay. Only how far
     * both are apart is found by ear, so that the loudspeaker keeps the delay it had at first wherever it can.
     */
    static Delays after(String stroke, Delays delays, Delays atFirst) {
        double later =
                switch (stroke) {
                    case "left" -> SMALL_SECONDS;
                    case "right" -> -SMALL_SECONDS;
                    case "down" -> LARGE_SECONDS;
                    case "up" -> -LARGE_SECONDS;
                    case "," -> FINE_SECONDS;
                    case "." -> -FINE_SECONDS;
                    default -> 0;
                };
        return later == 0 ? delays : atFirst.withCallsApartBy(delays.apartSeconds() + later);
    }

    static boolean ends(String stroke) {
        return switch (stroke) {
            case "enter", "q", "Q" -> true;
            default -> false;
        };
    }
}
