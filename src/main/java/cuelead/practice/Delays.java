package cuelead.practice;

/**
 * How long after it leaves this computer sound is heard, beyond what the computer knows: wireless speakers, long cables
 * through other devices.
 *
 * @param musicSeconds of the music, or of all that is played on one output; 0 or more
 * @param callsSeconds of calls and clicks on an output of their own; 0 or more
 */
public record Delays(double musicSeconds, double callsSeconds) {
    public static final Delays NONE = new Delays(0, 0);

    public Delays {
        if (!(musicSeconds >= 0 && callsSeconds >= 0)) {
            throw new IllegalArgumentException("delays below 0 s: " + musicSeconds + ", " + callsSeconds);
        }
    }
}
