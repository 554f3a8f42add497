package cuelead.plan;

import cuelead.dance.CountRate;
import cuelead.dance.Ending;
import cuelead.dance.Metre;
import cuelead.report.Problem;
import cuelead.time.BeatGrid;
import java.util.ArrayList;
import java.util.List;

/** What keeps a dance from fitting the song over which it is laid; silent where nothing does. */
public final class SongCheck {
    /** Bars of the song are known by their mean length in beats; half a beat and more off is another metre. */
    private static final double METRE_TOLERANCE_BEATS = 0.4;

    private static final double WALTZ_BEATS = 3;
    private static final double COMMON_BEATS = 4;

    private final Timeline timeline;
    private final String sheet;
    private final List<Problem> problems = new ArrayList<>();

    private SongCheck(Timeline timeline, String sheet) {
        this.timeline = timeline;
        this.sheet = sheet;
    }

    /**
     * Compares a dance with its song.
     *
     * @param sheet the file of the sheet as its user named it
     */
    public static List<Problem> check(Timeline timeline, String sheet) {
        SongCheck check = new SongCheck(timeline, sheet);
        check.metre();
        if (timeline.ending().last().isEmpty()) {
            check.warning(
                    0,
                    "song_too_short",
                    "The song ends before count 1.",
                    "Check \"Intro:\" or \"Count 1:\" at the head of the sheet, or the song.");
            return check.problems;
        }
        timeline.dance().ending().ifPresent(check::ending);
        check.sequence();
        return check.problems;
    }

    private void metre() {
        boolean isWaltz = timeline.dance().header().metre() == Metre.SIXES;
        double wrong = isWaltz ? COMMON_BEATS : WALTZ_BEATS;
        if (timeline.countRate() == CountRate.ONE && Math.abs(beatsInBar() - wrong) < METRE_TOLERANCE_BEATS) {
            warning(
                    0,
                    "song_metre",
                    isWaltz
                            ? "The sheet is a waltz, but the song has four beats to the bar."
                            : "The sheet counts eights, but the song has three beats to the bar, as a waltz.",
                    "Choose another song, or correct its beats (\"cuelead beats\").");
        }
    }

    private double beatsInBar() {
        BeatGrid grid = timeline.grid();
        long bars = 0;
        for (int i = 0; i < grid.size(); i++) {
            bars += grid.beatInBar(i) == 1 ? 1 : 0;
        }
        return bars == 0 ? 0 : (double) grid.size() / bars;
    }

    private void ending(Ending ending) {
        boolean isDanced = timeline.runs().stream().anyMatch(Run::isEnding);
        long rest = Math.round(timeline.restSeconds());
        boolean isBegun = timeline.walls() >= ending.wall().orElse(0);
        if (isDanced && rest >= Timeline.LONG_REST_SECONDS) {
            warning(
                    ending.line(),
                    "ending_too_early",
                    "The ending comes " + rest + " seconds before the song ends.",
                    "Correct its wall, or check the song and where count 1 falls.");
        } else if (!isDanced && (!isBegun || ending.part().isPresent())) {
            warning(
                    ending.line(),
                    "ending_not_reached",
                    "The ending comes" + place(ending) + ", but the song ends on count "
                            + timeline.ending().last().orElseThrow().countInRun() + " of wall " + timeline.walls()
                            + ".",
                    "Correct its wall and count, or check the song and where count 1 falls.");
        }
    }

    private static String place(Ending ending) {
        String count = ending.afterCount().isPresent()
                ? " after count " + ending.afterCount().getAsInt() + " of"
                : " on";
        return count + (ending.wall().isPresent() ? " wall " + ending.wall().getAsInt() : " the last wall");
    }

    private void sequence() {
        long rest = Math.round(timeline.restSeconds());
        if (timeline.isUsedUp()) {
            warning(
                    0,
                    "sequence_used_up",
                    "The sequence is used up " + rest + " seconds before the song ends.",
                    "Lengthen the sequence, or end the song earlier.");
        }
    }

    private void warning(int line, String kind, String sentence, String tryThis) {
        problems.add(new Problem(Problem.Severity.WARNING, kind, sheet, line, 0, sentence, tryThis));
    }
}
