package cuelead.plan;

import cuelead.dance.Counts;
import cuelead.dance.FigureRun;
import cuelead.dance.OwnCall;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Turn;
import cuelead.plan.Call.Kind;
import cuelead.plan.Cue.Need;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything that could be called for a timeline at its levels: announcements, walls, turns, sections, figures,
 * words. Which of it fits is decided elsewhere.
 */
final class Cues {
    /** Announcements come before the wall's call, which comes before its first section's call. */
    private static final Beats BEFORE_SECTION_CALL = Beats.of(2);

    private static final double WEIGHT_WORTH = 10;
    private static final double TOUCH_WORTH = 7;
    private static final double SPLIT_WORTH = 2;
    private static final double OPTIONAL_WORTH = 1;
    /** Naming the figure, and its side, is worth more than its first word, but not another count's word. */
    private static final double HEAD_BONUS = 3;

    private static final double SIDE_BONUS = 1;
    private static final double SECOND_CHOICE_LOSS = 0.5;

    private final Timeline timeline;
    private final CallSettings settings;
    private final List<Cue> cues = new ArrayList<>();
    private final List<LeftOut> silenced = new ArrayList<>();

    Cues(Timeline timeline, CallSettings settings) {
        this.timeline = timeline;
        this.settings = settings;
        List<Run> runs = timeline.runs();
        for (int i = 0; i < runs.size(); i++) {
            addRun(runs.get(i), i + 1 < runs.size() ? Optional.of(runs.get(i + 1)) : Optional.empty());
        }
    }

    List<Cue> all() {
        return cues;
    }

    List<LeftOut> silenced() {
        return silenced;
    }

    private void addRun(Run run, Optional<Run> next) {
        CallLevel level = settings.levelOf(run.wall());
        List<DancedCount> counts = timeline.countsOf(run);
        if (level == CallLevel.NONE || counts.isEmpty()) {
            return;
        }
        DancedCount first = firstWhole(counts);
        if (!run.isTag()) {
            add(Kind.CHANGE, Need.WALL, first, wallPhrases(run), wallLead(run));
        }
        next.ifPresent(after -> announceChange(run, after));
        if (level == CallLevel.CHANGES) {
            return;
        }
        for (DancedCount count : counts) {
            if (count.isFirstOfSection()) {
                addSection(count, count.section().equals(run.part().sections().get(0)));
            }
            if (level != CallLevel.SECTIONS) {
                addCount(count, level);
            }
        }
    }

    private static DancedCount firstWhole(List<DancedCount> counts) {
        return counts.stream().filter(c -> c.count().isWhole()).findFirst().orElse(counts.get(0));
    }

    private Beats wallLead(Run run) {
        return sectionLead(run).plus(BEFORE_SECTION_CALL);
    }

    /** Sections are called their lead ahead; the very first is called before the count-in. */
    private Beats sectionLead(Run run) {
        if (!run.equals(timeline.runs().get(0))) {
            return settings.sectionLead();
        }
        Counts countIn = Counts.of(timeline.dance().header().metre().beatsInBar());
        Beats beforeCountIn = timeline.beatsOf(countIn).plus(BEFORE_SECTION_CALL);
        return beforeCountIn.compareTo(settings.sectionLead()) > 0 ? beforeCountIn : settings.sectionLead();
    }

    private static List<Phrase> wallPhrases(Run run) {
        String wall = "wall " + NumberWords.of(run.wall());
        String facing = TurnWords.wall(run.startFacing());
        List<Phrase> phrases = new ArrayList<>();
        if (!facing.isEmpty() && run.wall() > 1) {
            phrases.add(new Phrase(wall + " " + facing, WEIGHT_WORTH + 1));
        }
        phrases.add(new Phrase(wall, WEIGHT_WORTH));
        return phrases;
    }

    /** A restart or a tag: told early in its wall, and again before it comes. */
    private void announceChange(Run run, Run next) {
        List<DancedCount> after = timeline.countsOf(next);
        if (after.isEmpty()) {
            return;
        }
        DancedCount target = firstWhole(after);
        Beats lead = wallLead(next).plus(BEFORE_SECTION_CALL);
        if (run.restart().isPresent()) {
            String count = NumberWords.of(run.counts());
            add(
                    Kind.CHANGE,
                    Need.EARLY_WARNING,
                    target,
                    phrases("restart after " + count, "restart this wall", "restart"),
                    lead);
            add(Kind.CHANGE, Need.ANNOUNCEMENT, target, phrases("restart"), lead);
        }
        if (next.isTag() && !run.isTag()) {
            add(Kind.CHANGE, Need.EARLY_WARNING, target, phrases("tag after this wall", "tag this wall", "tag"), lead);
            add(
                    Kind.CHANGE,
                    Need.ANNOUNCEMENT,
                    target,
                    phrases("tag"),
                    settings.sectionLead().plus(Beats.of(2)));
        }
    }

    /** A new section by its first figure, in the last counts of the one before. */
    private void addSection(DancedCount count, boolean isFirstOfRun) {
        Beats lead = isFirstOfRun ? sectionLead(count.run()) : settings.sectionLead();
        count.steps().stream()
                .findFirst()
                .ifPresent(step -> add(Kind.SECTION, Need.SECTION, count, phrases(heads(count.section(), step)), lead));
    }

