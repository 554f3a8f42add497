package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Count;
import cuelead.dance.Counts;
import cuelead.dance.Figure;
import cuelead.dance.Transfer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How many counts of a line each of its phrases takes. A phrase can often be read at several lengths (a vine with
 * or without its touch, a drag over one count or two); the lengths are chosen so that they fill the line's counts
 * exactly, with the least stretching.
 */
final class Fitting {
    private static final int IMPOSSIBLE = 1_000_000;

    private Fitting() {}

    /**
     * How a line is laid on its counts.
     *
     * @param sizes  actions a phrase
     * @param counts one an action, as written, or between them where figures have more actions than whole counts
     */
    record Fit(List<Integer> sizes, List<Count> counts, int cost) {
        Fit {
            sizes = List.copyOf(sizes);
            counts = List.copyOf(counts);
        }
    }

    /** One way to read a phrase: its actions, the whole counts that they usually take, what it costs. */
    private record Option(int size, int beats, int cost) {
        int measure(Measure by) {
            return by == Measure.BEATS ? beats : size;
        }
    }

    private enum Measure {
        LABELS,
        /** Counts on the beat only, so that an "&" can be no step. */
        WHOLE_LABELS,
        BEATS
    }

    /** The best way to fill these counts: an action on each, or figures spread over them; empty where nothing fits. */
    static Optional<Fit> of(List<Phrase> phrases, List<Count> counts) {
        boolean whole = counts.stream().allMatch(Count::isWhole) && !counts.isEmpty();
        Optional<Fit> labels = chosen(phrases, counts.size(), whole ? Measure.WHOLE_LABELS : Measure.LABELS)
                .map(options -> new Fit(sizes(options), counts, cost(options)));
        boolean quick = labels.filter(fit -> slowsDown(phrases, fit)).isPresent();
        if (!whole || (!quick && labels.filter(fit -> fit.cost() < STRAINED).isPresent())) {
            return labels;
        }
        Optional<Fit> beats = chosen(phrases, counts.size(), Measure.BEATS)
                .map(options -> new Fit(sizes(options), spread(phrases, options, counts.get(0)), cost(options)));
        return labels.isPresent()
                        && beats.filter(fit -> fit.cost() < labels.get().cost()).isEmpty()
                ? labels
                : beats;
    }

    /** Whether a figure is danced on whole counts that is usually quicker. */
    private static boolean slowsDown(List<Phrase> phrases, Fit fit) {
        return IntStream.range(0, phrases.size())
                .anyMatch(i -> isQuick(phrases.get(i)) && fit.sizes().get(i) >= usual(phrases.get(i)));
    }

    /** A figure that has more steps than whole counts: "R shuffle forward". */
    private static boolean isQuick(Phrase phrase) {
        List<Figure.Beat> pattern =
                phrase.figure().map(call -> call.row().figure().pattern()).orElse(List.of());
        return pattern.size() > beats(pattern) && phrase.action().isEmpty();
    }

    private static final int STRAINED = 10;
    /** A line of so few is counted exactly; in a longer one a touch may well be told by its beginning only. */
    private static final int FEW_COUNTS = 4;

    /** Less than a hold that is stretched and an unread action of one count. */
    private static final int ASIDE_COST = 5;

    private static List<Integer> sizes(List<Option> options) {
        return options.stream().map(Option::size).toList();
    }

    private static int cost(List<Option> options) {
        return options.stream().mapToInt(Option::cost).sum();
    }

    private static List<Count> spread(List<Phrase> phrases, List<Option> options, Count first) {
        List<Count> counts = new ArrayList<>();
        long start = first.number();
        for (int i = 0; i < options.size(); i++) {
            Option option = options.get(i);
            Optional<Phrase.FigureCall> figure = phrases.get(i).figure();
            boolean spread = figure.isPresent() && option.size() != option.beats();
            List<Figure.Beat> pattern = spread ? figure.get().row().figure().pattern() : List.of();
            for (int step = 0; step < option.size(); step++) {
                counts.add(spread ? at(start, pattern, step) : Count.on((int) start + step));
            }
            start += option.beats();
        }
        return counts;
    }

