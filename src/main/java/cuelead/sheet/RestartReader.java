package cuelead.sheet;

import cuelead.dance.Facing;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.WallClaim;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Collects the restarts of a sheet, which may be told in a line of their own, marked at their place, or both. */
final class RestartReader {
    private final Problems problems;
    private final List<Restart> restarts = new ArrayList<>();
    /** Marked without a wall, or told of a wall without its place. */
    private final HalfRestarts halves = new HalfRestarts();
    /** By the line that tells them. */
    private final Map<Integer, StepChange> changes = new HashMap<>();
    /** Told without its count: "Restart on wall 3" between two sections. */
    private final List<HalfRestarts.Mark> implied = new ArrayList<>();

    private final List<Shortened> shortened = new ArrayList<>();

    private final List<WallClaim> wallStarts = new ArrayList<>();

    RestartReader(Problems problems) {
        this.problems = problems;
    }

    /** "No tags, no restarts!", "without restarts", "there are no tags or restarts". */
    static boolean saysNone(SheetLine line) {
        List<String> words = line.tokens().stream().map(Token::text).toList();
        for (int i = 1; i < words.size(); i++) {
            boolean none =
                    words.subList(Math.max(0, i - NEGATION_REACH), i).stream().anyMatch(NEGATIONS::contains);
            if (words.get(i).startsWith("restart") && none) {
                return true;
            }
        }
        return false;
    }

    private static final int NEGATION_REACH = 3;
    private static final Set<String> NEGATIONS = Set.of("no", "without", "neither", "nor", "zero");

    /**
     * Reads a line about a restart.
     *
     * @param here     counts of the dance above the line; 0 where the line stands below the whole dance
     * @param sections counts before section 1, 2, 3 ... and at the end
     */
    void line(SheetLine line, int here, List<Integer> sections) {
        WallNote note = WallNote.read(line.tokens());
        change(line);
        if (note.walls().isEmpty() && here > 0) {
            halves.mark(here, line);
        } else if (note.walls().isEmpty()) {
            unclear(line, "It is not said on which wall to restart.");
        }
        Optional<LeftOut> leftOut = LeftOut.in(line.tokens());
        for (int wall : WallNumbers.checked(note.walls(), line, problems)) {
            leftOut.ifPresentOrElse(
                    left -> shortened.add(new Shortened(wall, note.of(wall), left, line)),
                    () -> line(line, wall, note.of(wall), here, sections));
        }
    }

    private void change(SheetLine line) {
        RestartSteps steps = RestartSteps.of(line);
        steps.change().ifPresent(found -> changes.put(line.number(), found));
        if (!steps.doubt().isEmpty()) {
            problems.warning(
                    "restart_steps",
                    line.number(),
                    line.firstColumn(),
                    steps.doubt(),
                    "Write it like \"Restart: on wall 3, replace counts 15-16 with stomp R (15), stomp L (16)\".");
        }
    }

    /** A wall whose end is left out: where that begins is known when the whole dance is. */
    private record Shortened(int wall, WallNote note, LeftOut leftOut, SheetLine line) {}

    private void shortened(Shortened told, List<Section> sections) {
        told.leftOut()
                .lastDanced(sections)
                .ifPresentOrElse(
                        last -> add(told.wall(), last, told.note(), told.line()),
                        () -> unclear(told.line(), "Nothing is left of its wall."));
    }

    private void line(SheetLine line, int wall, WallNote note, int here, List<Integer> sections) {
        Optional<StepChange> change = Optional.ofNullable(changes.get(line.number()));
        OptionalInt after =
                change.isPresent() ? afterChange(note, change.get(), sections) : after(note, here, sections);
        if (after.isEmpty() && note.section().isPresent()) {
            unclear(line, "It is not said after which count to restart, or the sheet has no such section.");
        } else if (after.isEmpty()) {
            halves.wall(wall, note.facing(), line);
        } else if (after.getAsInt() < 1) {
            unclear(line, "A restart after count 0 leaves nothing of its wall.");
        } else {
            if (note.counts().isEmpty() && note.section().isEmpty()) {
                implied.add(new HalfRestarts.Mark(here, line));
            }
            add(wall, after.getAsInt(), note, line);
        }
    }

    private void add(int wall, int afterCount, WallNote note, SheetLine line) {
        note.startFacing().ifPresent(facing -> claim(wall, WallClaim.Moment.BEGINNING, facing, line));
        Optional<Facing> there = note.facing();
        boolean either = note.besideWalls();
        there.filter(facing -> either)
                .ifPresent(facing -> claim(wall, WallClaim.Moment.BEGINNING_OR_BREAK, facing, line));
        add(new Restart(wall, afterCount, there.filter(facing -> !either), line.number()));
    }

    private void claim(int wall, WallClaim.Moment moment, Facing facing, SheetLine line) {
        wallStarts.add(new WallClaim(wall, moment, facing, line.number()));
    }

