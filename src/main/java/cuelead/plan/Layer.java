package cuelead.plan;

import cuelead.dance.Count;
import cuelead.dance.CountOne;
import cuelead.dance.Counts;
import cuelead.dance.Dance;
import cuelead.dance.Facing;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.dance.Turn;
import cuelead.dance.WallWalk;
import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Lays one dance over one grid; see {@link Timeline#lay}. Used once. */
final class Layer {
    private final Dance dance;
    private final BeatGrid grid;
    private final Laying laying;
    private final Optional<EndingPlace> ending;
    private final List<Run> runs = new ArrayList<>();
    private final List<DancedCount> counts = new ArrayList<>();
    private BeatPosition next;
    private Facing facing = Facing.FRONT;
    private boolean musicEnded;
    private boolean lastRunWhole = true;

    Layer(Dance dance, BeatGrid grid, Laying laying) {
        this(dance, grid, laying, Optional.empty());
    }

    private Layer(Dance dance, BeatGrid grid, Laying laying, Optional<EndingPlace> ending) {
        this.ending = ending;
        this.dance = dance;
        this.grid = grid;
        this.laying = laying;
        this.next = positionOf(laying.countOne()).plus(laying.moved());
    }

    /** First without the ending, which shows where it comes, and then with it. */
    Timeline lay() {
        Timeline goingOn = layAll();
        boolean isFinished = laying.finish() == Laying.Finish.WITH_THE_ENDING;
        Optional<EndingPlace> place = isFinished ? EndingPlace.in(goingOn) : Optional.empty();
        return place.map(found -> new Layer(dance, grid, laying, place).layAll())
                .orElse(goingOn);
    }

    private Timeline layAll() {
        if (dance.isPhrased()) {
            layPhrased();
        } else {
            layWalls();
        }
        counts.sort((a, b) -> a.at().compareTo(b.at()));
        Optional<DancedCount> last = counts.isEmpty() ? Optional.empty() : Optional.of(counts.get(counts.size() - 1));
        return new Timeline(
                dance,
                grid,
                laying.countRate(),
                runs,
                counts,
                laying.endSeconds(),
                new Timeline.Ending(lastRunWhole, last, facing));
    }

    private BeatPosition positionOf(CountOne countOne) {
        if (countOne instanceof CountOne.AtSeconds at) {
            return BeatPosition.atBeat(grid.nearestBeat(at.songSeconds()));
        }
        CountOne.Intro intro = (CountOne.Intro) countOne;
        return BeatPosition.atBeat(grid.firstDownbeat()).plus(beatsOf(Counts.of(intro.counts())));
    }

    private Beats beatsOf(Counts length) {
        return Timeline.beatsOf(length, laying.countRate());
    }

    private void layWalls() {
        Part part = dance.parts().get(0);
        for (int wall = 1; wall <= laying.mostWalls() && !musicEnded; wall++) {
            layWall(wall, part);
            for (Tag tag : dance.tags()) {
                int number = wall;
                boolean atEnd = !WallPart.isWithin(tag, part.counts())
                        || dance.restarts().stream()
                                .anyMatch(restart -> restart.wall() == number && WallWalk.endsWith(tag, restart));
                if (tag.afterWalls().contains(wall) && atEnd && !musicEnded) {
                    layRun(Run.Kind.TAG, wall, tag.part(), Optional.empty());
                }
            }
        }
    }

    private void layPhrased() {
        int wall = 0;
        for (String name : dance.sequence()) {
            Optional<Part> part =
                    dance.parts().stream().filter(p -> p.name().equals(name)).findFirst();
            Optional<Part> tag = dance.tags().stream()
                    .map(Tag::part)
                    .filter(p -> p.name().equals(name))
                    .findFirst();
            if (musicEnded || wall >= laying.mostWalls()) {
                return;
            }
            if (part.isPresent()) {
                wall++;
                layWall(wall, part.get());
            } else if (tag.isPresent()) {
                layRun(Run.Kind.TAG, wall, tag.get(), Optional.empty());
            } else {
                throw new IllegalArgumentException("the sequence names no part or tag of the dance: " + name);
            }
        }
    }

    private Optional<Restart> restartOn(int wall) {
        return dance.restarts().stream().filter(r -> r.wall() == wall).findFirst();
    }

    /** The wall of the ending is danced as far as that says; then the ending, and nothing behind it. */
    private void layWall(int wall, Part part) {
        Optional<EndingPlace> here = ending.filter(place -> place.wall() == wall);
        if (here.isEmpty()) {
            layRun(Run.Kind.WALL, wall, part, restartOn(wall));
            return;
        }
        WallPart whole = WallPart.of(dance, part, wall, Optional.empty());
        int counts = Math.min(here.get().counts(), whole.counts());
        if (counts > 0) {
            lay(Run.Kind.WALL, wall, new WallPart(whole.part(), counts), Optional.empty());
        }
        layRun(Run.Kind.ENDING, wall, here.get().part(), Optional.empty());
        musicEnded = true;
    }

    private void layRun(Run.Kind kind, int wall, Part written, Optional<Restart> restart) {
        WallPart danced = kind == Run.Kind.WALL
                ? WallPart.of(dance, written, wall, restart)
                : new WallPart(written, written.counts());
        lay(kind, wall, danced, restart);
    }

    private void lay(Run.Kind kind, int wall, WallPart danced, Optional<Restart> restart) {
        Part part = danced.part();
        Run run = new Run(kind, wall, part, danced.counts(), next, facing, restart);
        if (grid.secondsAt(run.start()) > laying.endSeconds() && !runs.isEmpty()) {
            musicEnded = true;
            return;
        }
        runs.add(run);
        int before = 0;
        for (Section section : part.sections()) {
            laySection(run, section, before);
            before += section.length();
        }
        next = run.start().plus(beatsOf(Counts.of(run.counts())));
    }

    /** @param before whole counts of the run before this section */
    private void laySection(Run run, Section section, int before) {
        for (Map.Entry<Count, List<Step>> entry : stepsByCount(section).entrySet()) {
            Count count = entry.getKey();
            Counts offset = count.offset().plus(Counts.of(before));
            if (offset.compareTo(Counts.of(run.counts())) >= 0) {
                return;
            }
            BeatPosition at = run.start().plus(beatsOf(offset));
            double seconds = grid.secondsAt(at);
            if (seconds > laying.endSeconds()) {
                musicEnded = true;
                lastRunWhole = false;
                return;
            }
            Turn turn = entry.getValue().stream().map(Step::turn).reduce(Turn.NONE, Turn::plus);
            Facing after = facing.after(turn);
            counts.add(new DancedCount(
                    run, section, count, before + count.number(), at, seconds, facing, after, entry.getValue()));
            facing = after;
        }
    }

    /** Every whole count of the section and every count with a step, in order. */
    private static Map<Count, List<Step>> stepsByCount(Section section) {
        Map<Count, List<Step>> steps = new TreeMap<>();
        for (int number = 1; number <= section.length(); number++) {
            steps.put(Count.on(number), new ArrayList<>());
        }
        for (Step step : section.steps()) {
            steps.computeIfAbsent(step.count(), count -> new ArrayList<>()).add(step);
        }
        return steps;
    }
}