    private static Count at(long start, List<Figure.Beat> pattern, int step) {
        long ticks = pattern.get(step % pattern.size()).offset().ticks();
        long number =
                start + (long) (step / pattern.size()) * beats(pattern) + Math.floorDiv(ticks, Counts.TICKS_PER_COUNT);
        long part = Math.floorMod(ticks, Counts.TICKS_PER_COUNT);
        Count.Split split =
                part == 0 ? Count.Split.ON : part * 2 == Counts.TICKS_PER_COUNT ? Count.Split.AND : Count.Split.A;
        return new Count((int) Math.max(0, number), split);
    }

    private static int beats(List<Figure.Beat> pattern) {
        long last =
                pattern.stream().mapToLong(beat -> beat.offset().ticks()).max().orElse(0);
        return (int) Math.floorDiv(last, Counts.TICKS_PER_COUNT) + 1;
    }

    /** The cheapest reading of each phrase such that all together measure {@code total}. */
    private static Optional<List<Option>> chosen(List<Phrase> phrases, int total, Measure by) {
        int[] cost = new int[total + 1];
        Arrays.fill(cost, IMPOSSIBLE);
        cost[total] = 0;
        List<Option[]> choices = new ArrayList<>();
        for (int i = phrases.size() - 1; i >= 0; i--) {
            Option[] choice = new Option[total + 1];
            cost = extend(options(phrases, i, total, by), cost, choice, by);
            choices.add(0, choice);
        }
        return cost[0] >= IMPOSSIBLE ? Optional.empty() : Optional.of(follow(choices, by));
    }

    private static int[] extend(List<Option> options, int[] after, Option[] choice, Measure by) {
        int[] cost = new int[after.length];
        for (int used = 0; used < after.length; used++) {
            cost[used] = IMPOSSIBLE;
            for (Option option : options) {
                int end = used + option.measure(by);
                int sum = end >= after.length ? IMPOSSIBLE : option.cost() + after[end];
                if (sum < cost[used]) {
                    cost[used] = sum;
                    choice[used] = option;
                }
            }
        }
        return cost;
    }

    private static List<Option> follow(List<Option[]> choices, Measure by) {
        List<Option> chosen = new ArrayList<>();
        int used = 0;
        for (Option[] choice : choices) {
            chosen.add(choice[used]);
            used += choice[used].measure(by);
        }
        return chosen;
    }

    /** The length that a phrase has by itself. */
    static int usual(Phrase phrase) {
        if (phrase.mayBeLeft()) {
            return 0;
        }
        if (phrase.duration().isPresent() && phrase.figure().isEmpty()) {
            return phrase.duration().getAsInt();
        }
        return phrase.figure().map(call -> call.row().figure().pattern().size()).orElse(1) * phrase.repeats();
    }

    /** The same behind which the rest of the line stands: "rock back, recover" has its recover written out. */
    static int usual(List<Phrase> phrases, int index) {
        Phrase phrase = phrases.get(index);
        List<Figure.Beat> pattern =
                phrase.figure().map(call -> call.row().figure().pattern()).orElse(List.of());
        boolean open = !pattern.isEmpty() && pattern.get(pattern.size() - 1).action() == Action.RECOVER;
        boolean written = WrittenOut.recovers(phrases, index);
        return usual(phrase) - (open && written ? 1 : 0);
    }

    private static List<Option> options(List<Phrase> phrases, int index, int counts, Measure by) {
        Phrase phrase = phrases.get(index);
        List<Option> options = new ArrayList<>();
        if (phrase.mayBeLeft() && phrase.readable()) {
            Option none = new Option(0, 0, 0);
            boolean still =
                    phrase.action().filter(call -> call.action() == Action.HOLD).isPresent();
            return still || by == Measure.LABELS ? List.of(none, new Option(1, 1, ASIDE_COST)) : List.of(none);
        }
        if (!phrase.readable()) {
            if (phrase.mayBeLeft() || (index > 0 && phrase.isOnlySaid())) {
                options.add(new Option(0, 0, ASIDE_COST));
            }
            for (int size = 1; size <= counts; size++) {
                options.add(new Option(size, size, 3 * size));
            }
            return options;
        }
        int beats = phrase.figure()
                .map(call -> beats(call.row().figure().pattern()) * phrase.repeats())
                .orElse(usual(phrase));
        boolean begun = WrittenOut.isBegun(phrases, index);
        if (!(by == Measure.LABELS && turnsInto(phrases, index))) {
            options.add(new Option(usual(phrase), beats, begun ? AGAIN_COST : 0));
        }
        if (phrase.mayBeTitle() && index < phrases.size() - 1) {
            options.add(new Option(0, 0, 4));
        }
        if (WrittenOut.follows(phrases, index)) {
            options.add(new Option(0, 0, 1));
        }
        if (index > 0 && Joined.mayShare(phrases.get(index - 1), phrase)) {
            options.add(new Option(0, 0, 3));
            if (phrase.repeats() > 1) { // "step L forward and bump hips forward twice": the first bump with the step
                options.add(new Option(phrase.repeats() - 1, phrase.repeats() - 1, 2));
            }
        }
        phrase.figure().ifPresent(call -> figure(call, phrases, index, by, options));
        boolean exact = by == Measure.LABELS || counts <= FEW_COUNTS;
        phrase.action()
                .filter(call -> !exact
                        || !Stretching.isDoneAtOnce(call.action())
                        || phrase.figure().isPresent())
                .ifPresent(call -> action(call, phrase, index, counts, options));
        if (begun) {
            options.add(new Option(phrase.repeats(), phrase.repeats(), 0));
        }
        return options;
    }

