package cuelead.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;

/**
 * Lays a scene out on the lines of a terminal. Where there are few lines, what matters least goes first; the call now
 * and the call next never do.
 *
 * @param columns of the terminal
 * @param rows    of the terminal
 */
record Layout(int columns, int rows) {
    /** A line each for the call now and the call next, and one for the cursor. */
    private static final int LEAST_ROWS = 3;

    private static final String NOW = "now   ";
    private static final String NEXT = "next  ";
    private static final String THEN = "then  ";
    private static final String BETWEEN = "   ";

    /** What is shown below the dance. */
    enum Below {
        HINT,
        ALL_KEYS
    }

    /** A line and how soon it gives way: 1 last. */
    private record Ranked(int rank, int order, AttributedString line) {}

    /** Fewer lines than the terminal has, each shorter than it is wide, so that nothing scrolls or wraps. */
    List<AttributedString> lines(Scene scene, Below below) {
        if (rows < LEAST_ROWS) {
            return List.of(bold(OneLine.of(scene, width())));
        }
        List<Ranked> all = new ArrayList<>();
        DancePlace place = scene.place();
        add(all, 9, plain(title(scene)));
        add(all, 4, plain(wall(scene)));
        add(all, 3, section(place));
        add(all, 11, plain(""));
        add(all, 1, call(NOW, scene.now(), AttributedStyle.BOLD));
        add(all, 2, call(NEXT, scene.next(), AttributedStyle.DEFAULT));
        add(all, 5, plain(place.atWallEnd().isEmpty() ? "" : THEN + place.atWallEnd()));
        add(all, 10, plain(""));
        add(all, 6, scene.motion() == PlayState.Motion.PAUSED ? bold(scene.state()) : plain(scene.state()));
        if (below == Below.ALL_KEYS) {
            KeyHelp.lines(width()).forEach(line -> add(all, 8, plain(line)));
        } else {
            add(
                    all,
                    7,
                    scene.notice().isEmpty() ? faint(KeyHelp.hint(scene.motion(), width())) : plain(scene.notice()));
        }
        return kept(all);
    }

    private int width() {
        return Math.max(1, columns - 1);
    }

    private static void add(List<Ranked> all, int rank, AttributedString line) {
        all.add(new Ranked(rank, all.size(), line));
    }

    private List<AttributedString> kept(List<Ranked> all) {
        return all.stream()
                .sorted(Comparator.comparingInt(Ranked::rank).thenComparingInt(Ranked::order))
                .limit(rows - 1)
                .sorted(Comparator.comparingInt(Ranked::order))
                .map(Ranked::line)
                .toList();
    }

    private String title(Scene scene) {
        String time = Told.minutesAndSeconds(scene.songSeconds()) + " of " + Told.minutesAndSeconds(scene.endSeconds());
        int room = width() - time.length() - BETWEEN.length();
        if (room < 1) {
            return time;
        }
        String title = OneLine.cut(scene.title(), room);
        return title + " ".repeat(Math.max(BETWEEN.length(), width() - title.length() - time.length())) + time;
    }

    private static String wall(Scene scene) {
        DancePlace place = scene.place();
        String facing = place.facing().isEmpty() ? "" : ", facing " + place.facing();
        return place.wall() + facing + (scene.goal().isEmpty() ? "" : BETWEEN + "run-up to " + scene.goal());
    }

    /** {@code S3  1  2 [3] 4 ...  HEADING}: each count keeps its place whichever is danced. */
    private AttributedString section(DancePlace place) {
        AttributedStringBuilder line = new AttributedStringBuilder();
        line.append(place.section().isEmpty() ? "" : place.section() + " ");
        for (int i = 0; i < place.eight().counts().size(); i++) {
            String count = place.eight().counts().get(i);
            if (i == place.eight().now()) {
                line.styled(AttributedStyle.BOLD, "[" + count + "]");
            } else {
                line.append(" ").append(count).append(" ");
            }
        }
        if (!place.heading().isEmpty()) {
            int room = width() - line.columnLength() - BETWEEN.length();
            line.append(room < 1 ? "" : BETWEEN + OneLine.cut(place.heading(), room));
        }
        return cut(line.toAttributedString());
    }

    private AttributedString call(String label, String words, AttributedStyle style) {
        AttributedStringBuilder line = new AttributedStringBuilder().append(label);
        int room = Math.max(0, width() - label.length());
        return cut(line.styled(style, OneLine.cut(words, room)).toAttributedString());
    }

    private AttributedString plain(String text) {
        return new AttributedString(OneLine.cut(text, width()));
    }

    private AttributedString bold(String text) {
        return new AttributedString(OneLine.cut(text, width()), AttributedStyle.BOLD);
    }

    private AttributedString faint(String text) {
        return new AttributedString(OneLine.cut(text, width()), AttributedStyle.DEFAULT.faint());
    }

    private AttributedString cut(AttributedString line) {
        return line.columnSubSequence(0, width());
    }
}
