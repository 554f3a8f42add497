package cuelead.steer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The keys of what plays as a user reads them.
 *
 * @param lines all of them, keys that belong together on one line
 * @param hints the most wanted keys on one line, from the fullest to the shortest
 */
public record KeyHelp(List<KeyHelp.Line> lines, List<String> hints) {
    private static final String BETWEEN_COLUMNS = "  ";

    /** Of a practice. */
    public static final KeyHelp PRACTICE = new KeyHelp(
            List.of(
                    new Line("pause, go on", Order.PAUSE_OR_GO_ON),
                    new Line("section on, back", Order.NEXT_SECTION, Order.PREVIOUS_SECTION),
                    new Line("wall on, back", Order.NEXT_WALL, Order.PREVIOUS_WALL),
                    new Line("section, wall again", Order.SECTION_AGAIN, Order.WALL_AGAIN),
                    new Line("repeat it, go on", Order.REPEAT_SECTION),
                    new Line("slower, faster", Order.SLOWER, Order.FASTER),
                    new Line("from the top", Order.FROM_THE_TOP),
                    new Line("all calls back", Order.ALL_CALLS_BACK),
                    new Line("fade on, off", Order.FADE),
                    new Line("click on, off", Order.CLICK),
                    new Line("fewer, more calls", Order.FEWER_CALLS, Order.MORE_CALLS),
                    new Line("lead less, more", Order.SHORTER_LEAD, Order.LONGER_LEAD),
                    new Line("dip less, more", Order.LESS_DIP, Order.MORE_DIP),
                    new Line("voice softer, louder", Order.SOFTER_VOICE, Order.LOUDER_VOICE),
                    new Line("calls left, right, both", Order.OTHER_SIDE),
                    new Line("ear, screen early, late", Order.SOONER, Order.LATER),
                    new Line("count 1 is now", Order.COUNT_ONE_IS_NOW),
                    new Line("dance beat early, late", Order.BEAT_EARLIER, Order.BEAT_LATER),
                    new Line("dance eight early, late", Order.EIGHT_EARLIER, Order.EIGHT_LATER),
                    new Line("dance wall early, late", Order.WALL_EARLIER, Order.WALL_LATER),
                    new Line("take these moves back", Order.TAKE_REALIGNMENT_BACK),
                    new Line("these keys; quit", Order.HELP, Order.QUIT)),
            List.of(
                    "space pause  left/right section  up/down wall  a again  r repeat  ? keys  q quit",
                    "space pause  left/right section  up/down wall  ? keys  q quit",
                    "space pause  left/right section  ? keys  q quit",
                    "space pause  ? keys  q quit",
                    "? keys  q quit"));

    /** Of a lesson. */
    public static final KeyHelp LESSON = new KeyHelp(
            List.of(
                    new Line("pause, go on", Order.PAUSE_OR_GO_ON),
                    new Line("pass on, back", Order.NEXT_SECTION, Order.PREVIOUS_SECTION),
                    new Line("this pass again", Order.SECTION_AGAIN),
                    new Line("again slower, faster", Order.SLOWER, Order.FASTER),
                    new Line("ear, screen early, late", Order.SOONER, Order.LATER),
                    new Line("these keys; quit", Order.HELP, Order.QUIT)),
            List.of(
                    "space pause  left/right pass  a again  - slower  + faster  ? keys  q quit",
                    "space pause  left/right pass  - slower  + faster  ? keys  q quit",
                    "space pause  left/right pass  ? keys  q quit",
                    "space pause  ? keys  q quit",
                    "? keys  q quit"));

    public KeyHelp {
        lines = List.copyOf(lines);
        hints = List.copyOf(hints);
    }

    /**
     * Keys and what they do.
     *
     * @param does in the order of the keys
     */
    public record Line(String does, List<Order> orders) {
        Line(String does, Order... orders) {
            this(does, List.of(orders));
        }

        /** As they stand on a keyboard, in the order of what they do. */
        public List<String> keys() {
            return orders.stream().map(Order::key).toList();
        }
    }

    /** In two columns where the width allows, else in one. */
    public List<String> inColumns(int width) {
        int half = (lines.size() + 1) / 2;
        List<String> left = column(lines.subList(0, half));
        List<String> right = column(lines.subList(half, lines.size()));
        int leftWidth = widest(left);
        if (leftWidth + BETWEEN_COLUMNS.length() + widest(right) > width) {
            return column(lines);
        }
        List<String> both = new ArrayList<>();
        for (int i = 0; i < half; i++) {
            both.add(padded(left.get(i), leftWidth) + BETWEEN_COLUMNS + (i < right.size() ? right.get(i) : ""));
        }
        return both;
    }

    private static List<String> column(List<Line> lines) {
        List<String> keys =
                lines.stream().map(line -> String.join(" ", line.keys())).toList();
        int keysWidth = widest(keys);
        return IntStream.range(0, lines.size())
                .mapToObj(i -> padded(keys.get(i), keysWidth + 1) + lines.get(i).does())
                .toList();
    }

    private static int widest(List<String> texts) {
        return texts.stream().mapToInt(String::length).max().orElse(0);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }

    /** The fullest hint that fits. */
    public String hint(PlayState.Motion motion, int width) {
        String hint = hints.stream()
                .filter(text -> text.length() <= width)
                .findFirst()
                .orElse(hints.get(hints.size() - 1));
        return motion == PlayState.Motion.PAUSED ? hint.replace("space pause", "space go on") : hint;
    }
}
