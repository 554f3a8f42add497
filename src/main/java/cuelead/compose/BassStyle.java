package cuelead.compose;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a bass plays the chords; {@link BassLine} has the notes. */
enum BassStyle {
    /** One long note a chord. */
    HOLD,
    /** Root and fifth on every other beat, a step into the next root. */
    TWO,
    /** A note a beat: root, third, fifth, then a step into the next root. */
    WALK,
    /** Root on one; a step into the next root on three; the fifth where the chord stays. */
    WALTZ,
    /** Root, its echo ahead of three, fifth, and a push into the next root. */
    PUSHED,
    /** Even half beats, with the octave for accents. */
    DRIVE;

    String scoreName() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<BassStyle> named(String scoreName) {
        return Arrays.stream(values())
                .filter(each -> each.scoreName().equals(scoreName))
                .findFirst();
    }

    static List<String> names() {
        return Arrays.stream(values()).map(BassStyle::scoreName).toList();
    }
}
