package cuelead.rehearse;

/**
 * A word that was heard in a take; all times in seconds of the take.
 *
 * @param centreSeconds its perceptual centre
 */
public record HeardWord(String word, double startSeconds, double centreSeconds, double endSeconds) {}
