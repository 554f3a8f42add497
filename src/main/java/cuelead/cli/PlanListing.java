package cuelead.cli;

import cuelead.dance.Count;
import cuelead.plan.Call;
import cuelead.plan.CallPlan;
import cuelead.plan.LeftOut;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import cuelead.practice.Practice;
import cuelead.practice.SpokenCall;
import cuelead.practice.Wish;
import cuelead.steer.FitListing;
import cuelead.steer.SongEnd;
import cuelead.steer.Told;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/** A call plan to be read: wall by wall what is called when, what was left out and why, and how the music ends. */
final class PlanListing {
    private static final String COLUMNS = "  %-8s %-6s %8s %6s %6s %1s %s%s";
    /** Marks a call that leaves little room. */
    private static final String TIGHT = "!";

    private final Practice practice;
    private final Wish wish;
    private final PrintStream out;

    PlanListing(Practice practice, Wish wish, PrintStream out) {
        this.practice = practice;
        this.wish = wish;
        this.out = out;
    }

    void print() {
        List<Call> calls = practice.spokenCalls().stream().map(SpokenCall::call).toList();
        out.println(practice.dance().header().title());
        Timeline timeline = practice.timeline();
        out.println("Count 1 falls at " + Told.minutes(timeline.grid().secondsAt(timeline.countOne())) + ".");
        int[] walls = headings(calls);
        for (int i = 0; i < walls.length; i++) {
            if (i == 0 || walls[i] != walls[i - 1]) {
                printWall(walls[i]);
            }
            out.println(line(calls.get(i), walls[i]));
        }
        printTight(calls);
        printLeftOut();
        out.println();
        FitListing.lines(practice).forEach(out::println);
    }

    /**
     * The wall under which each call stands: the lowest that is still called for, so that what is announced early for
     * the next wall stands among the calls that are heard with it, and the count-in with the first wall.
     */
    private static int[] headings(List<Call> calls) {
        int[] walls = new int[calls.size()];
        int lowest = Integer.MAX_VALUE;
        for (int i = walls.length - 1; i >= 0; i--) {
            boolean isCountIn = calls.get(i).kind() == Call.Kind.COUNT_IN;
            lowest = isCountIn ? 1 : Math.min(lowest, calls.get(i).wall());
            walls[i] = lowest;
        }
        return walls;
    }

    private void printWall(int wall) {
        out.println();
        out.println("Wall " + wall + facing(wall));
        out.printf(Locale.ROOT, COLUMNS + "%n", "", "count", "time", "lead", "room", "", "call", "");
    }

    private String facing(int wall) {
        return practice.timeline().runs().stream()
                .filter(run -> run.isWall() && run.wall() == wall)
                .findFirst()
                .map(PlanListing::facing)
                .orElse("");
    }

    private static String facing(Run run) {
        String restart = run.restart().isPresent() ? ", broken off after count " + run.counts() : "";
        return ", facing " + Told.facing(run.startFacing()) + restart;
    }

    private static String line(Call call, int heading) {
        String room = call.roomSeconds().isPresent()
                ? String.format(Locale.ROOT, "%.2f", call.roomSeconds().getAsDouble())
                : "";
        return String.format(
                Locale.ROOT,
                COLUMNS,
                call.kind() == Call.Kind.COUNT_IN ? "count-in" : call.section(),
                call.count().map(Count::label).orElse(""),
                Told.minutes(call.centreSeconds()),
                Told.decimal(call.lead().toDecimal()),
                room,
                isTight(call) ? TIGHT : "",
                call.words(),
                call.wall() > heading ? "   (for wall " + call.wall() + ")" : "");
    }

    private static boolean isTight(Call call) {
        return call.roomSeconds().orElse(CallPlan.EASY_ROOM_SECONDS) < CallPlan.EASY_ROOM_SECONDS;
    }

    private void printTight(List<Call> calls) {
        long tight = calls.stream().filter(PlanListing::isTight).count();
        if (tight > 0) {
            out.println();
            out.println(TIGHT + " = less than " + CallPlan.EASY_ROOM_SECONDS + " s from the end of the call to the"
                    + " movement: " + tight + " of " + Told.number(calls.size(), "call") + ".");
            out.println("More lead (--lead) gives more room.");
        }
    }

    private void printLeftOut() {
        double from = practice.rate().secondsAt(practice.fromFrame());
        double to = practice.rate().secondsAt(practice.toFrame());
        boolean isPiece = wish.fromSeconds() > 0 || wish.toSeconds().isPresent();
        List<LeftOut> all = practice.plan().leftOut();
        List<String> lines =
                LeftOutListing.lines(isPiece ? LeftOutListing.within(all, practice.timeline(), from, to) : all);
        if (lines.isEmpty()) {
            return;
        }
        out.println();
        out.println(isPiece ? "Left out in this piece" : "Left out in the whole song");
        lines.forEach(line -> out.println("  " + line));
    }

    /** How the music leaves the dancers, in one sentence. */
    static String ending(Practice practice) {
        return SongEnd.of(practice.timeline(), practice.song().isPresent() ? "The song" : "The track");
    }
}
