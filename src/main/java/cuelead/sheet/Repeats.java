package cuelead.sheet;

import cuelead.dance.Count;
import cuelead.dance.Counts;
import cuelead.dance.Direction;
import cuelead.dance.Foot;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Turn;
import cuelead.sheet.RepeatCall.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Dances again what was danced before: as it was, or its mirror image. */
final class Repeats {
    private final List<Placed> danced = new ArrayList<>();
    private final List<Section> sections;
    private final int before;
    private final int base;
    private final int here;

    /**
     * @param sections closed sections of this part
     * @param open     steps of the open section
     * @param base     counts before the open section, as the sheet numbers it
     * @param here     first count of the line within the open section
     */
    Repeats(List<Section> sections, List<Step> open, int base, int here) {
        this.sections = List.copyOf(sections);
        this.base = base;
        int start = 0;
        for (Section section : sections) {
            place(section.steps(), start);
            start += section.length();
        }
        this.before = start;
        this.here = start + here;
        place(open, start);
    }

    /** A step and its offset from the first count of the part. */
    private record Placed(Step step, Counts at) {}

    private void place(List<Step> steps, int start) {
        steps.forEach(step ->
                danced.add(new Placed(step, Counts.of(start).plus(step.count().offset()))));
    }

    /** Moves with the counts that they now fall on; empty where nothing was danced there. */
    List<Step> steps(RepeatCall call, CountGroup group, List<Count> counts, Footing footing) {
        int all = (int) counts.stream().filter(Count::isWhole).count();
        int length = Math.max(1, all / call.times());
        int from = from(call.source(), group, length);
        List<Placed> source = danced.stream()
                .filter(placed -> placed.at().compareTo(Counts.of(from)) >= 0)
                .filter(placed -> placed.at().compareTo(Counts.of(from + length)) < 0)
                .toList();
        boolean mirrored = isMirrored(call, source, footing);
        int shift = counts.get(0).number() - from;
        List<Step> again = new ArrayList<>();
        for (int time = 0; time < call.times(); time++) {
            int moved = shift + time * length;
            source.forEach(placed -> again.add(again(placed, moved, mirrored)));
        }
        return again;
    }

    private int from(Source source, CountGroup group, int length) {
        if (source instanceof Source.Range range) {
            boolean runsOn = base > 0 || range.first() > group.counts().get(0).number();
            boolean inThis = !runsOn && range.last() < here - before + 1;
            return inThis ? before + range.first() - 1 : range.first() - 1;
        }
        if (source instanceof Source.Numbered numbered) {
            int start = 0;
            for (int i = 0; i < numbered.number() - 1 && i < sections.size(); i++) {
                start += sections.get(i).length();
            }
            return start + numbered.first() - 1;
        }
        int counts = source instanceof Source.Before told && told.counts() > 0 ? told.counts() : length;
        return Math.max(0, here - counts);
    }

    /** As the sheet says; where it does not, the other way round if the foot that it began with is not free. */
    private static boolean isMirrored(RepeatCall call, List<Placed> source, Footing footing) {
        Optional<Foot> first =
                source.stream().flatMap(placed -> placed.step().foot().stream()).findFirst();
        if (first.isEmpty()) {
            return false;
        }
        if (call.lead().isPresent() && !call.mirror()) {
            return !call.lead().equals(first);
        }
        return call.mirror() || footing.standing().equals(first);
    }

    private static Step again(Placed placed, int shift, boolean mirrored) {
        Step step = placed.step();
        long ticks = placed.at().ticks() + shift * Counts.TICKS_PER_COUNT;
        Count count = new Count(
                (int) Math.floorDiv(ticks, Counts.TICKS_PER_COUNT), step.count().split());
        Optional<Foot> foot = mirrored ? step.foot().map(Foot::other) : step.foot();
        Direction direction = mirrored ? step.direction().mirrored() : step.direction();
        Turn turn = mirrored ? step.turn().mirrored() : step.turn();
        return new Step(
                count,
                foot,
                step.action(),
                direction,
                turn,
                step.transfer(),
                step.weightAfter(),
                step.line(),
                step.column());
    }
}
