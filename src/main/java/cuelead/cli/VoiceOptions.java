package cuelead.cli;

import cuelead.practice.VoiceWish;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Who speaks: the same for all commands that call. */
final class VoiceOptions {
    @Option(
            names = "--words",
            paramLabel = "DIR",
            description = "A folder of your own recorded call-words: sound files named after the word.")
    private Optional<Path> words;

    @Option(
            names = "--pronounce",
            paramLabel = "FILE",
            description = "A text file of how words are to be said, one a line: chasse = sha say.")
    private Optional<Path> pronunciations;

    @Option(
            names = "--voice",
            paramLabel = "VOICE",
            converter = Values.Speaker.class,
            defaultValue = "built-in",
            description = "Who says words that you have not recorded: built-in, or espeak-ng where that program is"
                    + " installed (clearer). Usual is built-in.")
    private VoiceWish.Speaker speaker;

    VoiceWish wish() {
        return new VoiceWish(words, speaker, pronunciations);
    }
}
