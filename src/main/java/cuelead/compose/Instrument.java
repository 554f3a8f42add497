package cuelead.compose;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The instruments that a band may have, by their General MIDI programs (MIDI Manufacturers Association, General
 * MIDI System Level 1, sound set).
 *
 * <p>Each is played a little early, so that its attack is heard on time: the lead is the time from note-on to a
 * tenth to a third of the full attack, measured on single notes of the FluidR3 sound font.
 */
enum Instrument {
    KIT(0, 0),
    PIANO(0, 4),
    HONKY_TONK(3, 4),
    GLOCKENSPIEL(9, 11),
    VIBRAPHONE(11, 4),
    MARIMBA(12, 2),
    DULCIMER(15, 3),
    DRAWBAR_ORGAN(16, 9),
    ACCORDION(21, 24),
    HARMONICA(22, 20),
    BANDONEON(23, 18),
    NYLON_GUITAR(24, 8),
    STEEL_GUITAR(25, 8),
    JAZZ_GUITAR(26, 8),
    CLEAN_GUITAR(27, 10),
    MUTED_GUITAR(28, 11),
    OVERDRIVEN_GUITAR(29, 18),
    UPRIGHT_BASS(32, 8),
    FINGERED_BASS(33, 15),
    PICKED_BASS(34, 28),
    PIZZICATO(45, 6),
    HARP(46, 4),
    STRINGS(48, 30),
    SLOW_STRINGS(49, 80),
    CLARINET(71, 32),
    FLUTE(73, 30),
    RECORDER(74, 24),
    WHISTLE(78, 26),
    BANJO(105, 4),
    FIDDLE(110, 30);

    private final int program;
    private final int leadMilliseconds;

    Instrument(int program, int leadMilliseconds) {
        this.program = program;
        this.leadMilliseconds = leadMilliseconds;
    }

    /** General MIDI program, 0-based. */
    int program() {
        return program;
    }

    /** How much before its time a note must begin. */
    double leadSeconds() {
        return leadMilliseconds / 1000.0;
    }

    /** As written in a score: lower case, hyphens. */
    String scoreName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Instrument> named(String scoreName) {
        return Arrays.stream(values())
                .filter(each -> each.scoreName().equals(scoreName))
                .findFirst();
    }

    static List<String> names() {
        return Arrays.stream(values()).map(Instrument::scoreName).toList();
    }
}
