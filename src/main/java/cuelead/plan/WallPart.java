package cuelead.plan;

import cuelead.dance.Count;
import cuelead.dance.Dance;
import cuelead.dance.FigureRun;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A part as one wall dances it: with the steps that are changed before a restart, and with the bridges that come within
 * it, whose sections stand among its own.
 *
 * @param part   what is danced
 * @param counts how many counts of it: fewer than it has where the wall is broken off
 */
record WallPart(Part part, int counts) {
    static WallPart of(Dance dance, Part part, int wall, Optional<Restart> restart) {
        int end = Math.min(restart.map(Restart::afterCount).orElse(part.counts()), part.counts());
        List<Section> sections = new ArrayList<>();
        int before = 0;
        for (Section section : part.sections()) {
            int start = before;
            sections.add(restart.filter(found -> !found.changed().isEmpty())
                    .map(found -> changed(section, start, found.changed(), found.afterCount()))
                    .orElse(section));
            before += section.length();
        }
        List<Tag> bridges = dance.isPhrased() ? List.of() : bridges(dance, wall, end);
        int counts = end;
        for (Tag bridge : bridges) {
            sections = with(sections, bridge);
            counts += bridge.part().counts();
        }
        boolean asWritten = bridges.isEmpty() && sections.equals(part.sections());
        return new WallPart(asWritten ? part : new Part(part.name(), sections), counts);
    }

    /** Those that come within the counts that are danced, the last first, so that each place stays where it is. */
    private static List<Tag> bridges(Dance dance, int wall, int end) {
        return dance.tags().stream()
                .filter(tag -> tag.afterWalls().contains(wall) && isWithin(tag, end))
                .sorted(Comparator.comparing((Tag tag) -> tag.afterCount().getAsInt())
                        .reversed())
                .toList();
    }

    /** Whether a tag comes before the last of so many counts of its wall, not at its end. */
    static boolean isWithin(Tag tag, int counts) {
        return tag.afterCount().isPresent() && tag.afterCount().getAsInt() < counts;
    }

    /** Figures and own calls of a section stay as far as their steps do. */
    private static Section changed(Section section, int before, List<Step> changed, int last) {
        int first = changed.get(0).count().number();
        List<Step> head = section.steps().stream()
                .filter(step -> before + step.count().number() < first)
                .toList();
        Stream<Step> inside = changed.stream()
                .filter(step -> step.count().number() > before && step.count().number() <= before + section.length())
                .map(step -> moved(step, -before));
        Stream<Step> tail =
                section.steps().stream().filter(step -> before + step.count().number() > last);
        return new Section(
                section.name(),
                section.heading(),
                section.length(),
                Stream.of(head.stream(), inside, tail).flatMap(steps -> steps).toList(),
                section.figures().stream()
                        .filter(run -> run.endStep() <= head.size())
                        .toList(),
                section.ownCalls().stream()
                        .filter(call -> before + call.count().number() < first)
                        .toList(),
                section.line());
    }

    private static List<Section> with(List<Section> sections, Tag bridge) {
        int place = bridge.afterCount().getAsInt();
        List<Section> all = new ArrayList<>();
        int before = 0;
        for (Section section : sections) {
            int within = place - before;
            if (within == 0) {
                all.addAll(bridge.part().sections());
            }
            if (within > 0 && within < section.length()) {
                all.add(piece(section, 0, within));
                all.addAll(bridge.part().sections());
                all.add(piece(section, within, section.length()));
            } else {
                all.add(section);
            }
            before += section.length();
        }
        return all;
    }

    /** The counts of a section behind {@code from} up to {@code to}, numbered from 1. */
    private static Section piece(Section section, int from, int to) {
        int skipped = (int) section.steps().stream()
                .filter(step -> step.count().number() <= from)
                .count();
        List<Step> steps = section.steps().stream()
                .filter(step -> step.count().number() > from && step.count().number() <= to)
                .map(step -> moved(step, -from))
                .toList();
        List<FigureRun> figures = section.figures().stream()
                .filter(run -> run.firstStep() >= skipped && run.endStep() <= skipped + steps.size())
                .map(run -> new FigureRun(run.figure(), run.lead(), run.firstStep() - skipped, run.steps()))
                .toList();
        return new Section(
                section.name(),
                from == 0 ? section.heading() : "",
                to - from,
                steps,
                figures,
                section.ownCalls().stream()
                        .filter(call -> from == 0 && call.count().number() <= to)
                        .toList(),
                section.line());
    }

    private static Step moved(Step step, int counts) {
        return new Step(
                new Count(step.count().number() + counts, step.count().split()),
                step.foot(),
                step.action(),
                step.direction(),
                step.turn(),
                step.transfer(),
                step.weightAfter(),
                step.line(),
                step.column());
    }
}