    /** Behind the last changed count; numbered within the section where one is named. */
    private static OptionalInt afterChange(WallNote note, StepChange change, List<Integer> sections) {
        int number = note.section().orElse(0);
        boolean known = number > 0 && number < sections.size();
        boolean behind = !note.places().isEmpty()
                && change.counts().get(0).number() == note.places().get(0) + 1;
        if (!note.places().isEmpty() && number == 0 && !behind) {
            return OptionalInt.of(note.places().get(0));
        }
        int length = known ? sections.get(number) - sections.get(number - 1) : 0;
        boolean within = known && change.last() <= length;
        return OptionalInt.of(within ? sections.get(number - 1) + change.last() : change.last());
    }

    private static OptionalInt after(WallNote note, int here, List<Integer> sections) {
        if (note.section().isPresent()) {
            int section = note.section().getAsInt();
            if (section < 1 || section >= sections.size()) {
                return OptionalInt.empty();
            }
            int first = sections.get(section - 1);
            int last = sections.get(section);
            boolean within = note.counts().isPresent() && note.counts().getAsInt() <= last - first;
            return within
                    ? OptionalInt.of(first + note.counts().getAsInt())
                    : note.counts().isPresent() ? note.counts() : OptionalInt.of(last);
        }
        boolean stated = note.counts().isPresent();
        return stated || here == 0 ? note.counts() : OptionalInt.of(here);
    }

    /** A part of the sequence that is danced in part. */
    void cut(SequenceReader.Cut cut) {
        restarts.add(new Restart(cut.run(), cut.afterCount(), Optional.empty(), cut.line()));
    }

    /** Works out the steps that are danced instead, from the weight that the dancers have there. */
    private void change(int line, StepChange change, List<Section> sections, Weight start) {
        for (int i = 0; i < restarts.size(); i++) {
            Restart restart = restarts.get(i);
            if (restart.line() == line) {
                int before = restart.afterCount() - change.last();
                int first = before + change.counts().get(0).number();
                Weight there = first < 1 ? start : weightBefore(sections, first, start);
                restarts.set(i, restart.with(first < 1 ? List.of() : change.steps(before, there, line)));
            }
        }
    }

    private static Weight weightBefore(List<Section> sections, int count, Weight start) {
        Weight weight = start;
        int before = 0;
        for (Section section : sections) {
            for (Step step : section.steps()) {
                weight = before + step.count().number() < count ? step.weightAfter() : weight;
            }
            before += section.length();
        }
        return weight;
    }

    /** Behind a tag that comes within a wall; told on a line of its own too, it is the same one. */
    void behindTags(List<Restart> told) {
        told.forEach(this::add);
    }

    /** Reads a mark within a count line; without a wall it waits for a line that names one. */
    void mark(SheetLine line, int afterCount) {
        List<Integer> walls = WallNumbers.checked(WallNote.read(line.tokens()).walls(), line, problems);
        if (walls.isEmpty() || afterCount < 1) {
            halves.mark(afterCount, line);
        } else {
            walls.forEach(wall -> add(new Restart(wall, afterCount, Optional.empty(), line.number())));
        }
    }

    /** A restart may be marked at its place and told again below: once is enough. */
    private void add(Restart restart) {
        Optional<Restart> before = restarts.stream()
                .filter(other -> other.wall() == restart.wall())
                .findFirst();
        if (before.isEmpty()) {
            restarts.add(restart);
        } else if (before.get().afterCount() != restart.afterCount()) {
            problems.error(
                    "restart_twice",
                    restart.line(),
                    1,
                    "Wall " + restart.wall() + " restarts after count "
                            + before.get().afterCount() + " already.",
                    "Check the numbers of the walls.");
        } else if (restart.statedFacing().isPresent()) {
            restarts.set(restarts.indexOf(before.get()), restart);
        }
    }

    /** Reports marks that no line gives a wall, and lines without a count that stand below the whole dance. */
    void finish(int danceCounts, List<Section> sections, Weight start) {
        shortened.forEach(told -> shortened(told, sections));
        changes.forEach((line, change) -> change(line, change, sections, start));
        for (HalfRestarts.Mark place : implied) {
            if (place.afterCount() >= danceCounts) {
                restarts.removeIf(restart -> restart.line() == place.line().number());
                unclear(place.line(), "It is not said after which count to restart.");
            }
        }
        halves.matched(restarts).forEach(this::add);
        halves.marksLeft(restarts)
                .forEach(mark -> unclear(mark.line(), "A restart is marked here, but it is not said on which wall."));
        halves.wallsLeft(restarts).forEach(line -> unclear(line, "It is not said after which count to restart."));
    }

    private void unclear(SheetLine line, String sentence) {
        problems.error(
                "restart_unclear",
                line.number(),
                line.firstColumn(),
                sentence,
                "Write it like \"Restart: on wall 3 after count 16\".");
    }

    /** A line above the dance names walls that restart; where they do is told elsewhere. */
    void header(SheetLine line, WallNote note) {
        WallNumbers.checked(note.walls(), line, problems)
                .forEach(wall -> halves.headerWall(wall, note.of(wall).facing(), line));
    }

    /** Where the dancers are said to face at the start of a wall. */
    List<WallClaim> wallStarts() {
        return wallStarts;
    }

    List<Restart> restarts() {
        return restarts;
    }
}
