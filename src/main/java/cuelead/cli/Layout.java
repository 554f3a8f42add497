package cuelead.cli;

import cuelead.steer.DancePlace;
import cuelead.steer.Eight;
import cuelead.steer.KeyHelp;
import cuelead.steer.PlayState;
import cuelead.steer.Scene;
import cuelead.steer.Told;
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
 * @param keys    what the keys mean
 */
record Layout(int columns, int rows, KeyHelp keys) {
    /** A line each for the call now and the call next, and one for the cursor. */
    private static final int LEAST_ROWS = 3;

    /** They give way first. */
    private static final int EMPTY_LINES = 2;

    private static final String NOW = "now   ";
    private static final String NEXT = "next  ";
    private static final String THEN = "then  ";
    private static final String BETWEEN = "   ";
    private static final String PARTED = "  ";
    /** What is shown with all keys where they fit: wall, section, calls, the wall's end, how it plays, and the cursor. */
    private static final int LINES_WITH_KEYS = 6;
    /** What is shown with a page of them: section and calls, and which page it is. */
    private static final int LINES_WITH_PAGES = 4;

    /**
     * What is shown below the dance.
     *
     * @param keysPage which page of the keys, from 0; below 0 = only a hint
     */
    record Below(int keysPage) {
        static final Below HINT = new Below(-1);
        static final Below ALL_KEYS = new Below(0);

        boolean isHint() {
            return keysPage < 0;
        }
    }

    /** A line and how soon it gives way: 1 last. */
    private record Ranked(int rank, int order, AttributedString line) {}

    /** What becomes of a text that is longer than a line. */
    private enum LongText {
        GOES_ON_BELOW,
        IS_CUT
    }

    /** What is shown after the key that asks for the keys: they turn page by page, then go away. */
    Below turned(Below now) {
        boolean isLast = now.keysPage() + 1 >= keyPages().size();
        return isLast ? Below.HINT : new Below(now.keysPage() + 1);
    }

    /** Fewer lines than the terminal has, each shorter than it is wide, so that nothing scrolls or wraps. */
    List<AttributedString> lines(Scene scene, Below below) {
        if (rows < LEAST_ROWS) {
            return List.of(bold(OneLine.of(scene, width())));
        }
        List<Ranked> whole = all(scene, below, LongText.GOES_ON_BELOW);
        return kept(whole.size() - EMPTY_LINES < rows ? whole : all(scene, below, LongText.IS_CUT));
    }

    private List<Ranked> all(Scene scene, Below below, LongText longText) {
        List<Ranked> all = new ArrayList<>();
        DancePlace place = scene.place();
        add(all, 9, plain(title(scene)));
        if (!scene.pass().now().isEmpty()) {
            fitted(List.of(scene.pass().now().split(" ")), " ", longText).forEach(line -> add(all, 3, bold(line)));
        }
        String runUp = scene.goal().isEmpty() ? "" : "run-up to " + scene.goal();
        String wall = place.wall() + (place.facing().isEmpty() ? "" : ", facing " + place.facing());
        fitted(List.of(wall, runUp), BETWEEN, longText).forEach(line -> add(all, 4, plain(line)));
        add(all, 3, section(place));
        add(all, 11, plain(""));
        add(all, 1, call(NOW, scene.now(), AttributedStyle.BOLD));
        add(all, 2, call(NEXT, scene.next(), AttributedStyle.DEFAULT));
        then(scene.then(), longText).forEach(line -> add(all, 5, plain(line)));
        add(all, 10, plain(""));
        boolean isPlaying = scene.motion() == PlayState.Motion.PLAYING;
        fitted(scene.state(), PARTED, longText).forEach(line -> add(all, 6, isPlaying ? plain(line) : bold(line)));
        addBelow(all, scene, below, longText);
        return all;
    }

    private void addBelow(List<Ranked> all, Scene scene, Below below, LongText longText) {
        if (!below.isHint()) {
            List<List<String>> pages = keyPages();
            List<String> page = pages.get(Math.min(below.keysPage(), pages.size() - 1));
            // keys that were asked for are wanted more than all but the count and the calls
            int rank = pages.size() == 1 ? 8 : 3;
            page.forEach(line -> add(all, rank, plain(line)));
        } else if (scene.notice().isEmpty()) {
            add(all, 7, faint(keys.hint(scene.motion(), width())));
        } else {
            fitted(List.of(scene.notice().split(" ")), " ", longText).forEach(line -> add(all, 7, plain(line)));
        }
    }

