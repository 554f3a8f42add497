package cuelead.dance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Recognises figures in the steps of a section. Of all ways to lay figures of the table, or their mirror images,
 * over the steps without overlap it takes the one with the longest figures; a figure that the heading names wins a
 * tie. The sheet's prose wins over the table: where the table leaves an ending or the place of a turn open, the run
 * keeps what is written.
 */
public final class FigureFinder {
    private static final int LENGTH_WEIGHT = 4;
    private static final int HEADING_BONUS = 2;
    private static final int VARIANT_COST = 3;

    private final Figures figures;
    private final List<Ways> all;

    /** A row danced from a foot: its figure, or the mirror image. */
    private record Way(FigureRow row, Figure danced, Turn net) {
        Way(FigureRow row, Figure danced) {
            this(row, danced, danced.pattern().stream().map(Figure.Beat::turn).reduce(Turn.NONE, Turn::plus));
        }

        /** By the same feet, turning to the other side: a half triple of R, L, R to the left. */
        Way turnedBack() {
            return new Way(row, danced.turnedBack());
        }
    }

    /** All ways of a row, the one that is written first. */
    private record Ways(FigureRow row, boolean livesByItsRhythm, List<Way> ways) {
        static Ways of(FigureRow row) {
            Way written = new Way(row, row.figure());
            Way mirrored = new Way(row, row.figure().mirrored());
            return new Ways(
                    row,
                    row.livesByItsRhythm(),
                    row.turnsEitherWay()
                            ? List.of(written, mirrored, written.turnedBack(), mirrored.turnedBack())
                            : List.of(written, mirrored));
        }

        int steps() {
            return row.figure().pattern().size();
        }
    }

    public FigureFinder(Figures figures) {
        this.figures = figures;
        all = figures.rows().stream()
                .filter(FigureRow::isRecognised)
                .map(Ways::of)
                .toList();
    }

    /** Runs in order, not overlapping. In a waltz no figure begins in one bar and ends within another. */
    public List<FigureRun> find(List<Step> steps, String heading, Metre metre) {
        int[] worth = new int[steps.size() + 1];
        List<Optional<FigureRun>> choice = new ArrayList<>();
        String headingKey = " " + plain(heading) + " ";
        for (int first = steps.size() - 1; first >= 0; first--) {
            worth[first] = worth[first + 1];
            Optional<FigureRun> best = Optional.empty();
            for (Ways figure : all) {
                int end = first + figure.steps();
                if (end > steps.size() || straddles(steps.subList(first, end), metre)) {
                    continue;
                }
                Optional<Match> match = match(figure, steps.subList(first, end), first);
                int value = match.map(m -> m.value(headingKey) + worth[end]).orElse(0);
                if (value > worth[first]) {
                    worth[first] = value;
                    best = match.map(Match::run);
                }
            }
            choice.add(best);
        }
        Collections.reverse(choice);
        return follow(choice);
    }

    private static boolean straddles(List<Step> steps, Metre metre) {
        if (metre != Metre.SIXES) {
            return false;
        }
        int firstCount = steps.get(0).count().number() - 1;
        int lastCount = steps.get(steps.size() - 1).count().number() - 1;
        int bar = metre.beatsInBar();
        boolean wholeBars = firstCount % bar == 0 && lastCount % bar == bar - 1;
        return firstCount / bar != lastCount / bar && !wholeBars;
    }

    private static List<FigureRun> follow(List<Optional<FigureRun>> choice) {
        List<FigureRun> runs = new ArrayList<>();
        int step = 0;
        while (step < choice.size()) {
            Optional<FigureRun> run = choice.get(step);
            run.ifPresent(runs::add);
            step = run.map(FigureRun::endStep).orElse(step + 1);
        }
        return runs;
    }

    private Optional<Match> match(Ways figure, List<Step> steps, int first) {
        if (figure.livesByItsRhythm() && isSlower(figure.row().figure(), steps)) {
            return Optional.empty();
        }
        for (Way way : figure.ways()) {
            Optional<Match> match = match(way, steps, first);
            if (match.isPresent()) {
                return match;
            }
        }
        return Optional.empty();
    }

