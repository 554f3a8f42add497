package cuelead.sound;

/**
 * A click on a beat.
 *
 * @param frame where its attack begins, frames of the song
 * @param sound which of the two clicks
 */
public record ClickAt(long frame, ClickSound sound) {}
