package cuelead.steer;

import cuelead.practice.CallsGo;
import cuelead.practice.Delays;

/** How much later things are heard, as the command line asks for it. */
public final class DelayWords {
    private static final double MILLIS_A_SECOND = 1000;

    private DelayWords() {}

    /** The options that ask for such delays. */
    public static String asking(Delays delays) {
        String main = "--delay " + millis(delays.musicSeconds());
        String ear = "--ear-delay " + millis(delays.callsSeconds());
        if (delays.musicSeconds() == 0) {
            return ear;
        }
        return delays.callsSeconds() == 0 ? main : main + " " + ear;
    }

    /** The same where calls may go with the music. */
    public static String asking(CallsGo callsGo, Delays delays) {
        return callsGo == CallsGo.APART ? asking(delays) : "--delay " + millis(delays.musicSeconds());
    }

    private static long millis(double seconds) {
        return Math.round(seconds * MILLIS_A_SECOND);
    }
}
