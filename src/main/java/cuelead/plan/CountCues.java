package cuelead.plan;

import cuelead.dance.FigureRun;
import cuelead.dance.OwnCall;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Turn;
import cuelead.plan.Call.Kind;
import cuelead.plan.Cue.Need;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What could be called for one count: the sheet's own words, its turn, its word, or its figure. */
final class CountCues {
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

    private CountCues() {}

    static Optional<Cue> of(DancedCount count, CallLevel level, Beats lead) {
        if (ownCall(count).isPresent()) {
            return ownWords(count).flatMap(words -> own(count, words, level, lead));
        }
        if (count.steps().isEmpty()) {
            return Optional.empty();
        }
        Optional<Cue> turn = turn(count, lead);
        if (turn.isPresent()) {
            return turn;
        }
        return level == CallLevel.WORDS ? Optional.of(word(count, lead)) : figure(count, lead);
    }

    /** Among words the sheet's own must be said; among figures they name one, or a turn. */
    private static Optional<Cue> own(DancedCount count, String words, CallLevel level, Beats lead) {
        boolean isTurn = !count.turn().isNone();
        if (level != CallLevel.WORDS && !isTurn && figure(count, lead).isEmpty()) {
            return Optional.empty();
        }
        Kind kind = level == CallLevel.WORDS && !isTurn ? Kind.WORD : Kind.FIGURE;
        Need need = level == CallLevel.WORDS || isTurn ? Need.OWN_WORD : Need.WISH;
        return Optional.of(new Cue(kind, need, count, Phrase.needed(List.of(words)), lead));
    }

    static boolean isSilenced(DancedCount count) {
        return ownCall(count).filter(OwnCall::isSilence).isPresent();
    }

    private static Optional<OwnCall> ownCall(DancedCount count) {
        return count.section().ownCalls().stream()
                .filter(call -> call.count().equals(count.count()))
                .findFirst();
    }

    /** What a section that begins with this count is called, fullest first: the sheet's own words, or its figure's name. */
    static Optional<List<String>> sectionHeadsOf(DancedCount count) {
        return ownCall(count).isEmpty() ? headsOf(count) : ownWords(count).map(List::of);
    }

    /** The same, and last the first word of the section, for where there is little time among words. */
    static Optional<List<String>> shortSectionHeadsOf(DancedCount count) {
        Set<String> heads = new LinkedHashSet<>(sectionHeadsOf(count).orElse(List.of()));
        if (!heads.isEmpty() && !hasOwnWords(count)) {
            StepWords.of(count.section(), count.steps().get(0)).stream()
                    .filter(word -> !word.startsWith("("))
                    .findFirst()
                    .ifPresent(heads::add);
        }
        return heads.isEmpty() ? Optional.empty() : Optional.of(List.copyOf(heads));
    }

    /** Whether the sheet has words of its own for this count. */
    static boolean hasOwnWords(DancedCount count) {
        return ownWords(count).isPresent();
    }

    private static Optional<String> ownWords(DancedCount count) {
        return ownCall(count).filter(call -> !call.isSilence()).map(OwnCall::words);
    }

    /** What a figure that begins with this count is called; empty where nothing is danced. */
    private static Optional<List<String>> headsOf(DancedCount count) {
        return count.steps().stream()
                .findFirst()
                .map(step -> StepWords.figureOf(count.section(), step)
                        .map(StepWords::headsOf)
                        .orElseGet(() -> StepWords.headOfPlain(step)));
    }

    /** The turn of this count, told whole on the first turning count of its figure. */
    private static Optional<Cue> turn(DancedCount count, Beats lead) {
        Optional<Step> turning =
                count.steps().stream().filter(s -> !s.turn().isNone()).findFirst();
        if (turning.isEmpty()) {
            return Optional.empty();
        }
        Turn whole = Turn.NONE;
        for (Step step : sameWayInFigure(count.section(), turning.get())) {
            if (step.count().compareTo(count.count()) < 0) {
                return Optional.empty();
            }
            whole = whole.plus(step.turn());
        }
        List<String> words = TurnWords.of(whole, count.facingBefore().after(whole));
        return Optional.of(new Cue(Kind.FIGURE, Need.TURN, count, Phrase.needed(words), lead));
    }

