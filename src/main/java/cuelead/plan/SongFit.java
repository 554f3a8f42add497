package cuelead.plan;

import cuelead.dance.Facing;
import cuelead.dance.Turn;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a dance fits the song over which it is laid.
 *
 * @param walls         walls that are begun
 * @param countsOfLast  counts of the last wall or tag that are danced
 * @param isWhole       whether the last one is danced to its end
 * @param endFacing     the way faced when the music ends
 * @param toFront       how to finish facing the front; empty where the dance ends there, with an ending of its own, or nothing is danced
 * @param bpm           counts of the dance a minute, between its first count and its last
 * @param secondsAWall  length of the first wall in seconds
 * @param style         the dance's style, where it tells one
 * @param ranges        published tempo ranges of that style; may be empty
 */
public record SongFit(
        int walls,
        int countsOfLast,
        boolean isWhole,
        Facing endFacing,
        Optional<Finish> toFront,
        double bpm,
        double secondsAWall,
        Optional<String> style,
        List<StyleTempos.Range> ranges) {
    private static final int SECONDS_A_MINUTE = 60;
    private static final int FULL_TURN_DEGREES = 360;

    public SongFit {
        ranges = List.copyOf(ranges);
    }

    /** Whether the tempo suits the style. */
    public enum TempoVerdict {
        /** Within a published range. */
        WITHIN,
        /** Within one when the beats are counted twice as fast or half as fast. */
        WITHIN_OTHERWISE_COUNTED,
        OUTSIDE,
        /** No style is told, or none is published for it. */
        NOT_KNOWN
    }

    /**
     * A count of the last wall whose turn is changed, so that the dancers end facing the front.
     *
     * @param count   the count
     * @param written how far it turns as the sheet writes it
     * @param instead how far it turns now
     */
    public record Finish(DancedCount count, Turn written, Turn instead) {}

    public static SongFit of(Timeline timeline) {
        List<DancedCount> counts = timeline.counts();
        Facing end = timeline.ending().facing();
        Optional<DancedCount> last = timeline.ending().last();
        Optional<String> style = StyleTempos.styleOf(timeline.dance());
        double bpm = counts.size() < 2 ? 0 : bpm(counts.get(0), counts.get(counts.size() - 1), timeline);
        int wallCounts = timeline.runs().get(0).counts();
        return new SongFit(
                timeline.walls(),
                last.map(count -> (int) timeline.countsOf(count.run()).stream()
                                .filter(each -> each.count().isWhole())
                                .count())
                        .orElse(0),
                timeline.ending().isWhole(),
                end,
                last.filter(count -> !end.equals(Facing.FRONT) && !count.run().isEnding())
                        .map(count -> finish(timeline.countsOf(count.run()), end)),
                bpm,
                bpm == 0 ? 0 : wallCounts * SECONDS_A_MINUTE / bpm,
                style,
                style.map(StyleTempos::of).orElse(List.of()));
    }

    /** Counts a minute, whatever the song's own beats are. */
    private static double bpm(DancedCount first, DancedCount last, Timeline timeline) {
        double beats = last.at().since(first.at()).toDecimal();
        double counts = beats * timeline.countRate().countsInTwoBeats() / 2;
        return counts * SECONDS_A_MINUTE / (last.songSeconds() - first.songSeconds());
    }

    /**
     * The count to change: the last one that turns already and need not turn further than half round; else the last whole
     * one on which a foot takes weight, which then turns.
     */
    private static Finish finish(List<DancedCount> run, Facing end) {
        int missing = shortest(FULL_TURN_DEGREES - end.degrees());
        for (int i = run.size() - 1; i >= 0; i--) {
            Turn written = run.get(i).turn();
            Turn instead = new Turn(shortest(written.degrees() + missing));
            if (!written.isNone()) {
                return new Finish(run.get(i), written, instead);
            }
        }
        Stream<DancedCount> steps = run.stream().filter(DancedCount::takesWeight);
        DancedCount last = steps.max(Comparator.comparing(
                                (DancedCount count) -> count.count().isWhole())
                        .thenComparing(DancedCount::at))
                .orElse(run.get(run.size() - 1));
        return new Finish(last, Turn.NONE, new Turn(missing));
    }

    /** The same facing by the shorter way: -135 to 180 degrees. */
    private static int shortest(int degrees) {
        int right = Math.floorMod(degrees, FULL_TURN_DEGREES);
        return right > FULL_TURN_DEGREES / 2 ? right - FULL_TURN_DEGREES : right;
    }

    public TempoVerdict tempo() {
        if (ranges.isEmpty() || bpm == 0) {
            return TempoVerdict.NOT_KNOWN;
        }
        if (ranges.stream().anyMatch(range -> range.holds(bpm))) {
            return TempoVerdict.WITHIN;
        }
        boolean otherwise = ranges.stream().anyMatch(range -> range.holds(bpm * 2) || range.holds(bpm / 2));
        return otherwise ? TempoVerdict.WITHIN_OTHERWISE_COUNTED : TempoVerdict.OUTSIDE;
    }
}
