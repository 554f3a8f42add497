package cuelead.practice;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Who is to speak, and how.
 *
 * @param ownWords       a folder of recorded call-words, which come first
 * @param speaker        who says all other words
 * @param pronunciations a text file of how words are to be said
 */
public record VoiceWish(Optional<Path> ownWords, Speaker speaker, Optional<Path> pronunciations) {
    /** The built-in voice as it is. */
    public static final VoiceWish USUAL = new VoiceWish(Optional.empty(), Speaker.BUILT_IN, Optional.empty());

    /** A voice that makes speech of text. */
    public enum Speaker {
        BUILT_IN,
        /** The program of that name, where a user has installed it. */
        ESPEAK_NG
    }

    /** The same with a folder of recordings. */
    public VoiceWish withOwnWords(Optional<Path> folder) {
        return new VoiceWish(folder, speaker, pronunciations);
    }
}
