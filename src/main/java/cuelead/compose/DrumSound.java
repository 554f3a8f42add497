package cuelead.compose;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The drums of the kit, by their General MIDI keys, each with its lead as in {@link Instrument} (here to a tenth
 * of the peak, in tenths of a millisecond).
 */
enum DrumSound {
    KICK(36, 44),
    STICK(37, 46),
    SNARE(38, 39),
    CLAP(39, 40),
    HAT(42, 21),
    PEDAL(44, 20),
    OPEN_HAT(46, 24),
    LOW_TOM(45, 28),
    MIDDLE_TOM(47, 26),
    HIGH_TOM(50, 28),
    CRASH(49, 36),
    RIDE(51, 31),
    BELL(53, 29),
    TAMBOURINE(54, 46),
    SHAKER(70, 110),
    BLOCK(76, 42);

    private final int key;
    private final int leadTenths;

    DrumSound(int key, int leadTenths) {
        this.key = key;
        this.leadTenths = leadTenths;
    }

    int key() {
        return key;
    }

    double leadSeconds() {
        return leadTenths / 10_000.0;
    }

    String scoreName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<DrumSound> named(String scoreName) {
        return Arrays.stream(values())
                .filter(each -> each.scoreName().equals(scoreName))
                .findFirst();
    }

    /** The drum with a key; the key must be one of the kit's. */
    static DrumSound ofKey(int key) {
        return Arrays.stream(values())
                .filter(each -> each.key == key)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no drum has the key " + key));
    }

    static List<String> names() {
        return Arrays.stream(values()).map(DrumSound::scoreName).toList();
    }
}