    /** The keys on as many pages as they need below the count and the calls. */
    private List<List<String>> keyPages() {
        List<String> lines = keys.inColumns(width());
        if (lines.size() < rows - LINES_WITH_KEYS) {
            return List.of(lines);
        }
        int onPage = Math.max(1, rows - 1 - LINES_WITH_PAGES);
        int pages = (lines.size() + onPage - 1) / onPage;
        List<List<String>> all = new ArrayList<>();
        for (int page = 0; page < pages; page++) {
            List<String> onThis =
                    new ArrayList<>(lines.subList(page * onPage, Math.min(lines.size(), (page + 1) * onPage)));
            onThis.add("? " + (page + 1 < pages ? "more keys" : "away") + " (" + (page + 1) + " of " + pages + ")");
            all.add(onThis);
        }
        return all;
    }

    private List<String> then(String what, LongText longText) {
        if (what.isEmpty()) {
            return List.of("");
        }
        return fitted(List.of((THEN + what).split("(?<=\\S) ")), " ", longText);
    }

    /** Parts in a line, or in as many as they need. */
    private List<String> fitted(List<String> parts, String between, LongText longText) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String part : parts) {
            boolean isTooLong = line.length() + between.length() + part.length() > width();
            if (line.length() > 0 && !part.isEmpty() && isTooLong && longText == LongText.GOES_ON_BELOW) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(Math.min(NOW.length(), width() / 4)));
                line.append(part);
            } else {
                line.append(line.length() == 0 || part.isEmpty() ? "" : between).append(part);
            }
        }
        lines.add(line.toString());
        return lines;
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

    /** With the time in the song; in a lesson, whose rounds go back and forth in it, with how long that still goes. */
    private String title(Scene scene) {
        String place =
                Told.minutesAndSeconds(scene.songSeconds()) + " of " + Told.minutesAndSeconds(scene.endSeconds());
        String time = scene.pass().left().isEmpty() ? place : scene.pass().left();
        int room = width() - time.length() - BETWEEN.length();
        if (room < 1) {
            return time;
        }
        String title = OneLine.cut(scene.title(), room);
        return title + " ".repeat(Math.max(BETWEEN.length(), width() - title.length() - time.length())) + time;
    }

    /** {@code S3  1  2 [3] 4 ...  HEADING}: each count keeps its place whichever is danced. */
    private AttributedString section(DancePlace place) {
        String name = place.section().isEmpty() ? "" : place.section() + " ";
        AttributedStringBuilder line = new AttributedStringBuilder().append(name);
        AttributedString counts = counts(place.eight(), Spacing.WIDE);
        line.append(name.length() + counts.columnLength() <= width() ? counts : counts(place.eight(), Spacing.NARROW));
        if (line.columnLength() > width()) {
            return cut(counts(place.eight(), Spacing.NARROW));
        }
        if (!place.heading().isEmpty()) {
            int room = width() - line.columnLength() - BETWEEN.length();
            line.append(room < 1 ? "" : BETWEEN + OneLine.cut(place.heading(), room));
        }
        return cut(line.toAttributedString());
    }

    /** How counts stand beside each other. */
    private enum Spacing {
        /** {@code  1 [2] 3 }. */
        WIDE,
        /** {@code  1[2]3 }. */
        NARROW
    }

    private static AttributedString counts(Eight eight, Spacing spacing) {
        AttributedStringBuilder line = new AttributedStringBuilder();
        for (int i = 0; i < eight.counts().size(); i++) {
            String count = eight.counts().get(i);
            boolean isAfterNow = i > 0 && i - 1 == eight.now();
            if (i == eight.now()) {
                line.styled(AttributedStyle.BOLD, "[" + count + "]");
            } else {
                line.append(spacing == Spacing.NARROW && isAfterNow ? "" : " ").append(count);
                line.append(spacing == Spacing.WIDE ? " " : "");
            }
        }
        return line.toAttributedString();
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
