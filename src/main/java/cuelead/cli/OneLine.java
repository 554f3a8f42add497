package cuelead.cli;

import cuelead.steer.DancePlace;
import cuelead.steer.PlayState;
import cuelead.steer.Scene;
import cuelead.steer.Told;
import java.util.List;
import org.jline.utils.AttributedString;

/** A scene on one line: where in the dance, the call now and next. In a narrow terminal the place gives way first. */
final class OneLine {
    private static final String CUT = "...";
    /** With fewer columns the times and walls leave too little for the calls. */
    private static final int WIDE = 78;

    private static final int NARROW = 50;

    private OneLine() {}

    /** At most so many columns. */
    static String of(Scene scene, int columns) {
        for (String form : forms(scene, columns)) {
            if (form.length() <= columns) {
                return form;
            }
        }
        return bothCalls(scene, columns);
    }

    /** Both calls with the end of each cut off, where not even they fit. */
    private static String bothCalls(Scene scene, int columns) {
        String now = cut("[" + scene.now() + "]", scene.next().isEmpty() ? columns : columns * 3 / 5);
        return cut(now + " " + scene.next(), columns);
    }

    /** From the fullest that a terminal of this width shows, so that the place does not jump with each call. */
    private static List<String> forms(Scene scene, int columns) {
        DancePlace place = scene.place();
        String count = place.count().isEmpty() ? "" : "count " + place.count();
        String facing = place.facing().isEmpty() ? "" : "(" + place.facing() + ")";
        String time = Told.minutesAndSeconds(scene.songSeconds());
        String shortPlace = joined(place.wall(), place.section(), place.count());
        String full = joined(time, place.wall(), facing, place.section(), count, calls(scene));
        String middle = joined(place.wall(), facing, place.section(), count, calls(scene));
        String narrow = joined(shortPlace, calls(scene));
        List<String> all = List.of(full, middle, narrow, calls(scene));
        return all.subList(columns >= WIDE ? 0 : columns >= NARROW ? 1 : 2, all.size());
    }

    private static String calls(Scene scene) {
        String next = scene.next().isEmpty() ? "" : "next: " + scene.next();
        return joined(halt(scene.motion()), "[" + (scene.now().isEmpty() ? " " : scene.now()) + "]", next);
    }

    private static String halt(PlayState.Motion motion) {
        return switch (motion) {
            case PLAYING -> "";
            case PAUSED -> "PAUSED";
            case NO_MUSIC -> "NO MUSIC";
            case NO_CALLS -> "NO CALLS";
            case NO_DEVICE -> "NO SOUND";
        };
    }

    private static String joined(String... parts) {
        return String.join(
                "  ", List.of(parts).stream().filter(part -> !part.isEmpty()).toList());
    }

    /** The beginning of a text where the whole is too long. */
    static String cut(String text, int columns) {
        AttributedString whole = new AttributedString(text);
        if (whole.columnLength() <= columns) {
            return text;
        }
        return whole.columnSubSequence(0, Math.max(0, columns - CUT.length()))
                + CUT.substring(0, Math.max(0, Math.min(CUT.length(), columns)));
    }
}
