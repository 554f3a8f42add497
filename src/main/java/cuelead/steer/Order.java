package cuelead.steer;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What can be asked for while something plays, with the key strokes for it: a typed letter, or a key's name. Where a letter stands for less or earlier, its capital stands for more or later.
 */
public enum Order implements Ask {
    // the keys of a presenter's clicker: Page Down, Page Up, and for a black screen a point or b
    PAUSE_OR_GO_ON(" ", "p", "P", ".", "b"),
    NEXT_SECTION("right", "page down"),
    PREVIOUS_SECTION("left", "page up"),
    // of the two the wall is the greater
    SECTION_AGAIN("a"),
    WALL_AGAIN("A"),
    REPEAT_SECTION("r", "R"),
    NEXT_WALL("down"),
    PREVIOUS_WALL("up"),
    FROM_THE_TOP("t", "T", "home"),
    SHORTER_LEAD("l"),
    LONGER_LEAD("L"),
    FEWER_CALLS("c"),
    MORE_CALLS("C"),
    ALL_CALLS_BACK("enter"),
    FADE("f", "F"),
    CLICK("k", "K"),
    LESS_DIP("d"),
    MORE_DIP("D"),
    SOFTER_VOICE("v"),
    LOUDER_VOICE("V"),
    COUNT_ONE_IS_NOW("1"),
    BEAT_EARLIER("m"),
    BEAT_LATER("M"),
    EIGHT_EARLIER("e"),
    EIGHT_LATER("E"),
    WALL_EARLIER("w"),
    WALL_LATER("W"),
    TAKE_REALIGNMENT_BACK("u", "U"),
    OTHER_SIDE("s", "S"),
    SLOWER("-"),
    FASTER("+", "="),
    SOONER("o"),
    LATER("O"),
    HELP("?", "h", "H"),
    QUIT("q", "Q");

    @SuppressWarnings("ImmutableEnumChecker") // a list of List.of does not change
    private final List<String> strokes;

    Order(String... strokes) {
        this.strokes = List.of(strokes);
    }

    /** The first is the one that is shown. */
    public List<String> strokes() {
        return strokes;
    }

    /** The key that is shown, as it stands on a keyboard. */
    public String key() {
        String stroke = strokes.get(0);
        return stroke.isBlank() ? "space" : stroke;
    }

    /** What a key stroke asks for; empty when it means nothing. */
    public static Optional<Order> by(String stroke) {
        return Arrays.stream(values())
                .filter(order -> order.strokes.contains(stroke))
                .findFirst();
    }
}