    private static String[] heads(Section section, Step step) {
        List<String> heads =
                StepWords.figureOf(section, step).map(StepWords::headsOf).orElseGet(() -> StepWords.headOfPlain(step));
        return heads.toArray(new String[0]);
    }

    private void addCount(DancedCount count, CallLevel level) {
        Optional<OwnCall> own = count.section().ownCalls().stream()
                .filter(call -> call.count().equals(count.count()))
                .findFirst();
        if (own.isPresent() && own.get().isSilence()) {
            silence(count);
            return;
        }
        if (own.isPresent()) {
            double worth = WEIGHT_WORTH + HEAD_BONUS;
            add(Kind.WORD, Need.WISH, count, List.of(new Phrase(own.get().words(), worth)), settings.lead());
            return;
        }
        if (addTurn(count) || count.steps().isEmpty()) {
            return;
        }
        if (level == CallLevel.WORDS) {
            addWord(count);
        } else {
            addFigure(count);
        }
    }

    private void silence(DancedCount count) {
        silenced.add(new LeftOut(
                "-",
                count.run().wall(),
                count.section().name(),
                count.count().label(),
                LeftOut.Reason.SILENT_ON_SHEET));
    }

    /** The turn of this count, told whole on the first turning count of its figure. */
    private boolean addTurn(DancedCount count) {
        Optional<Step> turning =
                count.steps().stream().filter(s -> !s.turn().isNone()).findFirst();
        if (turning.isEmpty()) {
            return false;
        }
        Turn whole = Turn.NONE;
        for (Step step : sameWayInFigure(count.section(), turning.get())) {
            if (step.count().compareTo(count.count()) < 0) {
                return false;
            }
            whole = whole.plus(step.turn());
        }
        List<String> words = TurnWords.of(whole, count.facingBefore().after(whole));
        add(Kind.FIGURE, Need.TURN, count, phrases(words.toArray(new String[0])), settings.lead());
        return true;
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

    /** One word a count; a figure's first count may name the figure instead. */
    private void addWord(DancedCount count) {
        Step step = count.steps().get(0);
        List<Phrase> phrases = new ArrayList<>();
        Optional<FigureRun> figure = StepWords.figureOf(count.section(), step);
        double worth = worthOf(count);
        if (figure.isPresent() && StepWords.begins(figure.get(), count.section(), step)) {
            List<String> heads = StepWords.headsOf(figure.get());
            double told = worth + tellsAll(figure.get(), count);
            for (int i = 0; i < heads.size(); i++) {
                phrases.add(new Phrase(heads.get(i), told + HEAD_BONUS + SIDE_BONUS * (heads.size() - 1 - i)));
            }
        }
        double lost = 0;
        for (String word : StepWords.of(count.section(), step)) {
            boolean isOptional = word.startsWith("(");
            String said = isOptional ? word.substring(1, word.length() - 1) : word;
            phrases.add(new Phrase(said, isOptional ? OPTIONAL_WORTH : worth - lost));
            lost += SECOND_CHOICE_LOSS;
        }
        Kind kind = Kind.WORD;
        add(kind, Need.WISH, count, phrases, settings.lead());
    }

    /** What a head that names each action ("kick ball change") says beyond its first count. */
    private double tellsAll(FigureRun figure, DancedCount count) {
        int actions = figure.figure().pattern().size();
        if (figure.figure().callHead().split(" ").length != actions || actions < 2) {
            return 0;
        }
        double told = 0;
        for (Step step : count.section().steps().subList(figure.firstStep() + 1, figure.endStep())) {
            told += step.count().isWhole() ? (step.transfer().takesWeight() ? WEIGHT_WORTH : TOUCH_WORTH) : SPLIT_WORTH;
        }
        return told;
    }

    /** At the level of figures: each figure once, each step outside of figures by its word. */
    private void addFigure(DancedCount count) {
        Step step = count.steps().get(0);
        Optional<FigureRun> figure = StepWords.figureOf(count.section(), step);
        boolean begins = figure.map(run -> StepWords.begins(run, count.section(), step))
                .orElse(count.count().isWhole());
        if (begins && !count.isFirstOfSection()) {
            add(Kind.FIGURE, Need.WISH, count, phrases(heads(count.section(), step)), settings.lead());
        }
    }

    private static double worthOf(DancedCount count) {
        if (!count.count().isWhole()) {
            return SPLIT_WORTH;
        }
        return count.takesWeight() ? WEIGHT_WORTH : TOUCH_WORTH;
    }

    private static List<Phrase> phrases(String... bestFirst) {
        List<Phrase> phrases = new ArrayList<>();
        for (int i = 0; i < bestFirst.length; i++) {
            phrases.add(new Phrase(bestFirst[i], WEIGHT_WORTH - SECOND_CHOICE_LOSS * i));
        }
        return phrases;
    }

    private void add(Kind kind, Need need, DancedCount target, List<Phrase> phrases, Beats lead) {
        cues.add(new Cue(kind, need, target, phrases, lead));
    }
}
