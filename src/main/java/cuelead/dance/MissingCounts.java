package cuelead.dance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * Counts of an ordinary dance that nobody wrote: holes between those that are, and ends of sections that the stated length
 * needs. What stood there may have moved any foot, and what follows would be counted higher with it.
 */
final class MissingCounts {
    private final Dance dance;
    private final List<Gap> gaps = new ArrayList<>();

    /**
     * Where counts are missing.
     *
     * @param from   counts of the dance that are written before them
     * @param counts how many
     * @param shifts whether what follows would be counted higher with them
     * @param line   1-based line above them
     */
    record Gap(Counts from, int counts, boolean shifts, int line) {}

    MissingCounts(Dance dance) {
        this.dance = dance;
        if (dance.isPhrased()) {
            return;
        }
        List<Section> sections = dance.parts().get(0).sections();
        boolean needsAll = needsAll(dance);
        int before = 0;
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            holes(section, before);
            int lacking = needsAll ? lacking(dance, i) : 0;
            if (lacking > 0) {
                gaps.add(new Gap(Counts.of(before + section.length()), lacking, true, lastLine(section)));
            }
            before += section.length();
        }
    }

    /** Whether the stated length is that of all sections, each of them whole. */
    static boolean needsAll(Dance dance) {
        int whole = dance.header().metre().countsInSection();
        List<Section> sections = dance.parts().get(0).sections();
        return !dance.isPhrased() && dance.header().statedCounts().orElse(0) == whole * sections.size();
    }

    /** Counts that a section is short of a whole one. */
    static int lacking(Dance dance, int section) {
        List<Section> sections = dance.parts().get(0).sections();
        int counts = RunOver.countsInBars(sections, section, dance.header().metre());
        boolean isEmpty = sections.get(section).steps().isEmpty();
        return isEmpty ? 0 : Math.max(0, dance.header().metre().countsInSection() - counts);
    }

    private void holes(Section section, int before) {
        Set<Integer> written = new TreeSet<>();
        section.steps().forEach(step -> written.add(step.count().number()));
        int number = 1;
        while (number <= section.length() && !section.steps().isEmpty()) {
            int end = number;
            while (end <= section.length() && !written.contains(end)) {
                end++;
            }
            if (end > number) {
                gaps.add(new Gap(Counts.of(before + number - 1), end - number, false, lineBefore(section, number)));
            }
            number = end + 1;
        }
    }

    private static int lineBefore(Section section, int number) {
        return section.steps().stream()
                .filter(step -> step.count().number() < number)
                .mapToInt(Step::line)
                .reduce(section.line(), (above, line) -> line);
    }

    private static int lastLine(Section section) {
        return section.steps().get(section.steps().size() - 1).line();
    }

    List<Gap> gaps() {
        return gaps;
    }

    /** The count as it would be without those that are missing: so many are written before it. */
    int written(int count) {
        int missed = 0;
        for (Gap gap : gaps) {
            int from = (int) (gap.from().ticks() / Counts.TICKS_PER_COUNT) + missed;
            missed += gap.shifts() ? Math.max(0, Math.min(gap.counts(), count - from)) : 0;
        }
        return count - missed;
    }

    /** Whether counts are missing directly behind so many that are written. */
    boolean areBehind(int written) {
        return gaps.stream().anyMatch(gap -> gap.shifts() && gap.from().equals(Counts.of(written)));
    }

    /** Whether counts are missing at the end. */
    boolean atEnd() {
        Counts end = Counts.of(dance.counts());
        return gaps.stream()
                .anyMatch(gap -> gap.from()
                        .plus(gap.shifts() ? Counts.ZERO : Counts.of(gap.counts()))
                        .equals(end));
    }

    /** The dance with its restarts where they are among what is written. */
    Dance withRestartsAsWritten() {
        return gaps.isEmpty()
                ? dance
                : dance.restarting(dance.restarts().stream().map(this::written).toList());
    }

    /** The line above the first counts that are missing between two places of the dance. */
    OptionalInt lineBetween(Counts after, Counts until) {
        return gaps.stream()
                .filter(gap -> gap.from().compareTo(after) >= 0 && gap.from().compareTo(until) < 0)
                .mapToInt(Gap::line)
                .findFirst();
    }

    private Restart written(Restart restart) {
        int count = Math.max(1, written(restart.afterCount()));
        return restart.changed().isEmpty()
                ? new Restart(restart.wall(), count, restart.statedFacing(), restart.line())
                : restart;
    }

    /** The steps that follow directly; what foot is free before them is not known. */
    Set<Step> stepsBehind() {
        Set<Step> behind = Collections.newSetFromMap(new IdentityHashMap<>());
        int before = 0;
        for (Section section : dance.parts().get(0).sections()) {
            Counts start = Counts.of(before);
            for (Gap gap : gaps) {
                section.steps().stream()
                        .filter(step -> start.plus(step.count().offset()).compareTo(gap.from()) >= 0)
                        .limit(gap.from().compareTo(start) >= 0 ? 1 : 0)
                        .forEach(behind::add);
            }
            before += section.length();
        }
        return behind;
    }
}
