package cuelead.cli;

import cuelead.practice.Delays;

/** The keys with which two devices are brought together. */
final class AlignKeys {
    static final double SMALL_SECONDS = 0.005;
    private static final double LARGE_SECONDS = 0.05;
    private static final double FINE_SECONDS = 0.001;

    private AlignKeys() {}

    /** What a key stroke makes of delays; the same when it means nothing. A later click is a smaller delay. */
    static Delays after(String stroke, Delays delays) {
        return switch (stroke) {
            case "left" -> delays.withCallsLaterBy(SMALL_SECONDS);
            case "right" -> delays.withCallsLaterBy(-SMALL_SECONDS);
            case "down" -> delays.withCallsLaterBy(LARGE_SECONDS);
            case "up" -> delays.withCallsLaterBy(-LARGE_SECONDS);
            case "," -> delays.withCallsLaterBy(FINE_SECONDS);
            case "." -> delays.withCallsLaterBy(-FINE_SECONDS);
            default -> delays;
        };
    }

    static boolean ends(String stroke) {
        return switch (stroke) {
            case "enter", "q", "Q" -> true;
            default -> false;
        };
    }
}
