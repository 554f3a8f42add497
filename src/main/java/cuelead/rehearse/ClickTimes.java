package cuelead.rehearse;

import cuelead.report.Refused;
import cuelead.voice.MonoSound;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The round trip of a device: how much later its microphone gives what its speakers are told to play. It is taken from a
 * recording of eight clicks that were played 1.0, 1.5 ... 4.5 seconds after the recording began.
 */
public final class ClickTimes {
    private static final int CLICKS = 8;
    private static final double FIRST_SECONDS = 1;
    private static final double APART_SECONDS = 0.5;
    /** No device takes longer; a longer one would hide the first clicks. */
    private static final double LONGEST_SECONDS = 1.2;

    private static final double STEP_SECONDS = 0.001;
    /** Every click must be so much louder than the recording mostly is (12 dB). */
    private static final double CLEARLY = 4;

    private static final float FAINTEST = 1e-4f;
    /** An echo of a click is at most this part of it; what comes first and is louder is the click. */
    private static final double FIRST_PART = 0.5;
    /** A click has begun when it has this part of its height. */
    private static final double BEGUN_PART = 0.4;

    private static final double NEAR_SECONDS = 0.004;
    private static final double MOST_SPREAD_SECONDS = 0.003;

    private final MonoSound sound;
    private final float[] peaks;

    /** Why it cannot be told. */
    private static final class Unclear extends Exception {
        private static final long serialVersionUID = 1;

        Unclear(String why) {
            super(why);
        }
    }

    private ClickTimes(MonoSound sound) {
        this.sound = sound;
        peaks = new float[(int) (sound.lengthSeconds() / STEP_SECONDS)];
        for (int step = 0; step < peaks.length; step++) {
            peaks[step] = peak(frame(step * STEP_SECONDS), frame((step + 1) * STEP_SECONDS));
        }
    }

    /**
     * The round trip in seconds.
     *
     * @param file where the sound is from, for what is said when it cannot be used
     * @throws Refused when the clicks are not heard, or are uneven
     */
    public static double roundTripSeconds(MonoSound sound, Path file) throws Refused {
        try {
            return new ClickTimes(sound).roundTrip();
        } catch (Unclear unclear) {
            throw new Refused(
                    "The round trip cannot be told from " + file + ": " + unclear.getMessage()
                            + ". Play eight clicks at 1.0, 1.5 ... 4.5 seconds, and hold the headphones to the microphone.",
                    unclear);
        }
    }

    /** The same; empty when the clicks are not heard, or are uneven. */
    public static OptionalDouble roundTripSeconds(MonoSound sound) {
        try {
            return OptionalDouble.of(new ClickTimes(sound).roundTrip());
        } catch (Unclear unclear) {
            return OptionalDouble.empty();
        }
    }

    /** When each click is played, seconds from the beginning of the recording. */
    public static List<Double> playedSeconds() {
        return IntStream.range(0, CLICKS)
                .mapToObj(click -> FIRST_SECONDS + click * APART_SECONDS)
                .toList();
    }

    /** A recording of so many seconds from its beginning has all of them. */
    public static double recordingSeconds() {
        return FIRST_SECONDS + CLICKS * APART_SECONDS + LONGEST_SECONDS;
    }

    private double roundTrip() throws Unclear {
        int coarse = coarse();
        double[] delays = new double[CLICKS];
        for (int click = 0; click < CLICKS; click++) {
            double played = FIRST_SECONDS + click * APART_SECONDS;
            delays[click] = onset(played + coarse * STEP_SECONDS) - played;
        }
        Arrays.sort(delays);
        // one click may be covered by a knock
        if (delays[CLICKS - 2] - delays[1] > MOST_SPREAD_SECONDS) {
            throw new Unclear("the clicks in it are uneven");
        }
        return (delays[CLICKS / 2 - 1] + delays[CLICKS / 2]) / 2;
    }

    /** The earliest delay, in steps, at which all clicks are loud. */
    private int coarse() throws Unclear {
        float[] sorted = peaks.clone();
        Arrays.sort(sorted);
        int delays = (int) (LONGEST_SECONDS / STEP_SECONDS);
        float[] faintest = new float[delays];
        float best = 0;
        for (int delay = 0; delay < delays; delay++) {
            faintest[delay] = faintestClick(delay);
            best = Math.max(best, faintest[delay]);
        }
        if (sorted.length == 0 || best < FAINTEST || best < CLEARLY * sorted[sorted.length / 2]) {
            throw new Unclear("eight clicks, half a second apart, are not heard in it");
        }
        int delay = 0;
        while (faintest[delay] < FIRST_PART * best) {
            delay++;
        }
        return delay;
    }

    /** How loud the faintest of the eight would be with such a delay: of a delay half a second less, one would be missing. */
    private float faintestClick(int delay) {
        float faintest = Float.MAX_VALUE;
        for (int click = 0; click < CLICKS; click++) {
            int step = (int) Math.round((FIRST_SECONDS + click * APART_SECONDS) / STEP_SECONDS) + delay;
            float loud = step < peaks.length ? Math.max(peaks[step], peaks[Math.max(0, step - 1)]) : 0;
            faintest = Math.min(faintest, loud);
        }
        return faintest;
    }

    private double onset(double nearSeconds) {
        int from = frame(nearSeconds - NEAR_SECONDS);
        int to = frame(nearSeconds + NEAR_SECONDS);
        double begun = BEGUN_PART * peak(from, to);
        int at = from;
        while (at < to - 1 && Math.abs(sound.samples()[at]) < begun) {
            at++;
        }
        return sound.rate().secondsAt(at);
    }

    private float peak(int from, int to) {
        float peak = 0;
        for (int i = from; i < to; i++) {
            peak = Math.max(peak, Math.abs(sound.samples()[i]));
        }
        return peak;
    }

    private int frame(double seconds) {
        return Math.max(0, Math.min(sound.frames(), sound.rate().framesIn(Math.max(0, seconds))));
    }
}
