package cuelead.lesson;

import cuelead.dance.Counts;
import cuelead.dance.Part;
import cuelead.lesson.Piece.Joined;
import cuelead.lesson.Piece.OneSection;
import cuelead.lesson.Piece.PartChange;
import cuelead.lesson.Piece.RestartOf;
import cuelead.lesson.Piece.TagOf;
import cuelead.lesson.Piece.Wall;
import cuelead.plan.DancedCount;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import cuelead.time.BeatPosition;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Where a piece of a dance lies on a timeline.
 *
 * @param from its first count
 * @param to   the count after its last
 */
public record PiecePlace(BeatPosition from, BeatPosition to) {
    /** The first such place; empty where the piece is not danced, or the music has ended before. */
    public static Optional<PiecePlace> of(Piece piece, Timeline timeline) {
        if (timeline.counts().isEmpty()) {
            return Optional.empty();
        }
        if (piece instanceof OneSection one) {
            return sections(one.section(), one.section(), timeline);
        } else if (piece instanceof Joined joined) {
            return sections(joined.first(), joined.last(), timeline);
        } else if (piece instanceof Wall wall) {
            return first(timeline, run -> run.isWall() && run.wall() == wall.wall())
                    .map(run -> new PiecePlace(run.start(), endOf(run, timeline)));
        } else if (piece instanceof TagOf tag) {
            return first(timeline, run -> run.isTag() && run.wall() == tag.wall())
                    .map(run -> around(run.start(), endOf(run, timeline), timeline))
                    .or(() -> bridge(tag.wall(), timeline));
        } else if (piece instanceof RestartOf restart) {
            return first(
                            timeline,
                            run -> run.wall() == restart.wall() && run.restart().isPresent())
                    .map(run -> around(endOf(run, timeline), endOf(run, timeline), timeline));
        }
        if (piece instanceof PartChange change) {
            return first(timeline, run -> isFollowedBy(change, run, timeline.runs()))
                    .map(run -> around(endOf(run, timeline), endOf(run, timeline), timeline));
        }
        Run last = timeline.runs().get(timeline.runs().size() - 1);
        return Optional.of(new PiecePlace(timeline.countOne(), endOf(last, timeline)));
    }

    /** A tag that comes within its wall. */
    private static Optional<PiecePlace> bridge(int wall, Timeline timeline) {
        return first(timeline, run -> run.wall() == wall)
                .flatMap(run -> timeline.countsOf(run).stream()
                        .filter(DancedCount::beginsBridge)
                        .findFirst()
                        .map(count -> {
                            Counts length = Counts.of(count.section().length());
                            return around(count.at(), count.at().plus(timeline.beatsOf(length)), timeline);
                        }));
    }

    private static boolean isFollowedBy(PartChange change, Run run, List<Run> runs) {
        int next = runs.indexOf(run) + 1;
        return run.part().name().equals(change.from())
                && next < runs.size()
                && runs.get(next).part().name().equals(change.to());
    }

    private static Optional<PiecePlace> sections(int first, int last, Timeline timeline) {
        int before = 0;
        for (Part part : timeline.dance().parts()) {
            if (first <= before + part.sections().size()) {
                int from = lengthOf(part, first - 1 - before);
                int to = lengthOf(part, last - before);
                return first(timeline, run -> run.part().equals(part) && run.counts() >= to)
                        .map(run -> new PiecePlace(
                                run.start().plus(timeline.beatsOf(Counts.of(from))),
                                run.start().plus(timeline.beatsOf(Counts.of(to)))));
            }
            before += part.sections().size();
        }
        return Optional.empty();
    }

    /** Counts of the first sections of a part. */
    private static int lengthOf(Part part, int sections) {
        return part.sections().subList(0, sections).stream()
                .mapToInt(section -> section.length())
                .sum();
    }

    private static Optional<Run> first(Timeline timeline, Predicate<Run> wanted) {
        List<Run> runs = timeline.runs();
        return runs.stream()
                .filter(wanted)
                .filter(run -> timeline.grid().secondsAt(endOf(run, timeline)) <= timeline.endSeconds())
                .findFirst();
    }

    private static BeatPosition endOf(Run run, Timeline timeline) {
        return run.start().plus(timeline.beatsOf(Counts.of(run.counts())));
    }

    /** With eight counts before and after it, six in waltz: "enter from 8 counts before" (common practice, no source). */
    private static PiecePlace around(BeatPosition from, BeatPosition to, Timeline timeline) {
        var eight = timeline.beatsOf(Counts.of(timeline.dance().header().metre().countsInSection()));
        return new PiecePlace(from.minus(eight), to.plus(eight));
    }
}
