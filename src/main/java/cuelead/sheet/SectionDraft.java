package cuelead.sheet;

import cuelead.dance.Count;
import cuelead.dance.FigureFinder;
import cuelead.dance.Metre;
import cuelead.dance.OwnCall;
import cuelead.dance.RunOver;
import cuelead.dance.Section;
import cuelead.dance.Step;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/** A section while its lines are read: numbers its counts from 1 and knows which of them are written. */
final class SectionDraft {
    /** Counts that a heading may have; lines that are danced seldom have as many. */
    private static final int HEADED_COUNTS = 6;

    private final String name;
    private final String heading;
    private final int line;
    private final int taken;
    private final int bracketBase;
    private final int bracketLength;
    private final List<Step> steps = new ArrayList<>();
    private final List<OwnCall> calls = new ArrayList<>();
    private final TreeMap<Integer, Integer> lineOfCount = new TreeMap<>();
    private int statedLength;
    private int base;
    private boolean begun;
    private boolean doubted;

    /**
     * @param base         counts before its first one where its numbers run on (9-16); 0 where they begin again or
     *                     that is still to be seen
     * @param statedLength its length as its bracket says; 0 where it says none
     * @param taken        counts of it that the section above has danced: its numbers may begin with 2
     */
    SectionDraft(String name, String heading, int line, int base, int statedLength, int taken) {
        this.name = name;
        this.heading = heading;
        this.line = line;
        this.base = base;
        this.statedLength = statedLength;
        this.taken = taken;
        this.bracketBase = base;
        this.bracketLength = statedLength;
    }

    /** A section that begins behind a multiple of it does so though the one above is too short. */
    private static final int WHOLE = 8;

    List<Step> steps() {
        return steps;
    }

    /** Counts before its first one, as the sheet numbers them. */
    int base() {
        return base;
    }

    String name() {
        return name;
    }

    boolean hasNoHead() {
        return line == 0;
    }

    boolean isEmpty() {
        return lineOfCount.isEmpty();
    }

    /** Numbers from 1, whether the sheet counts 1-8 in every section or runs on. */
    List<Count> local(List<Count> written, int countsBefore) {
        if (!begun) {
            begun = true;
            int first = written.get(0).isWhole()
                    ? written.get(0).number()
                    : written.get(0).number() + 1;
            base = taken > 0 && (first == 1 + taken || first == countsBefore + 1)
                    ? begunAbove(first)
                    : runningOn(first, base > 0 ? base : countsBefore);
        }
        return written.stream()
                .map(count -> new Count(Math.max(0, count.number() - base), count.split()))
                .toList();
    }

    private static int runningOn(int first, int before) {
        boolean leftOut = first > before + 1 && (first - 1) % WHOLE == 0;
        return first > before && before > 0 ? leftOut ? first - 1 : before : 0;
    }

    /** A bracket may count what is danced above ([9-16]) or leave it out ([10-17]). */
    private int begunAbove(int first) {
        boolean counted = base % 2 == 0;
        statedLength -= statedLength > 0 && counted ? taken : 0;
        return first - 1;
    }

    /** Whether this count was written before, or a later one was. */
    boolean isBehind(Count count) {
        return !steps.isEmpty() && count.compareTo(steps.get(steps.size() - 1).count()) <= 0;
    }

    /** The line that has the counts which one of these comes again for, where that line has many: it may be a heading. */
    Optional<Integer> longLineOf(List<Count> counts) {
        return counts.stream()
                .map(count -> lineOfCount.get(count.number()))
                .filter(Objects::nonNull)
                .filter(line -> Collections.frequency(lineOfCount.values(), line) >= HEADED_COUNTS)
                .findFirst();
    }

    boolean isBracketed() {
        return statedLength > 0;
    }

    /** Reports that no counts stand below the heading. */
    void empty(Problems problems) {
        problems.error(
                "missing_counts",
                line,
                1,
                "No counts are written below this heading, so " + name + " is left out.",
                "Write its count lines below it, such as \"1-2 Step R to side, step L beside R\".");
    }

