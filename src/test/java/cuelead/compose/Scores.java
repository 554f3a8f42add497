package cuelead.compose;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Scores for the tests: the demo songs' and a small one. */
final class Scores {
    static final Path DEMO_SONGS = Path.of("demo-songs");

    private Scores() {}

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Score demo(String name) {
        return score(name, text(DEMO_SONGS.resolve("scores").resolve(name + ".score")));
    }

    static Score score(String name, String text) {
        ScoreReader.Reading reading = ScoreReader.read(name + ".score", name, text);
        return reading.score()
                .orElseThrow(
                        () -> new IllegalArgumentException(reading.problems().toString()));
    }

    /** Sixteen bars with a kick on every beat, in the metre, tempo and drift that the head says. */
    static Score kicks(String head, String steps) {
        return score("kicks", """
                title: Kicks
                key: C major
                %s

                [band]
                kit: kit

                [drums every]
                kick: %s

                [passage walk]
                chords: C | F | G | C
                chords: C | F | G | C

                [form]
                walk: drums=every push=-0.5
                walk: drums=every push=+1
                """.formatted(head, steps));
    }
}
