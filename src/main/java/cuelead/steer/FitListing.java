package cuelead.steer;

import cuelead.dance.Facing;
import cuelead.dance.Turn;
import cuelead.plan.DancedCount;
import cuelead.plan.SongFit;
import cuelead.plan.StyleTempos;
import cuelead.plan.Timeline;
import cuelead.practice.Practice;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Whether a dance fits its song, in sentences: walls, where the music ends, how to finish to the front, tempo. */
public final class FitListing {
    private FitListing() {}

    /** Those of a practice. */
    public static List<String> lines(Practice practice) {
        return lines(practice.timeline(), practice.song().isPresent() ? "The song" : "The track");
    }

    /**
     * Those of a dance that is laid over music.
     *
     * @param music as it is named at the head of a sentence, such as "The song"
     */
    public static List<String> lines(Timeline timeline, String music) {
        List<String> lines = new ArrayList<>();
        String ending = SongEnd.of(timeline, music);
        if (timeline.ending().last().isEmpty()) {
            return List.of(ending);
        }
        SongFit fit = SongFit.of(timeline);
        lines.add(Told.number(fit.walls(), "wall") + ", " + Told.decimal(tenths(fit.secondsAWall()))
                + " seconds a wall; " + tempo(fit));
        lines.add(ending);
        fit.toFront().map(FitListing::finish).ifPresent(lines::add);
        return lines;
    }

    private static double tenths(double number) {
        return Math.round(number * 10) / 10.0;
    }

    private static String tempo(SongFit fit) {
        String counts = Told.decimal(tenths(fit.bpm())) + " beats a minute";
        String ranges = fit.ranges().stream().map(FitListing::range).collect(Collectors.joining(", "));
        String published = fit.style().orElse("") + " is published at " + ranges;
        return switch (fit.tempo()) {
            case NOT_KNOWN -> counts + ".";
            case WITHIN -> counts + ", as it should be: " + published + ".";
            case WITHIN_OTHERWISE_COUNTED ->
                counts + ", right if the beats are counted twice or half as fast: " + published
                        + ". \"Counts a beat:\" at the head of the sheet changes how they are counted.";
            case OUTSIDE -> counts + ", unusual for the style: " + published + ".";
        };
    }

    private static String range(StyleTempos.Range range) {
        return range.lowBpm() + " to " + range.highBpm() + " (" + source(range.source()) + ")";
    }

    private static String source(String shortName) {
        return switch (shortName) {
            case "council" -> "a country-western council";
            case "social" -> "a list for social dancers";
            default -> "a ballroom council";
        };
    }

    private static String finish(SongFit.Finish finish) {
        DancedCount count = finish.count();
        String where = SongEnd.where(count.run());
        String which = "count " + count.countInRun() + and(count) + " of " + where;
        String how = finish.written().isNone()
                ? turn(finish.instead()) + " with " + (count.takesWeight() ? step(count, where) : which)
                : "on " + which + " " + turn(finish.instead()) + " instead of "
                        + finish.written().words();
        return "To finish to the front: " + how + ", and hold " + Told.facing(Facing.FRONT) + ".";
    }

    /** The step that turns nowhere else. */
    private static String step(DancedCount count, String where) {
        boolean first = count.countInRun() == 1 && count.count().isWhole();
        return first
                ? "the first step of " + where
                : "the step on count " + count.countInRun() + and(count) + " of " + where;
    }

    private static String and(DancedCount count) {
        return count.count().isWhole() ? "" : count.count().label().replaceAll("\\d", "");
    }

    private static String turn(Turn turn) {
        return turn.isNone() ? "do not turn" : "turn " + turn.words();
    }
}
