package cuelead.window.song;

import cuelead.song.Correction;
import java.util.Optional;

/** What can be asked for of a song by a button or a key. */
enum SongOrder {
    PLAY("Play", 'P', "Space", "From the beat that is selected; again, and it rests"),
    TAP("Tap along", 'T', "T", "Play from the selected beat, and tap the space bar on every beat, first on a 1"),
    ONE_IS_HERE("This is 1", 'I', "1", "The selected beat is the first of its bar and of its phrase"),
    BEGINS_HERE("The dance begins here", 'D', "D", "The selected beat is count 1 of the dance"),
    EARLIER("1 a beat earlier", 'E', "M", "Every count is a beat earlier"),
    LATER("1 a beat later", 'R', "Shift M", "Every count is a beat later"),
    HALF_BEAT("Half a beat", 'H', "H", "The beats lie between those that are shown"),
    TWICE("Twice as many", 'W', "+", "Two beats for each"),
    HALF("Half as many", 'M', "-", "One beat for two"),
    THREE_FOR_TWO("3 for 2", '3', "3", "Three beats where two are shown"),
    TWO_FOR_THREE("2 for 3", '2', "2", "Two beats where three are shown"),
    UNDO("Undo", 'U', "Control Z", "The last change is undone"),
    REDO("Redo", 'G', "Control Y", "What was undone is done again");

    private final String words;
    private final char mnemonic;
    private final String key;
    private final String tip;

    SongOrder(String words, char mnemonic, String key, String tip) {
        this.words = words;
        this.mnemonic = mnemonic;
        this.key = key;
        this.tip = tip;
    }

    String words() {
        return words;
    }

    char mnemonic() {
        return mnemonic;
    }

    /** Its key among the rows, and what it does. */
    String tip() {
        return key + ": " + tip;
    }

    /** The correction that it is, if it is one. */
    Optional<Correction> correction() {
        return switch (this) {
            case EARLIER -> Optional.of(Correction.COUNT_EARLIER);
            case LATER -> Optional.of(Correction.COUNT_LATER);
            case HALF_BEAT -> Optional.of(Correction.HALF_BEAT);
            case TWICE -> Optional.of(Correction.TWICE);
            case HALF -> Optional.of(Correction.HALF);
            case THREE_FOR_TWO -> Optional.of(Correction.THREE_FOR_TWO);
            case TWO_FOR_THREE -> Optional.of(Correction.TWO_FOR_THREE);
            default -> Optional.empty();
        };
    }
}
