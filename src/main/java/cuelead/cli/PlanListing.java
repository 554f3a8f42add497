package cuelead.cli;

import cuelead.dance.Count;
import cuelead.plan.Call;
import cuelead.plan.CallPlan;
import cuelead.plan.DancedCount;
import cuelead.plan.LeftOut;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import cuelead.practice.Practice;
import cuelead.practice.SpokenCall;
import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A call plan to be read: wall by wall what is called when, what was left out and why, and how the music ends. */
final class PlanListing {
    private static final String COLUMNS = "  %-8s %-6s %8s %6s %6s  %s%s";
    private static final int MOST_WORDS_NAMED = 8;

    private final Practice practice;
    private final PrintStream out;

    PlanListing(Practice practice, PrintStream out) {
        this.practice = practice;
        this.out = out;
    }

    void print() {
        List<Call> calls = practice.spokenCalls().stream().map(SpokenCall::call).toList();
        out.println(practice.dance().header().title());
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
        out.println(ending(practice));
    }

    /**
     * The wall under which each call stands: the lowest that is still called for, so that what is announced early for
     * the next wall stands among the calls that are heard with it, and the count-in with the first wall.
     */
    private static int[] headings(List<Call> calls) {
        int[] walls = new int[calls.size()];
        int lowest = Integer.MAX_VALUE;
        for (int i = walls.length - 1; i >= 0; i--) {
            lowest = calls.get(i).kind() == Call.Kind.COUNT_IN
                    ? lowest
                    : Math.min(lowest, calls.get(i).wall());
            walls[i] = lowest == Integer.MAX_VALUE ? 1 : lowest;
        }
        return walls;
    }

    private void printWall(int wall) {
        out.println();
        out.println("Wall " + wall + facing(wall));
        out.printf(Locale.ROOT, COLUMNS + "%n", "", "count", "time", "lead", "room", "call", "");
    }

    private String facing(int wall) {
        return practice.timeline().runs().stream()
                .filter(run -> !run.isTag() && run.wall() == wall)
                .findFirst()
                .map(PlanListing::facing)
                .orElse("");
    }

    private static String facing(Run run) {
        String restart = run.restart().isPresent() ? ", broken off after count " + run.counts() : "";
        return ", facing " + Told.facing(run.startFacing()) + restart;
    }

    private static String line(Call call, int heading) {
        boolean isTight = call.roomSeconds().orElse(CallPlan.EASY_ROOM_SECONDS) < CallPlan.EASY_ROOM_SECONDS;
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
                call.words(),
                (call.wall() > heading ? "   (for wall " + call.wall() + ")" : "")
                        + (isTight ? "   (little room to move)" : ""));
    }

    private void printTight(List<Call> calls) {
        long tight = calls.stream()
                .filter(call -> call.roomSeconds().orElse(CallPlan.EASY_ROOM_SECONDS) < CallPlan.EASY_ROOM_SECONDS)
                .count();
        if (tight > 0) {
            out.println();
            out.println(Told.number(tight, "call") + " of " + calls.size() + " leave less than "
                    + CallPlan.EASY_ROOM_SECONDS + " s from the end of the word to the movement;"
                    + " more lead (--lead) gives more room.");
        }
    }

    private void printLeftOut() {
        Map<LeftOut.Reason, Map<String, Long>> byReason = practice.plan().leftOut().stream()
                .collect(Collectors.groupingBy(
                        LeftOut::reason,
                        LinkedHashMap::new,
                        Collectors.groupingBy(LeftOut::words, LinkedHashMap::new, Collectors.counting())));
        if (byReason.isEmpty()) {
            return;
        }
        out.println();
        out.println("Left out in the whole song");
        byReason.forEach((reason, words) -> {
            long all = words.values().stream().mapToLong(count -> count).sum();
            out.println("  " + all + " because " + reason.phrase() + ": " + mostOften(words));
        });
    }

    private static String mostOften(Map<String, Long> words) {
        String named = words.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                .limit(MOST_WORDS_NAMED)
                .map(entry -> entry.getKey() + (entry.getValue() > 1 ? " (" + entry.getValue() + ")" : ""))
                .collect(Collectors.joining(", "));
        return words.size() > MOST_WORDS_NAMED ? named + ", and others" : named;
    }

    /** How the music leaves the dancers, in one sentence. */
    static String ending(Practice practice) {
        return ending(practice.timeline(), practice.song().isPresent() ? "The song" : "The track");
    }

    static String ending(Timeline timeline, String music) {
        Optional<DancedCount> last = timeline.ending().last();
        if (last.isEmpty()) {
            return music + " ends before count 1.";
        }
        Run run = last.get().run();
        String where = run.isTag() ? "the tag after wall " + run.wall() : "wall " + run.wall();
        String facing = ", facing " + Told.facing(timeline.ending().facing()) + ".";
        return timeline.ending().isWhole()
                ? music + " ends with the last count of " + where + facing
                : music + " ends in " + where + ", on count " + last.get().countInRun() + facing;
    }
}
