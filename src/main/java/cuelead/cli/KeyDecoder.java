package cuelead.cli;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;

/**
 * Letters from a terminal to key strokes. Keys without a letter come as control sequences: ESC [ parameters and a
 * final letter (ECMA-48, section 5.4), or ESC O and a letter; which key sends which is that of the VT220 and xterm
 * ("XTerm control sequences", PC-style function keys).
 */
final class KeyDecoder {
    static final int END = -1;
    /** No letter came in time. */
    static final int NONE_YET = -2;

    private static final int ESCAPE = 27;
    /** The letters of one sequence come at once; a person needs longer between two keys. */
    private static final long WITHIN_SEQUENCE_MILLIS = 50;

    private static final int LONGEST_SEQUENCE = 16;
    private static final String MEANS_NOTHING = "";

    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("A", "up"),
            Map.entry("B", "down"),
            Map.entry("C", "right"),
            Map.entry("D", "left"),
            Map.entry("H", "home"),
            Map.entry("1~", "home"),
            Map.entry("7~", "home"),
            Map.entry("5~", "page up"),
            Map.entry("6~", "page down"));

    private final Letters letters;

    /** Where letters come from. */
    @FunctionalInterface
    interface Letters {
        /**
         * The next letter, {@link #END} or {@link #NONE_YET}.
         *
         * @param patienceMillis how long to wait; 0 = for ever
         */
        int next(long patienceMillis) throws IOException;
    }

    KeyDecoder(Letters letters) {
        this.letters = letters;
    }

    /** Waits for a key stroke: a letter, a key's name, or nothing known; empty at the end of the input. */
    Optional<String> next() throws IOException {
        int letter = letters.next(0);
        return switch (letter) {
            case END -> Optional.empty();
            case ESCAPE -> Optional.of(afterEscape());
            case '\r', '\n' -> Optional.of("enter");
            default -> Optional.of(letter < ' ' ? MEANS_NOTHING : Character.toString(letter));
        };
    }

    private String afterEscape() throws IOException {
        return switch (letters.next(WITHIN_SEQUENCE_MILLIS)) {
            case '[' -> sequence();
            case 'O' -> named(Character.toString(Math.max(0, letters.next(WITHIN_SEQUENCE_MILLIS))));
            default -> MEANS_NOTHING; // Escape itself, or a letter with Alt
        };
    }

    private String sequence() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < LONGEST_SEQUENCE; i++) {
            int letter = letters.next(WITHIN_SEQUENCE_MILLIS);
            if (letter < 0) {
                return MEANS_NOTHING;
            }
            text.append((char) letter);
            // the Linux console sends ESC [ [ and a letter for F1 to F5
            boolean isFinal = letter >= '@' && letter <= '~' && !text.toString().equals("[");
            if (isFinal) {
                return named(text.toString());
            }
        }
        return MEANS_NOTHING;
    }

    private static String named(String sequence) {
        return NAMES.getOrDefault(sequence, MEANS_NOTHING);
    }
}
