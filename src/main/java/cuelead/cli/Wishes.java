package cuelead.cli;

import cuelead.practice.VoiceWish;
import cuelead.practice.Wish;
import java.nio.file.Path;
import java.util.Optional;

/** Wishes that are made without options. */
final class Wishes {
    private Wishes() {}

    /** The whole song with all its calls. */
    static Wish usual(Path sheet, Optional<Path> song, Optional<Path> words, Optional<Path> figures) {
        return Wish.of(sheet)
                .song(song)
                .voice(VoiceWish.USUAL.withOwnWords(words))
                .ownFigures(figures)
                .wish();
    }
}