    /** "1/4 turn right and step L to side" in a quick rhythm: the turn has no count of its own there. */
    static boolean turnsInto(List<Phrase> phrases, int index) {
        boolean linked = index < phrases.size() - 1 && phrases.get(index + 1).joint() == Phrase.Joint.LINKED;
        return linked
                && MoveMaker.isTurn(phrases.get(index))
                && phrases.get(index + 1)
                        .action()
                        .filter(call -> call.action() == Action.STEP)
                        .isPresent();
    }

    private static final int AGAIN_COST = 2;

    /** Where more follows, a figure may leave its open ending to it: "vine right, scuff L", "side rock R, recover". */
    private static void figure(
            Phrase.FigureCall call, List<Phrase> phrases, int index, Measure by, List<Option> options) {
        Phrase phrase = phrases.get(index);
        List<Figure.Beat> pattern = call.row().figure().pattern();
        Figure.Beat last = pattern.get(pattern.size() - 1);
        boolean moreFollows = index < phrases.size() - 1;
        boolean recovers = last.action() == Action.RECOVER && WrittenOut.recovers(phrases, index);
        boolean open = last.transfer() == Transfer.NONE || call.row().freeEnding() || recovers;
        int feet = call.feet().size();
        int times = feet / call.feetEach();
        if (times > 1 && phrase.repeats() == 1) {
            options.add(new Option(pattern.size() * times, beats(pattern) * times, 1));
        }
        if (phrase.repeats() > 1 && feet == phrase.repeats()) {
            options.add(new Option(pattern.size(), beats(pattern), 1));
        }
        if (by == Measure.LABELS) {
            call.quick()
                    .map(quick -> quick.row().figure().pattern())
                    .ifPresent(quick -> options.add(
                            new Option(quick.size() * phrase.repeats(), beats(quick) * phrase.repeats(), 1)));
        }
        boolean left = (open && moreFollows) || call.row().freeEnding();
        boolean spread = by == Measure.WHOLE_LABELS && pattern.size() > beats(pattern);
        if (left && pattern.size() > 1 && !spread) {
            options.add(new Option(usual(phrase) - 1, beats(pattern) * phrase.repeats() - 1, 1));
        }
    }

    private static void action(Phrase.ActionCall call, Phrase phrase, int index, int counts, List<Option> options) {
        if (phrase.figure().isPresent()) {
            options.add(new Option(phrase.repeats(), phrase.repeats(), 2));
            return;
        }
        if (call.isWalkAround()) {
            for (int size = phrase.repeats() + 1; size <= counts; size++) {
                options.add(new Option(size, size, 1));
            }
            return;
        }
        if (call.isBareTurn()) {
            options.add(new Option(0, 0, 1));
            return;
        }
        if (call.action() == Action.CLAP && index > 0) {
            options.add(new Option(0, 0, phrase.joint() == Phrase.Joint.PARTED ? 4 : 3));
        }
        if (call.transfer() == Transfer.NONE && phrase.duration().isEmpty()) {
            for (int size = phrase.repeats() + 1; size <= counts; size++) {
                options.add(new Option(size, size, Stretching.cost(call.action()) + size));
            }
        }
    }
}
