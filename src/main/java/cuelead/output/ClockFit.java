package cuelead.output;

import cuelead.sound.HeardAt;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Where an output stands against the computer's clock, from readings of what it lets be heard: a straight line by least
 * squares, since single readings scatter by a millisecond or so. Two outputs that play the same frames are compared by
 * their lines.
 *
 * @param atNanos the middle of the readings, as {@link System#nanoTime}
 * @param seconds the place in the sound that is heard then
 * @param speed   seconds of sound in a second of the computer's clock; 1.0001 is a device that runs 100 ppm fast
 */
public record ClockFit(long atNanos, double seconds, double speed) {
    private static final double NANOS_A_SECOND = TimeUnit.SECONDS.toNanos(1);

    /**
     * Fits readings of one output, taken while it played without a break.
     *
     * @param readings at least two, at different times
     */
    public static ClockFit of(List<HeardAt> readings, SampleRate rate) {
        long firstNanos = readings.get(0).nanos();
        double meanTime = readings.stream()
                        .mapToLong(r -> r.nanos() - firstNanos)
                        .average()
                        .orElseThrow()
                / NANOS_A_SECOND;
        double meanPlace = readings.stream()
                .mapToDouble(r -> rate.secondsAt(r.frame()))
                .average()
                .orElseThrow();
        double timeSpread = 0;
        double together = 0;
        for (HeardAt reading : readings) {
            double time = (reading.nanos() - firstNanos) / NANOS_A_SECOND - meanTime;
            timeSpread += time * time;
            together += time * (rate.secondsAt(reading.frame()) - meanPlace);
        }
        if (timeSpread == 0) {
            throw new IllegalArgumentException("readings at one time only: " + readings.size());
        }
        return new ClockFit(firstNanos + Math.round(meanTime * NANOS_A_SECOND), meanPlace, together / timeSpread);
    }

    /** The place in the sound that is heard at a time. */
    public double secondsAt(long nanos) {
        return seconds + speed * ((nanos - atNanos) / NANOS_A_SECOND);
    }

    /** By how many seconds of sound this output is ahead of another at a time; below 0 when it is behind. */
    public double aheadOf(ClockFit other, long nanos) {
        return secondsAt(nanos) - other.secondsAt(nanos);
    }

    /** By how many parts in a million this output runs faster than another. */
    public double driftPpm(ClockFit other) {
        return (speed / other.speed - 1) * 1e6;
    }
}