    /** A line of it could not be read whole. */
    void doubt() {
        doubted = true;
    }

    /** Whether all that is danced in it is known: no line is in doubt, no count is missing. */
    boolean isWhole() {
        return !doubted && lineOfCount.size() >= length();
    }

    /** Whether counts are missing between the last one that is written and this one. */
    boolean leavesOutBefore(Count next) {
        int number = next.isWhole() ? next.number() : next.number() + 1;
        return number > lastCount() + 1;
    }

    /** Whether it ends before its bracket says, or within a bar. */
    boolean isShort(Metre metre) {
        return lastCount() < length() || length() % metre.beatsInBar() != 0;
    }

    int lastCount() {
        return lineOfCount.isEmpty() ? 0 : lineOfCount.lastKey();
    }

    void write(List<Count> counts, int onLine) {
        for (Count count : counts) {
            if (count.number() > 0) {
                lineOfCount.putIfAbsent(count.number(), onLine);
            }
        }
    }

    /** Adds steps that are not behind. */
    void add(List<Step> more) {
        steps.addAll(more);
    }

    void call(OwnCall call) {
        calls.add(call);
    }

    int length() {
        boolean over = lastCount() == statedLength + 1 && RunOver.endsOnFrom(steps, lastCount());
        return statedLength > 0 && !over ? statedLength : Math.max(1, lastCount());
    }

    /**
     * The next section's bracket begins at this count of the dance: where it begins behind all that is written here, but not
     * behind what the bracket of this one says, the bracket's end is wrong.
     */
    void endsBefore(int nextFirst, Problems problems) {
        int length = nextFirst - 1 - bracketBase;
        if (bracketLength > 0 && length != bracketLength && length > 0 && length == lastCount()) {
            if (length == bracketLength + 1
                    && RunOver.endsOnFrom(steps, lastCount())) { // "8&1" is written above a heading such as [10-16]
                statedLength = length;
                return;
            }
            problems.error(
                    "bracket_range",
                    line,
                    1,
                    "The heading of " + name + " says counts " + (bracketBase + 1) + " to "
                            + (bracketBase + bracketLength) + ", but " + length
                            + " are written, and the next section begins at " + nextFirst + ".",
                    "Write " + (bracketBase + 1) + "-" + (nextFirst - 1) + ".");
            statedLength = length;
        }
    }

    /** Reports counts that no line has, and counts beyond the bracket. */
    void check(Problems problems) {
        int limit = Math.max(length(), lastCount());
        int number = 1;
        while (number <= limit) {
            if (lineOfCount.containsKey(number)) {
                number++;
            } else {
                int end = number;
                while (end < limit && !lineOfCount.containsKey(end + 1)) {
                    end++;
                }
                missing(problems, number, end);
                number = end + 1;
            }
        }
        if (statedLength > 0 && lastCount() > length()) {
            extra(problems);
        }
    }

    private void missing(Problems problems, int first, int last) {
        int at = lineOfCount.floorKey(first) == null
                ? Math.max(line, lineOfCount.firstEntry().getValue() - 1)
                : lineOfCount.floorEntry(first).getValue();
        String which = first == last
                ? "Count " + (first + base) + " is"
                : "Counts " + (first + base) + " to " + (last + base) + " are";
        problems.error(
                "missing_counts",
                at,
                Origins.END,
                which + " missing from " + name + ".",
                "Write what is danced there, if only \"hold\".");
    }

    private void extra(Problems problems) {
        int count = lineOfCount.higherKey(statedLength);
        problems.error(
                "extra_count",
                lineOfCount.get(count),
                1,
                "Count " + (count + base) + " is beyond the " + statedLength + " counts of " + name + ".",
                "Move it into a section of its own, or correct the numbers in the brackets.");
    }

    Section section(FigureFinder finder, Metre metre) {
        OutAndIn.reread(steps);
        return new Section(name, heading, length(), steps, finder.find(steps, heading, metre), calls, line);
    }
}
