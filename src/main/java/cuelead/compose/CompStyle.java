package cuelead.compose;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How the chords are played; {@link Comping} has the notes. */
enum CompStyle {
    /** Held as long as it lasts, joined where it stays. */
    PAD(3),
    /** Struck once and left to ring. */
    RING(4),
    /** A guitarist's hand: down on the beat, up between. */
    STRUM(4),
    /** Short, on every beat but the strong ones. */
    OFFBEATS(3),
    /** One string after the other, two a beat. */
    PICK(4),
    /** Groups of three across the beat, four a beat. */
    ROLL(3),
    /** Syncopated, with the next chord ahead of its bar. */
    STABS(3),
    /** Damped root and fifth, two a beat. */
    CHUG(2);

    private final int voices;

    CompStyle(int voices) {
        this.voices = voices;
    }

    /** How many tones sound at once, or are picked in turn. */
    int voices() {
        return voices;
    }

    String scoreName() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<CompStyle> named(String scoreName) {
        return Arrays.stream(values())
                .filter(each -> each.scoreName().equals(scoreName))
                .findFirst();
    }

    static List<String> names() {
        return Arrays.stream(values()).map(CompStyle::scoreName).toList();
    }
}
