package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Figure;
import cuelead.dance.Transfer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How many counts of a line each of its phrases takes. A phrase can often be read at several lengths (a vine with
 * or without its touch, a drag over one count or two); the lengths are chosen so that they fill the line's counts
 * exactly, with the least stretching.
 */
final class Fitting {
    private static final int IMPOSSIBLE = 1_000_000;

    private Fitting() {}

    /** One way to read a phrase. */
    private record Option(int size, int cost) {}

    /** Counts a phrase, adding up to {@code counts}; empty where nothing fits. */
    static Optional<int[]> sizes(List<Phrase> phrases, int counts) {
        int[][] cost = new int[phrases.size() + 1][counts + 1];
        int[][] chosen = new int[phrases.size()][counts + 1];
        Arrays.fill(cost[phrases.size()], IMPOSSIBLE);
        cost[phrases.size()][counts] = 0;
        for (int i = phrases.size() - 1; i >= 0; i--) {
            List<Option> options = options(phrases, i, counts);
            for (int used = 0; used <= counts; used++) {
                cost[i][used] = IMPOSSIBLE;
                for (Option option : options) {
                    int end = used + option.size();
                    int total = end > counts ? IMPOSSIBLE : option.cost() + cost[i + 1][end];
                    if (total < cost[i][used]) {
                        cost[i][used] = total;
                        chosen[i][used] = option.size();
                    }
                }
            }
        }
        return cost[0][0] >= IMPOSSIBLE ? Optional.empty() : Optional.of(follow(chosen));
    }

    private static int[] follow(int[][] chosen) {
        int[] sizes = new int[chosen.length];
        int used = 0;
        for (int i = 0; i < chosen.length; i++) {
            sizes[i] = chosen[i][used];
            used += sizes[i];
        }
        return sizes;
    }

    /** The length that a phrase has by itself. */
    static int usual(Phrase phrase) {
        if (phrase.duration().isPresent() && phrase.figure().isEmpty()) {
            return phrase.duration().getAsInt();
        }
        return phrase.figure().map(call -> call.row().figure().pattern().size()).orElse(1) * phrase.repeats();
    }

    private static List<Option> options(List<Phrase> phrases, int index, int counts) {
        Phrase phrase = phrases.get(index);
        List<Option> options = new ArrayList<>();
        if (!phrase.readable()) {
            for (int size = 1; size <= counts; size++) {
                options.add(new Option(size, 3 * size));
            }
            return options;
        }
        options.add(new Option(usual(phrase), 0));
        phrase.figure().ifPresent(call -> figure(call, phrase, index < phrases.size() - 1, options));
        phrase.action().ifPresent(call -> action(call, phrase, index, counts, options));
        return options;
    }

    /** Where more follows, a figure may leave its open ending to it: "vine right, scuff L", "side rock R, recover". */
    private static void figure(Phrase.FigureCall call, Phrase phrase, boolean moreFollows, List<Option> options) {
        List<Figure.Beat> pattern = call.row().figure().pattern();
        Figure.Beat last = pattern.get(pattern.size() - 1);
        boolean open = last.transfer() == Transfer.NONE || call.row().freeEnding() || last.action() == Action.RECOVER;
        if (open && moreFollows && pattern.size() > 1) {
            options.add(new Option(usual(phrase) - 1, 1));
        }
    }

    private static void action(Phrase.ActionCall call, Phrase phrase, int index, int counts, List<Option> options) {
        if (phrase.figure().isPresent()) {
            options.add(new Option(phrase.repeats(), 2));
            return;
        }
        if (call.isWalkAround()) {
            for (int size = phrase.repeats() + 1; size <= counts; size++) {
                options.add(new Option(size, 1));
            }
            return;
        }
        if (call.isBareTurn()) {
            options.add(new Option(0, 1));
            return;
        }
        if (call.action() == Action.CLAP && index > 0) {
            options.add(new Option(0, 3));
        }
        if (call.transfer() == Transfer.NONE && phrase.duration().isEmpty()) {
            for (int size = phrase.repeats() + 1; size <= counts; size++) {
                options.add(new Option(size, stretch(call.action()) + size));
            }
        }
    }

    private static int stretch(Action action) {
        return switch (action) {
            case HOLD, DRAG, SWEEP, SLIDE, SHIMMY, HIPROLL, BODYROLL -> 1;
            default -> 12;
        };
    }
}
