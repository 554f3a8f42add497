package cuelead.studio;

import cuelead.time.SampleRate;
import java.util.OptionalDouble;

/**
 * How late the microphone is.
 *
 * @param seconds      later than the clocks of microphone and speakers say
 * @param offsetFrames how much later its frames are than those that are played, where that was measured since both were
 *                     opened: that is exact, whatever the clocks say
 */
record RoundTrip(double seconds, OptionalDouble offsetFrames) {
    /** As it was measured at another time. */
    static RoundTrip of(double seconds) {
        return new RoundTrip(seconds, OptionalDouble.empty());
    }

    /**
     * How late a recording is.
     *
     * @param begunFrames the offset with which the recording was begun
     * @param clockFrames the offset by the clocks, as far as it is known now
     */
    double of(double begunFrames, double clockFrames, SampleRate rate) {
        double offset = offsetFrames.orElse(clockFrames + seconds * rate.hz());
        return (offset - begunFrames) / rate.hz();
    }
}
