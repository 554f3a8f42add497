package cuelead.dance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dance in its easiest way: where its sheet offers easier steps, these are danced. Only options that leave the dancers
 * on the same foot and facing the same wall can be: behind others the class would part.
 */
final class EasyWay {
    private static final FigureFinder FINDER = new FigureFinder(Figures.standard());

    private final Dance dance;

    private EasyWay(Dance dance) {
        this.dance = dance;
    }

    static Dance of(Dance dance) {
        EasyWay easy = new EasyWay(dance);
        List<Part> parts = dance.parts().stream().map(easy::part).toList();
        List<Tag> tags = dance.tags().stream()
                .map(tag -> new Tag(
                        easy.part(tag.part()), tag.afterWalls(), tag.afterCount(), tag.statedFacing(), tag.line()))
                .toList();
        return new Dance(
                dance.header(), parts, dance.sequence(), tags, dance.restarts(), dance.ending(), dance.claims());
    }

    private Part part(Part part) {
        return new Part(part.name(), part.sections().stream().map(this::section).toList());
    }

    private Section section(Section section) {
        Section easy = section;
        for (EasyOption option : dance.options()) {
            if (option.section().equals(section.name()) && endsAlike(option, section)) {
                easy = with(option, easy);
            }
        }
        return easy;
    }

    /** Whether an option can be danced in the place of the steps of its section. */
    static boolean endsAlike(EasyOption option, Section section) {
        List<Step> full = section.steps().stream().filter(option::covers).toList();
        if (full.isEmpty() || option.steps().isEmpty()) {
            return false;
        }
        Weight after = weightAfter(full);
        Weight easyAfter = weightAfter(option.steps());
        boolean sameWeight = after == easyAfter || after == Weight.UNKNOWN || easyAfter == Weight.UNKNOWN;
        return sameWeight && (turn(full) - turn(option.steps())) % 360 == 0;
    }

    private static Weight weightAfter(List<Step> steps) {
        return steps.get(steps.size() - 1).weightAfter();
    }

    private static int turn(List<Step> steps) {
        return steps.stream().map(Step::turn).reduce(Turn.NONE, Turn::plus).degrees();
    }

    private Section with(EasyOption option, Section section) {
        List<Step> steps = section.steps();
        int begin = (int) steps.stream()
                .filter(step -> step.count().number() < option.first())
                .count();
        int end = begin + (int) steps.stream().filter(option::covers).count();
        List<Step> easy = new ArrayList<>(steps.subList(0, begin));
        easy.addAll(option.steps());
        easy.addAll(steps.subList(end, steps.size()));
        return new Section(
                section.name(),
                section.heading(),
                section.length(),
                easy,
                figures(option, section, begin, end),
                section.ownCalls().stream()
                        .filter(call -> call.count().number() < option.first()
                                || call.count().number() > option.last())
                        .toList(),
                section.line());
    }

    private List<FigureRun> figures(EasyOption option, Section section, int begin, int end) {
        int longer = option.steps().size() - (end - begin);
        List<FigureRun> figures = new ArrayList<>();
        section.figures().stream().filter(run -> run.endStep() <= begin).forEach(figures::add);
        FINDER.find(option.steps(), "", dance.header().metre()).forEach(run -> figures.add(movedBy(begin, run)));
        section.figures().stream()
                .filter(run -> run.firstStep() >= end)
                .forEach(run -> figures.add(movedBy(longer, run)));
        return figures;
    }

    private static FigureRun movedBy(int steps, FigureRun run) {
        return new FigureRun(run.figure(), run.lead(), run.firstStep() + steps, run.steps());
    }

    /** The section of an option. */
    static Optional<Section> sectionOf(EasyOption option, Dance dance) {
        return dance.sections()
                .filter(section -> section.name().equals(option.section()))
                .findFirst();
    }
}
