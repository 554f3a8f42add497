package cuelead.song;

import java.util.Locale;

/** Times as a dancer reads them on a player: minutes and seconds. */
final class Clock {
    private Clock() {}

    /** {@code 3:07}; rounded down to the second. */
    static String minutesSeconds(double seconds) {
        long whole = (long) Math.floor(Math.max(0, seconds));
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }

    /** {@code 0.24 s}, for lengths. */
    static String length(double seconds) {
        return String.format(Locale.ROOT, "%.2f s", seconds);
    }
}
