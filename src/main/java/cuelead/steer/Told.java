package cuelead.steer;

import cuelead.dance.Facing;
import java.math.BigDecimal;
import java.util.Locale;

/** Times, walls and numbers as a dancer reads them. */
public final class Told {
    private Told() {}

    /** {@code 1:07.3}: minutes, seconds and tenths; {@code -0:00.5} before the song. */
    public static String minutes(double seconds) {
        long tenths = Math.round(Math.abs(seconds) * 10);
        String sign = seconds < 0 && tenths > 0 ? "-" : "";
        return String.format(Locale.ROOT, "%s%d:%02d.%d", sign, tenths / 600, tenths / 10 % 60, tenths % 10);
    }

    /** {@code 1:07}: whole minutes and seconds, cut and not rounded, never below 0. */
    public static String minutesAndSeconds(double seconds) {
        long whole = (long) Math.max(0, seconds);
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }

    /** {@code 17 minutes 31 seconds}, {@code 37 seconds}: to the nearest. */
    public static String inWords(double seconds) {
        long whole = Math.round(seconds);
        if (whole < 60) {
            return number(whole, "second");
        }
        return number(whole / 60, "minute") + (whole % 60 == 0 ? "" : " " + number(whole % 60, "second"));
    }

    /** {@code 3 o'clock}, on a diagonal {@code 1:30}. */
    public static String facing(Facing facing) {
        String clock = facing.clock();
        return clock.endsWith(":00") ? clock.substring(0, clock.length() - 3) + " o'clock" : clock;
    }

    /** {@code 2}, {@code 2.5}. */
    public static String decimal(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** {@code 1 beat}, {@code 2.5 beats}. */
    public static String beats(double beats) {
        return decimal(beats) + (beats == 1 ? " beat" : " beats");
    }

    /** {@code 1 call}, {@code 3 calls}. */
    public static String number(long number, String thing) {
        return number(number, thing, thing + "s");
    }

    /** {@code 1 pass}, {@code 3 passes}. */
    public static String number(long number, String one, String more) {
        return number + " " + (number == 1 ? one : more);
    }
}
