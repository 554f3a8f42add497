package cuelead.plan;

import cuelead.dance.FigureRun;
import cuelead.dance.Step;
import cuelead.plan.Call.Kind;
import cuelead.plan.Cue.Need;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The word of a count, or the name of the figure that begins with it, where nothing needs to be called. */
final class WordCues {
    private static final double WEIGHT_WORTH = 10;
    private static final double TOUCH_WORTH = 7;
    private static final double SPLIT_WORTH = 2;
    private static final double OPTIONAL_WORTH = 1;
    /** Naming the figure, and its side, is worth more than its first word, but not another count's word. */
    private static final double HEAD_BONUS = 3;

    private static final double SIDE_BONUS = 1;
    /**
     * Share of their worth that the later counts of a figure keep when its head names each of them: words in the
     * rhythm of whole counts are better, but a syncopated figure is too quick for them.
     */
    private static final double TOLD_EVEN = 0.5;

    private static final double TOLD_SYNCOPATED = 0.8;
    private static final double SECOND_CHOICE_LOSS = 0.5;

    private WordCues() {}

    /** One word; a figure's first count may name the figure instead, unless the section's call has just done so. */
    static Cue word(DancedCount count, Beats lead) {
        Step step = count.steps().get(0);
        List<Phrase> phrases = new ArrayList<>();
        begun(count)
                .filter(run -> !count.isFirstOfSection() && !FigureHeads.repeatsAWord(run.figure()))
                .filter(run -> FigureHeads.turnOf(run).isNone())
                .ifPresent(run -> phrases.addAll(headPhrases(run, count)));
        double loss = 0;
        for (String word : StepWords.of(count.section(), step)) {
            boolean isOptional = word.startsWith("(");
            String said = isOptional ? word.substring(1, word.length() - 1) : word;
            phrases.add(new Phrase(said, isOptional ? OPTIONAL_WORTH : worthOf(step) - loss));
            loss += SECOND_CHOICE_LOSS;
        }
        return new Cue(Kind.WORD, Need.WISH, count, phrases, lead);
    }

    /** At the level of figures: each figure once, each whole count outside of figures by its word. */
    static Optional<Cue> figure(DancedCount count, Beats lead) {
        boolean begins =
                StepWords.figureOf(count.section(), count.steps().get(0)).isPresent()
                        ? begun(count).isPresent()
                        : count.count().isWhole();
        if (!begins || count.isFirstOfSection()) {
            return Optional.empty();
        }
        List<Phrase> names = headsOf(count).stream().map(Phrase::orEarlier).toList();
        return Optional.of(new Cue(Kind.FIGURE, Need.WISH, count, names, lead));
    }

    /** What a figure that begins with this count is called; empty where nothing is danced. */
    static List<Phrase> headsOf(DancedCount count) {
        return count.steps().stream()
                .findFirst()
                .map(step -> StepWords.figureOf(count.section(), step)
                        .map(FigureHeads::needed)
                        .orElseGet(() -> Phrase.needed(StepWords.headOfPlain(step))))
                .orElse(List.of());
    }

    static boolean beginsFigure(DancedCount count) {
        return begun(count).isPresent();
    }

    private static Optional<FigureRun> begun(DancedCount count) {
        Step step = count.steps().get(0);
        return StepWords.figureOf(count.section(), step).filter(run -> StepWords.begins(run, count.section(), step));
    }

    private static List<Phrase> headPhrases(FigureRun figure, DancedCount count) {
        List<Phrase> phrases = new ArrayList<>();
        List<String> heads = FigureHeads.of(figure);
        double worth = worthOf(count.steps().get(0)) + worthTold(figure, count) + HEAD_BONUS;
        for (int i = 0; i < heads.size(); i++) {
            phrases.add(new Phrase(heads.get(i), worth + SIDE_BONUS * (heads.size() - 1 - i)).orEarlier());
        }
        return phrases;
    }

    /** What a head that names each action ("kick ball change") is worth for the counts after its first. */
    private static double worthTold(FigureRun figure, DancedCount count) {
        if (!FigureHeads.namesEachAction(figure.figure())) {
            return 0;
        }
        List<Step> steps = figure.stepsOf(count.section());
        List<Step> later = steps.subList(1, steps.size());
        boolean isSyncopated = later.stream().anyMatch(step -> !step.count().isWhole());
        double worth = later.stream().mapToDouble(WordCues::worthOf).sum();
        return worth * (isSyncopated ? TOLD_SYNCOPATED : TOLD_EVEN);
    }

    private static double worthOf(Step step) {
        if (!step.count().isWhole()) {
            return SPLIT_WORTH;
        }
        return step.transfer().takesWeight() ? WEIGHT_WORTH : TOUCH_WORTH;
    }
}
