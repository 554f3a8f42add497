package cuelead.output;

import cuelead.time.SampleRate;
import java.util.Set;

/**
 * How the frames of an MP3 file of one sample rate are laid out (ISO/IEC 11172-3, section 2.4.2.3; ISO/IEC 13818-3 for
 * the rates below 32,000 Hz, and "MPEG 2.5" for those below 16,000).
 *
 * @param rate          frames of sound a second
 * @param kilobits      a second
 * @param framesInFrame frames of sound in an MPEG frame
 * @param sideInfoBytes what stands between the header of a stereo MPEG frame and its content
 * @param encoderGain   what the encoder multiplies samples by at this bit rate, to have room (measured with a sine)
 */
record Mp3Layout(SampleRate rate, int kilobits, int framesInFrame, int sideInfoBytes, double encoderGain) {
    private static final Set<Integer> KNOWN_HZ =
            Set.of(8_000, 11_025, 12_000, 16_000, 22_050, 24_000, 32_000, 44_100, 48_000);
    private static final int MPEG_1_HZ = 32_000;
    private static final int MPEG_2_HZ = 16_000;

    static boolean isKnown(SampleRate rate) {
        return KNOWN_HZ.contains(rate.hz());
    }

    static Mp3Layout of(SampleRate rate) {
        if (rate.hz() >= MPEG_1_HZ) {
            return new Mp3Layout(rate, 192, 1152, 32, 0.97);
        }
        return new Mp3Layout(rate, rate.hz() >= MPEG_2_HZ ? 128 : 64, 576, 17, 0.95);
    }

    /** The mean length of an MPEG frame; one may be less than a byte shorter or longer. */
    double frameBytes() {
        return 125.0 * kilobits * framesInFrame / rate.hz();
    }
}
