package cuelead.sheet;

import cuelead.dance.Restart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Collects the restarts of a sheet, which may be told in a line of their own, marked at their place, or both. */
final class RestartReader {
    private final Problems problems;
    private final List<Restart> restarts = new ArrayList<>();
    /** Marked without its wall: "(restart here)". */
    private final List<Mark> marks = new ArrayList<>();
    /** Told without its count: "Restart on wall 3" between two sections. */
    private final List<Mark> implied = new ArrayList<>();

    RestartReader(Problems problems) {
        this.problems = problems;
    }

    /** A place in the dance, and the line that marks it. */
    private record Mark(int afterCount, SheetLine line) {}

    /**
     * Reads a line about a restart.
     *
     * @param here     counts of the dance above the line; 0 where the line stands below the whole dance
     * @param sections counts before section 1, 2, 3 ... and at the end
     */
    void line(SheetLine line, int here, List<Integer> sections) {
        WallNote note = WallNote.read(line.tokens());
        OptionalInt after = after(note, here, sections);
        if (note.walls().isEmpty()) {
            unclear(line, "It is not said on which wall to restart.");
        } else if (after.isEmpty()) {
            unclear(line, "It is not said after which count to restart, or the sheet has no such section.");
        } else if (after.getAsInt() < 1) {
            unclear(line, "A restart after count 0 leaves nothing of its wall.");
        } else {
            if (note.counts().isEmpty() && note.section().isEmpty()) {
                implied.add(new Mark(here, line));
            }
            WallNumbers.checked(note.walls(), line, problems)
                    .forEach(wall -> add(new Restart(wall, after.getAsInt(), note.facing(), line.number())));
        }
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

    /** Reads a mark within a count line; without a wall it waits for a line that names one. */
    void mark(SheetLine line, int afterCount) {
        List<Integer> walls = WallNumbers.checked(WallNote.read(line.tokens()).walls(), line, problems);
        if (walls.isEmpty() || afterCount < 1) {
            marks.add(new Mark(afterCount, line));
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
    void finish(int danceCounts) {
        for (Mark place : implied) {
            if (place.afterCount() >= danceCounts) {
                restarts.removeIf(restart -> restart.line() == place.line().number());
                unclear(place.line(), "It is not said after which count to restart.");
            }
        }
        for (Mark mark : marks) {
            boolean told = restarts.stream().anyMatch(restart -> restart.afterCount() == mark.afterCount());
            if (!told) {
                unclear(mark.line(), "A restart is marked here, but it is not said on which wall.");
            }
        }
    }

    private void unclear(SheetLine line, String sentence) {
        problems.error(
                "restart_unclear",
                line.number(),
                line.firstColumn(),
                sentence,
                "Write it like \"Restart: on wall 3 after count 16\".");
    }

    List<Restart> restarts() {
        return restarts;
    }
}
