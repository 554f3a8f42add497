package cuelead.sound;

/**
 * A reading of what is heard.
 *
 * @param frame the frame that left the speakers
 * @param nanos when, as {@link System#nanoTime}
 */
public record HeardAt(long frame, long nanos) {}
