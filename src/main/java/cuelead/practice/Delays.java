package cuelead.practice;

/**
 * How long after it leaves this computer sound is heard, beyond what the computer knows: wireless speakers, long cables
 * through other devices.
 *
 * @param musicSeconds of the music, or of all that is played on one output; 0 to {@value #MOST_SECONDS}
 * @param callsSeconds of calls and clicks on an output of their own; 0 to {@value #MOST_SECONDS}
 */
public record Delays(double musicSeconds, double callsSeconds) {
    public static final double MOST_SECONDS = 2;
    public static final Delays NONE = new Delays(0, 0);

    public Delays {
        if (!isPossible(musicSeconds) || !isPossible(callsSeconds)) {
            throw new IllegalArgumentException(
                    "delays outside of 0 to " + MOST_SECONDS + " s: " + musicSeconds + ", " + callsSeconds);
        }
    }

    private static boolean isPossible(double seconds) {
        return seconds >= 0 && seconds <= MOST_SECONDS;
    }

    /** By how much more the calls' device is late than that of the music. */
    public double apartSeconds() {
        return callsSeconds - musicSeconds;
    }

    /**
     * The same music with a device of the calls that is so much later than it. A device of the calls that would be
     * earlier than this computer sounds at once instead, and it is the music that is later.
     *
     * @param seconds as {@link #apartSeconds}; below 0 = the calls' device is the earlier one
     */
    public Delays withCallsApartBy(double seconds) {
        double calls = Math.min(musicSeconds + seconds, MOST_SECONDS);
        return calls >= 0 ? new Delays(musicSeconds, calls) : new Delays(Math.min(-seconds, MOST_SECONDS), 0);
    }

    /** The same with a device of the music that is so much later; earlier when below 0, as far as it goes. */
    public Delays withMusicLaterBy(double seconds) {
        return new Delays(Math.max(0, Math.min(musicSeconds + seconds, MOST_SECONDS)), callsSeconds);
    }
}
