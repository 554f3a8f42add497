package cuelead.listing;

import cuelead.dance.Dance;
import cuelead.dance.DanceRow;
import cuelead.dance.Ending;
import cuelead.dance.Foot;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.plan.CallWords;
import cuelead.sheet.StepPlace;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** A dance count by count: its sections, those of its tags, and what becomes of walls. */
public final class ListedDance {
    private final Dance dance;
    private final List<ListedLine> lines = new ArrayList<>();

    private ListedDance(Dance dance) {
        this.dance = dance;
        Iterator<DanceRow> rows = DanceRow.of(dance).iterator();
        int number = 0;
        for (Part part : dance.parts()) {
            number = add(part, number, rows);
        }
        for (Tag tag : dance.tags()) {
            lines.add(new ListedLine.Head(WallChanges.told(tag), tag.line()));
            number = add(tag.part(), number, rows);
        }
        dance.restarts().forEach(this::add);
        dance.ending().ifPresent(this::add);
    }

    public static List<ListedLine> of(Dance dance) {
        return List.copyOf(new ListedDance(dance).lines);
    }

    /** Gives the number of the section behind it, among all. */
    private int add(Part part, int first, Iterator<DanceRow> rows) {
        int number = first;
        for (Section section : part.sections()) {
            if (!isTag(part) || !section.heading().isBlank()) {
                lines.add(new ListedLine.Head(title(section), section.line()));
            }
            for (int i = 0; i < section.steps().size(); i++) {
                lines.add(counted(
                        Optional.of(new StepPlace(number, i)),
                        section,
                        section.steps().get(i),
                        rows.next().facing().clock()));
            }
            number++;
        }
        return number;
    }

    private boolean isTag(Part part) {
        return dance.tags().stream().anyMatch(tag -> tag.part().equals(part));
    }

    /** {@code S1  VINE RIGHT}. */
    static String title(Section section) {
        return section.heading().isBlank() ? section.name() : section.name() + "  " + section.heading();
    }

    private void add(Restart restart) {
        lines.add(new ListedLine.Head(WallChanges.told(restart), restart.line()));
        bare(restart.changed());
    }

    private void add(Ending ending) {
        lines.add(new ListedLine.Head(WallChanges.told(ending), ending.line()));
        ending.part().map(Part::sections).orElse(List.of()).forEach(section -> bare(section.steps()));
    }

    /** Steps that are danced once, on a wall that is not known beforehand. */
    private void bare(List<Step> steps) {
        Section alone = new Section("", "", 0, steps, List.of(), List.of(), 0);
        steps.forEach(step -> lines.add(counted(Optional.empty(), alone, step, "")));
    }

    private static ListedLine.Counted counted(Optional<StepPlace> place, Section section, Step step, String facing) {
        return new ListedLine.Counted(
                place,
                step.count().label(),
                StepTold.what(step),
                step.foot().map(Foot::word).orElse(""),
                StepTold.weight(step.weightAfter()),
                step.turn().words(),
                facing,
                CallWords.of(section, step),
                section.ownCalls().stream().anyMatch(own -> own.count().equals(step.count())),
                CallWords.headAt(section, step).orElse(""),
                step.line());
    }
}
