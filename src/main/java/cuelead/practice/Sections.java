package cuelead.practice;

import cuelead.dance.Counts;
import cuelead.plan.DancedCount;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.List;

/** The sections and walls of a timeline, to be jumped to. */
final class Sections {
    private final Timeline timeline;
    private final List<DancedCount> starts;

    /** @param timeline with a count at least */
    Sections(Timeline timeline) {
        this.timeline = timeline;
        starts =
                timeline.counts().stream().filter(DancedCount::isFirstOfSection).toList();
    }

    /** The section being danced at a time; the first before the dance. */
    DancedCount at(double songSeconds) {
        return starts.get(indexAt(songSeconds));
    }

    /** The section so many after another; the last or first where there are not so many. */
    DancedCount after(DancedCount start, int sections) {
        int index = indexAt(start.songSeconds()) + sections;
        return starts.get(Math.max(0, Math.min(starts.size() - 1, index)));
    }

    /** The start of the wall so many after the one that a section belongs to; as {@link #after}. */
    DancedCount wallAfter(DancedCount start, int walls) {
        List<DancedCount> wallStarts = starts.stream()
                .filter(count -> !count.run().isTag() && count.countInRun() == 1)
                .toList();
        int now = 0;
        while (now + 1 < wallStarts.size() && wallStarts.get(now + 1).songSeconds() <= start.songSeconds()) {
            now++;
        }
        return wallStarts.get(Math.max(0, Math.min(wallStarts.size() - 1, now + walls)));
    }

    private int indexAt(double songSeconds) {
        int index = 0;
        while (index + 1 < starts.size() && starts.get(index + 1).songSeconds() <= songSeconds) {
            index++;
        }
        return index;
    }

    /** The count after the last of a section. */
    BeatPosition endOf(DancedCount start) {
        Run run = start.run();
        int before = start.countInRun() - 1;
        int length = Math.min(start.section().length(), run.counts() - before);
        return start.at().plus(timeline.beatsOf(Counts.of(length)));
    }

    /** Eight counts before a section, six in waltz. */
    BeatPosition runUpOf(DancedCount start) {
        int counts = timeline.dance().header().metre().countsInSection();
        return start.at().minus(timeline.beatsOf(Counts.of(counts)));
    }

    /**
     * From the start of the wall before to the start of the wall that a section belongs to, or of that wall to the next.
     *
     * @param walls -1 or 1
     */
    Beats wallLength(DancedCount start, int walls) {
        DancedCount wall = wallAfter(start, 0);
        DancedCount other = wallAfter(start, walls);
        return walls > 0 ? other.at().since(wall.at()) : wall.at().since(other.at());
    }
}