    private Optional<Match> match(Way way, List<Step> steps, int first) {
        FigureRow row = way.row();
        Figure danced = way.danced();
        int variants = 0;
        Turn net = Turn.NONE;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            Figure.Beat beat = danced.pattern().get(i);
            boolean last = i == steps.size() - 1;
            if (!step.foot().equals(beat.foot()) || !sameMove(step, beat)) {
                if (!(last
                        && row.freeEnding()
                        && (step.foot().equals(beat.foot()) || step.foot().isEmpty()))) {
                    return Optional.empty();
                }
                variants++;
            }
            if (!step.turn().equals(beat.turn())) {
                if (!row.freeTurn()) {
                    return Optional.empty();
                }
                variants++;
            }
            net = net.plus(step.turn());
        }
        if (!net.equals(way.net())) {
            return Optional.empty();
        }
        if (!sameRhythm(danced, steps)) {
            variants++;
        }
        Figure written = variants == 0 ? danced : asWritten(danced, steps);
        Foot lead = danced.lead();
        Figure forItsLead = lead == row.figure().lead() ? written : written.mirrored();
        return Optional.of(new Match(new FigureRun(forItsLead, lead, first, steps.size()), variants));
    }

    private static boolean sameMove(Step step, Figure.Beat beat) {
        boolean same = step.action() == beat.action() && round(step.direction()) == round(beat.direction());
        boolean sameWeight = step.transfer().takesWeight() == beat.transfer().takesWeight();
        return sameWeight
                && (same || (isHome(step.action(), step.direction()) && isHome(beat.action(), beat.direction())));
    }

    /** A sweep is the same figure whichever way it goes round. */
    private static Direction round(Direction direction) {
        return direction == Direction.FRONT_TO_BACK ? Direction.BACK_TO_FRONT : direction;
    }

    /** Ways to write that the foot comes down under the body: they differ in words, not in the dance. */
    private static boolean isHome(Action action, Direction direction) {
        return switch (action) {
            case CLOSE, INPLACE, CHANGE -> true;
            case BALL -> direction == Direction.PLACE || direction == Direction.TOGETHER;
            default -> false;
        };
    }

    private static boolean isSlower(Figure figure, List<Step> steps) {
        int last = steps.size() - 1;
        Counts written =
                steps.get(last).count().offset().minus(steps.get(0).count().offset());
        Counts usual = figure.pattern()
                .get(last)
                .offset()
                .minus(figure.pattern().get(0).offset());
        return written.compareTo(usual) > 0;
    }

    private static boolean sameRhythm(Figure figure, List<Step> steps) {
        Counts start = steps.get(0).count().offset();
        Counts patternStart = figure.pattern().get(0).offset();
        for (int i = 1; i < steps.size(); i++) {
            Counts danced = steps.get(i).count().offset().minus(start);
            if (!danced.equals(figure.pattern().get(i).offset().minus(patternStart))) {
                return false;
            }
        }
        return true;
    }

    /** The figure with the sheet's own actions, turns and rhythm, and words to match. */
    private Figure asWritten(Figure figure, List<Step> steps) {
        Counts start = steps.get(0).count().offset();
        Counts patternStart = figure.pattern().get(0).offset();
        List<Figure.Beat> pattern = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            Figure.Beat beat = figure.pattern().get(i);
            pattern.add(new Figure.Beat(
                    step.count().offset().minus(start).plus(patternStart),
                    step.foot(),
                    step.action(),
                    step.direction(),
                    step.turn(),
                    step.transfer()));
            String word = figure.callWords().get(i);
            boolean changed = !sameMove(step, beat) || !step.turn().equals(beat.turn());
            boolean misplaced = word.equals("and") && step.count().isWhole();
            words.add(changed || misplaced ? word(step) : word);
        }
        return new Figure(
                figure.id(), figure.name(), figure.synonyms(), figure.lead(), pattern, figure.callHead(), words);
    }

    private String word(Step step) {
        return step.turn().isNone() ? figures.callWord(step.action(), step.direction()) : "turn";
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9/]+", " ")
                .replace("steps", "step")
                .strip();
    }

    private record Match(FigureRun run, int variants) {
        /** A name that an instructor has given wins against figures of its length. */
        int value(String headingKey) {
            int steps = run.figure().isOwn() ? run.steps() + 1 : run.steps();
            int length = steps * steps * LENGTH_WEIGHT;
            boolean named = headingKey.contains(" " + plain(run.figure().name()) + " ")
                    || run.figure().synonyms().stream().anyMatch(name -> headingKey.contains(" " + plain(name) + " "));
            return length - variants * VARIANT_COST + (named ? HEADING_BONUS : 0);
        }
    }
}