    /** The steps of this step's figure that turn the same way, itself among them. */
    private static List<Step> sameWayInFigure(Section section, Step step) {
        return StepWords.figureOf(section, step)
                .map(run -> section.steps().subList(run.firstStep(), run.endStep()))
                .orElse(List.of(step))
                .stream()
                .filter(s -> Integer.signum(s.turn().degrees())
                        == Integer.signum(step.turn().degrees()))
                .toList();
    }

    /** One word; a figure's first count may name the figure instead, unless the section's call has just done so. */
    private static Cue word(DancedCount count, Beats lead) {
        Step step = count.steps().get(0);
        List<Phrase> phrases = new ArrayList<>();
        StepWords.figureOf(count.section(), step)
                .filter(run -> StepWords.begins(run, count.section(), step))
                .filter(run -> !count.isFirstOfSection() && !StepWords.headRepeatsAWord(run.figure()))
                .ifPresent(run -> phrases.addAll(headPhrases(run, count)));
        double loss = 0;
        for (String word : StepWords.of(count.section(), step)) {
            boolean isOptional = word.startsWith("(");
            String said = isOptional ? word.substring(1, word.length() - 1) : word;
            phrases.add(new Phrase(said, isOptional ? OPTIONAL_WORTH : worthOf(count) - loss));
            loss += SECOND_CHOICE_LOSS;
        }
        return new Cue(Kind.WORD, Need.WISH, count, phrases, lead);
    }

    private static List<Phrase> headPhrases(FigureRun figure, DancedCount count) {
        List<Phrase> phrases = new ArrayList<>();
        List<String> heads = StepWords.headsOf(figure);
        double worth = worthOf(count) + worthTold(figure, count) + HEAD_BONUS;
        for (int i = 0; i < heads.size(); i++) {
            phrases.add(new Phrase(heads.get(i), worth + SIDE_BONUS * (heads.size() - 1 - i)));
        }
        return phrases;
    }

    /** What a head that names each action ("kick ball change") is worth for the counts after its first. */
    private static double worthTold(FigureRun figure, DancedCount count) {
        if (!StepWords.headNamesEachAction(figure.figure())) {
            return 0;
        }
        List<Step> later = count.section().steps().subList(figure.firstStep() + 1, figure.endStep());
        boolean isSyncopated = later.stream().anyMatch(step -> !step.count().isWhole());
        double worth = later.stream().mapToDouble(CountCues::worthOf).sum();
        return worth * (isSyncopated ? TOLD_SYNCOPATED : TOLD_EVEN);
    }

    /** At the level of figures: each figure once, each whole count outside of figures by its word. */
    private static Optional<Cue> figure(DancedCount count, Beats lead) {
        Step step = count.steps().get(0);
        boolean begins = StepWords.figureOf(count.section(), step)
                .map(run -> StepWords.begins(run, count.section(), step))
                .orElse(count.count().isWhole());
        if (!begins || count.isFirstOfSection()) {
            return Optional.empty();
        }
        return headsOf(count).map(heads -> new Cue(Kind.FIGURE, Need.WISH, count, Phrase.needed(heads), lead));
    }

    private static double worthOf(DancedCount count) {
        if (!count.count().isWhole()) {
            return SPLIT_WORTH;
        }
        return count.takesWeight() ? WEIGHT_WORTH : TOUCH_WORTH;
    }

    private static double worthOf(Step step) {
        if (!step.count().isWhole()) {
            return SPLIT_WORTH;
        }
        return step.transfer().takesWeight() ? WEIGHT_WORTH : TOUCH_WORTH;
    }
}
