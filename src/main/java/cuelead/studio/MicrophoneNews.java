package cuelead.studio;

import java.util.Optional;

/** Notices while a take is made that the microphone hears nothing, or too much, and says each once. */
final class MicrophoneNews {
    /** By then somebody has called. */
    private static final double SILENT_SECONDS = 20;
    /** Quieter than 40 dB below full scale nobody is heard well. */
    private static final double QUIET_PEAK = 0.01;

    private static final int MOST_FLAT_TOPS = 20;

    private final double firstCallSeconds;
    private final FlatTops flatTops = new FlatTops();
    private boolean isTooLoudTold;
    private boolean isTooQuietTold;

    MicrophoneNews(double firstCallSeconds) {
        this.firstCallSeconds = firstCallSeconds;
    }

    /**
     * A sentence, where there is something new to be said.
     *
     * @param heard       what was heard last
     * @param peak        the loudest so far
     * @param songSeconds where the song is
     */
    Optional<String> of(float[] heard, float peak, double songSeconds) {
        flatTops.add(heard);
        if (!isTooLoudTold && flatTops.count() > MOST_FLAT_TOPS) {
            isTooLoudTold = true;
            return Optional.of("The microphone is too loud, so words may be misheard: turn it down.");
        }
        if (!isTooQuietTold && songSeconds > firstCallSeconds + SILENT_SECONDS && peak < QUIET_PEAK) {
            isTooQuietTold = true;
            return Optional.of(
                    peak < TakeCheck.SILENT_PEAK
                            ? "The microphone hears nothing: see whether it is the right one (\"cuelead devices\"), switched"
                                    + " on and not muted."
                            : "The microphone hears you very softly: come nearer, or turn it up.");
        }
        return Optional.empty();
    }
}
