package cuelead.practice;

import cuelead.dance.Counts;
import cuelead.plan.DancedCount;
import cuelead.plan.Run;
import cuelead.plan.Timeline;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.List;
import java.util.stream.Stream;

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

    /**
     * A jump by sections.
     *
     * @param meant      the section to jump from
     * @param nowSeconds what is heard now, seconds of the song
     * @param sections   how many sections on; 0 = this one from its beginning; below 0 = back
     */
    Jump sectionsOn(DancedCount meant, double nowSeconds, int sections) {
        return isInIntro(nowSeconds) && sections > 0
                ? backOrOn(among(starts, sections - 1), nowSeconds)
                : jump(meant, nowSeconds, sections, among(starts, indexAt(meant.songSeconds()) + sections));
    }

    /** A jump by walls; as {@link #sectionsOn}. */
    Jump wallsOn(DancedCount meant, double nowSeconds, int walls) {
        return isInIntro(nowSeconds) && walls > 0
                ? backOrOn(wallAfter(starts.get(0), walls - 1), nowSeconds)
                : jump(meant, nowSeconds, walls, wallAfter(meant, walls));
    }

    /** A jump to count 1 of the first wall; from its run-up or before it to the beginning of the song. */
    Jump toTheTop(double nowSeconds) {
        DancedCount first = starts.get(0);
        return nowSeconds < first.songSeconds()
                ? new Jump(first, Jump.Way.SONG_BEGINNING)
                : backOrOn(first, nowSeconds);
    }

    /** Before the run-up of the dance, where the first section is the next one. */
    private boolean isInIntro(double nowSeconds) {
        BeatPosition landing = runUpOf(starts.get(0)).minus(Beats.ONE);
        return nowSeconds < timeline.grid().secondsAt(landing);
    }

    private Jump jump(DancedCount meant, double nowSeconds, int steps, DancedCount aim) {
        if (steps > 0 && aim.songSeconds() <= meant.songSeconds()) {
            return new Jump(aim, Jump.Way.NO_FURTHER);
        }
        boolean isBeforeAll = steps < 0 && nowSeconds < starts.get(0).songSeconds();
        // a jump lands less than a beat before its run-up
        BeatPosition landing = runUpOf(aim).minus(Beats.ONE);
        boolean leadsOnUnasked = steps <= 0 && nowSeconds < timeline.grid().secondsAt(landing);
        return isBeforeAll || leadsOnUnasked ? new Jump(aim, Jump.Way.SONG_BEGINNING) : backOrOn(aim, nowSeconds);
    }

    private Jump backOrOn(DancedCount aim, double nowSeconds) {
        double runUp = timeline.grid().secondsAt(runUpOf(aim));
        if (runUp < 0) {
            return new Jump(aim, Jump.Way.SONG_BEGINNING);
        }
        return new Jump(aim, runUp < nowSeconds ? Jump.Way.BACK : Jump.Way.ON);
    }

    /** The start of the wall so many after the one that a section belongs to; as far as there are any. */
    private DancedCount wallAfter(DancedCount start, int walls) {
        List<DancedCount> wallStarts = starts.stream()
                .filter(count -> count.run().isWall() && count.countInRun() == 1)
                .toList();
        int now = 0;
        while (now + 1 < wallStarts.size() && wallStarts.get(now + 1).songSeconds() <= start.songSeconds()) {
            now++;
        }
        return among(wallStarts, now + walls);
    }

    private static DancedCount among(List<DancedCount> all, int index) {
        return all.get(Math.max(0, Math.min(all.size() - 1, index)));
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
     * From the start of the wall before to the start of the wall that a section belongs to, or of that wall to the
     * next; the other of both where there is none, and the wall's own length where it is the only one.
     *
     * @param walls -1 or 1
     */
    Beats wallLength(DancedCount start, int walls) {
        return Stream.of(wallDistance(start, walls), wallDistance(start, -walls))
                .filter(length -> length.ticks() > 0)
                .findFirst()
                .orElseGet(() -> timeline.beatsOf(Counts.of(start.run().counts())));
    }

    private Beats wallDistance(DancedCount start, int walls) {
        DancedCount wall = wallAfter(start, 0);
        DancedCount other = wallAfter(start, walls);
        return walls > 0 ? other.at().since(wall.at()) : wall.at().since(other.at());
    }
}
