package cuelead.plan;

import cuelead.dance.FigureRun;
import cuelead.dance.Section;
import cuelead.dance.Step;
import java.util.Optional;

/** What a dance is called with, before it is laid over a song: the sheet's own words, or else the trade's. */
public final class CallWords {
    private CallWords() {}

    /** The call for a step of a section; empty where the sheet wants silence. */
    public static String of(Section section, Step step) {
        return section.ownCalls().stream()
                .filter(own -> own.count().equals(step.count()))
                .findFirst()
                .map(own -> own.words())
                .orElseGet(() -> StepWords.of(section, step).get(0));
    }

    /** What is called ahead of the figure that begins with this step; empty where none begins. */
    public static Optional<String> headAt(Section section, Step step) {
        return StepWords.figureOf(section, step)
                .filter(run -> StepWords.begins(run, section, step))
                .map((FigureRun run) -> FigureHeads.of(run).get(0));
    }
}
