package cuelead.practice;

import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/** Wishes that ask for nothing special but one thing. */
final class Wishes {
    private Wishes() {}

    static Wish of(Path sheet) {
        return wish(sheet, Optional.empty(), Optional.empty(), 0, OptionalDouble.empty());
    }

    static Wish withSong(Path sheet, Path song) {
        return wish(sheet, Optional.of(song), Optional.empty(), 0, OptionalDouble.empty());
    }

    static Wish atTempo(Path sheet, double beatsPerMinute) {
        return wish(sheet, Optional.empty(), Optional.of(new Tempo(beatsPerMinute)), 0, OptionalDouble.empty());
    }

    static Wish atTempo(Path sheet, double beatsPerMinute, double leadBeats) {
        Optional<Tempo> tempo = Optional.of(new Tempo(beatsPerMinute));
        return wish(sheet, Optional.empty(), tempo, OptionalDouble.of(leadBeats), 0, OptionalDouble.empty());
    }

    static Wish pieceAtTempo(Path sheet, double beatsPerMinute, double fromSeconds, double toSeconds) {
        Optional<Tempo> tempo = Optional.of(new Tempo(beatsPerMinute));
        return wish(sheet, Optional.empty(), tempo, fromSeconds, OptionalDouble.of(toSeconds));
    }

    static Wish songAndTempo(Path sheet, Path song, double beatsPerMinute) {
        Optional<Tempo> tempo = Optional.of(new Tempo(beatsPerMinute));
        return wish(sheet, Optional.of(song), tempo, 0, OptionalDouble.empty());
    }

    private static Wish wish(
            Path sheet, Optional<Path> song, Optional<Tempo> tempo, double fromSeconds, OptionalDouble toSeconds) {
        return wish(sheet, song, tempo, OptionalDouble.empty(), fromSeconds, toSeconds);
    }

    private static Wish wish(
            Path sheet,
            Optional<Path> song,
            Optional<Tempo> tempo,
            OptionalDouble leadBeats,
            double fromSeconds,
            OptionalDouble toSeconds) {
        return Wish.of(sheet)
                .song(song)
                .tempo(tempo)
                .leadBeats(leadBeats)
                .between(fromSeconds, toSeconds)
                .wish();
    }
}
