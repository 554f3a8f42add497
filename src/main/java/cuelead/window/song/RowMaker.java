package cuelead.window.song;

import cuelead.plan.DancedCount;
import cuelead.plan.Timeline;
import cuelead.song.Hearing;
import cuelead.steer.Told;
import cuelead.time.BeatGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/** Makes the rows of a song. Used once. */
final class RowMaker {
    /** Beats that are further apart than this part of the usual distance are told: the music rests. */
    private static final double REST = 1.8;

    private static final int WALTZ_BEATS = 3;
    private static final int BARS_WITHOUT_PHRASES = 2;

    private final Hearing hearing;
    private final BeatGrid grid;
    private final Optional<DanceOnBeats> dance;
    private final int usual;
    private final boolean hasPhrases;
    private final double usualSeconds;

    RowMaker(Hearing hearing, Optional<Timeline> timeline) {
        this.hearing = hearing;
        grid = hearing.beats();
        dance = timeline.map(DanceOnBeats::new);
        int phrase = most(grid::countInPhrase);
        hasPhrases = phrase > 0;
        usual = hasPhrases ? phrase : withoutPhrases(most(grid::beatInBar));
        usualSeconds = grid.medianTempo().secondsPerBeat();
    }

    private int most(IntUnaryOperator number) {
        return IntStream.range(0, grid.size()).map(number).max().orElse(0);
    }

    private static int withoutPhrases(int bar) {
        return bar == WALTZ_BEATS ? WALTZ_BEATS * BARS_WITHOUT_PHRASES : 8;
    }

    Rows make() {
        List<Row> rows = new ArrayList<>();
        int from = 0;
        for (int beat = 1; beat <= grid.size(); beat++) {
            if (beat == grid.size() || begins(beat, from)) {
                rows.add(row(from, beat));
                from = beat;
            }
        }
        return new Rows(rows, usual);
    }

    /** @param from the first beat of the row before */
    private boolean begins(int beat, int from) {
        if (hasPhrases) {
            return grid.countInPhrase(beat) == 1 || grid.countInPhrase(beat) <= grid.countInPhrase(beat - 1);
        }
        return grid.beatInBar(beat) == 1 && (beat - from >= usual || from < grid.firstDownbeat());
    }

    private Row row(int from, int to) {
        Optional<DancedCount> first = IntStream.range(from, to)
                .mapToObj(this::danced)
                .flatMap(Optional::stream)
                .findFirst();
        boolean isFromItsBeginning = danced(from).isPresent() || first.isEmpty();
        List<Cell> cells = IntStream.range(from, to)
                .mapToObj(beat -> cell(beat, beat == from))
                .toList();
        boolean isOdd = cells.size() != usual && from > 0 && to < grid.size();
        return new Row(
                cells,
                danced(from).filter(count -> dance.orElseThrow().opens(count)).isPresent(),
                isFromItsBeginning ? place(from) : outside(from),
                first.filter(count -> isFromItsBeginning)
                        .map(count -> Told.facing(count.facingBefore()))
                        .orElse(""),
                notes(from, to, isOdd),
                first.map(count -> count.section().heading()).orElse(""),
                isOdd);
    }

    private Optional<DancedCount> danced(int beat) {
        return dance.flatMap(laid -> laid.on(beat));
    }

    private String place(int beat) {
        return danced(beat).map(count -> dance.orElseThrow().place(count)).orElseGet(() -> outside(beat));
    }

    private String outside(int beat) {
        return dance.map(laid -> laid.outside(beat)).orElse("");
    }

    private Cell cell(int beat, boolean isFirst) {
        Optional<DancedCount> danced = danced(beat);
        double seconds = grid.beatSeconds(beat);
        return new Cell(
                beat,
                seconds,
                hasPhrases ? grid.countInPhrase(beat) : grid.beatInBar(beat),
                danced.map(count -> Integer.toString(count.count().number())).orElse(""),
                isFirst
                        ? ""
                        : danced.map(count -> dance.orElseThrow().begins(count)).orElse(""),
                hearing.unsure().stream()
                        .anyMatch(stretch -> seconds >= stretch.fromSeconds() && seconds <= stretch.toSeconds()));
    }

    private List<String> notes(int from, int to, boolean isOdd) {
        List<String> notes = new ArrayList<>();
        if (isOdd) {
            notes.add(Told.number(to - from, "count") + " instead of " + usual);
        } else if (from == 0 && number(0) != 1) {
            notes.add("Pickup: " + Told.number(to, "count") + " before the first 1");
        }
        for (int beat = from; beat < to; beat++) {
            int now = beat;
            dance.flatMap(laid -> laid.note(now)).ifPresent(notes::add);
            rest(beat).ifPresent(notes::add);
        }
        boolean isUnsure = hearing.unsure().stream()
                .anyMatch(stretch -> stretch.toSeconds() >= grid.beatSeconds(from)
                        && stretch.fromSeconds() <= grid.beatSeconds(to - 1));
        if (isUnsure) {
            notes.add("Beat not clear: listen here");
        }
        return notes;
    }

    private int number(int beat) {
        return hasPhrases ? grid.countInPhrase(beat) : grid.beatInBar(beat);
    }

    private Optional<String> rest(int beat) {
        if (beat + 1 >= grid.size()) {
            return Optional.empty();
        }
        double seconds = grid.beatSeconds(beat + 1) - grid.beatSeconds(beat);
        return seconds > REST * usualSeconds
                ? Optional.of("No beat for " + Told.decimal(Math.round(seconds * 10) / 10.0) + " seconds")
                : Optional.empty();
    }
}
