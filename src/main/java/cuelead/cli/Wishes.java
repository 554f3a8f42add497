package cuelead.cli;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.VoiceWish;
import cuelead.practice.Wish;
import cuelead.time.Speed;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/** Wishes that are made without options. */
final class Wishes {
    private Wishes() {}

    /** The whole song with all its calls. */
    static Wish usual(Path sheet, Optional<Path> song, Optional<Path> words, Optional<Path> figures) {
        return new Wish(
                sheet,
                song,
                Optional.empty(),
                OptionalDouble.empty(),
                CallLevel.WORDS,
                CallSettings.Fading.STEADY,
                Wish.Click.SILENT,
                VoiceWish.USUAL.withOwnWords(words),
                figures,
                Optional.empty(),
                0,
                OptionalDouble.empty(),
                CallsGo.WITH_THE_MUSIC,
                Speed.ORIGINAL);
    }
}
