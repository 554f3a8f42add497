package cuelead.voice;

/**
 * One sound as the synthesizer made it.
 *
 * @param name     lower case without stress digit; silence is {@code pau}
 * @param stressed whether its syllable carries the stress
 * @param word     which word of the phrase it belongs to, from 0; -1 for a pause
 */
record SpokenPhone(String name, double startSeconds, double endSeconds, boolean stressed, int word) {
    static final String PAUSE = "pau";

    boolean isPause() {
        return name.equals(PAUSE);
    }

    /** The same sound on a time line that begins so many seconds later. */
    SpokenPhone earlierBy(double seconds) {
        return new SpokenPhone(name, startSeconds - seconds, endSeconds - seconds, stressed, word);
    }
}
