package cuelead.dance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The facing at the start of each wall of an ordinary dance, with its restarts and tags. */
public final class WallWalk {
    private final Dance dance;
    private final KnownTurns turns;
    private final Turn ofWall;
    private final Map<Integer, Facing> starts = new HashMap<>();

    public WallWalk(Dance dance) {
        this.dance = dance;
        turns = new KnownTurns(dance);
        ofWall = net(part());
        starts.put(1, Facing.FRONT);
    }

    /** Facing before count 1 of this wall, from 1. */
    public Facing startOf(int wall) {
        if (wall < 1) {
            throw new IllegalArgumentException("walls are numbered from 1: " + wall);
        }
        for (int next = 2; next <= wall; next++) {
            if (!starts.containsKey(next)) {
                starts.put(next, endOf(next - 1, true));
            }
        }
        return starts.get(wall);
    }

    /** Facing at the end of a wall, before the tags that follow it. */
    public Facing beforeTags(int wall) {
        return endOf(wall, false);
    }

    /** Facing where a tag begins that comes on this wall. */
    public Facing before(Tag tag, int wall) {
        return tag.afterCount().isPresent() ? after(wall, tag.afterCount().getAsInt()) : beforeTags(wall);
    }

    /** Facing where a wall is broken off. */
    Facing at(Restart restart) {
        return after(restart.wall(), restart.unchangedCounts()).after(restart.changedTurn());
    }

    /** Facing after that many counts of a wall. */
    public Facing after(int wall, int counts) {
        return startOf(wall).after(turnTo(counts));
    }

    private Facing endOf(int wall, boolean withTags) {
        Optional<Restart> restart =
                dance.restarts().stream().filter(found -> found.wall() == wall).findFirst();
        Facing end = restart.map(this::at).orElseGet(() -> startOf(wall).after(ofWall));
        if (withTags) {
            for (Tag tag : dance.tags()) {
                boolean comes = tag.afterWalls().contains(wall)
                        && restart.map(found -> endsWith(tag, found)).orElse(true);
                end = comes ? end.after(net(tag.part())) : end;
            }
        }
        return end;
    }

    /** Whether the tag comes where its wall is broken off, and the dance begins again behind it. */
    public static boolean endsWith(Tag tag, Restart restart) {
        return tag.afterWalls().contains(restart.wall()) && tag.afterCount().orElse(0) == restart.afterCount();
    }

    /** Whether none leaves the facing at the end of a wall open. */
    boolean isKnown(int wall) {
        return isKnown(wall, part().counts());
    }

    /** Whether no line that could not be read leaves the facing after that many counts of a wall open. */
    boolean isKnown(int wall, int counts) {
        boolean here = turns.through(part(), Counts.of(counts)).isPresent();
        boolean before = turns.net(part()).isPresent()
                && dance.tags().stream().allMatch(tag -> turns.net(tag.part()).isPresent())
                && dance.restarts().stream()
                        .allMatch(restart -> turns.through(part(), Counts.of(restart.afterCount()))
                                .isPresent());
        return here && (wall == 1 || before);
    }

    /** Facing before each part and tag of the sequence of a phrased dance, and at its end. */
    public List<Facing> alongSequence() {
        List<Facing> facings = new ArrayList<>(List.of(Facing.FRONT));
        int wall = 0;
        for (String name : dance.sequence()) {
            Facing here = facings.get(facings.size() - 1);
            Optional<Part> danced = dance.parts().stream()
                    .filter(part -> part.name().equals(name))
                    .findFirst();
            wall += danced.isPresent() ? 1 : 0;
            int number = wall;
            Optional<Restart> cut = danced.flatMap(part -> dance.restarts().stream()
                    .filter(found -> found.wall() == number)
                    .findFirst());
            Turn turn = cut.map(restart -> turnThrough(danced.get(), Counts.of(restart.unchangedCounts()))
                            .plus(restart.changedTurn()))
                    .orElseGet(() -> danced.or(() -> tag(name)).map(this::net).orElse(Turn.NONE));
            facings.add(here.after(turn));
        }
        return facings;
    }

    private Optional<Part> tag(String name) {
        return dance.tags().stream()
                .map(Tag::part)
                .filter(part -> part.name().equals(name))
                .findFirst();
    }

    private Turn net(Part part) {
        return turns.net(part).orElse(part.netTurn());
    }

    /** The turn of the first counts of a wall. */
    Turn turnTo(int counts) {
        Counts until = Counts.of(counts);
        return turns.through(part(), until).orElse(turnThrough(part(), until));
    }

    private Part part() {
        return dance.parts().get(0);
    }

    /** The sum of the turns of the steps that begin before this place of the part. */
    public static Turn turnThrough(Part part, Counts until) {
        Counts start = Counts.ZERO;
        Turn sum = Turn.NONE;
        for (Section section : part.sections()) {
            for (Step step : section.steps()) {
                boolean danced = start.plus(step.count().offset()).compareTo(until) < 0;
                sum = danced ? sum.plus(step.turn()) : sum;
            }
            start = start.plus(Counts.of(section.length()));
        }
        return sum;
    }

    /** Where the weight is after that many counts of the part. */
    static Weight weightAfter(Part part, int counts, Weight before) {
        Counts start = Counts.ZERO;
        Weight weight = before;
        for (Section section : part.sections()) {
            for (Step step : section.steps()) {
                if (start.plus(step.count().offset()).compareTo(Counts.of(counts)) < 0) {
                    weight = step.weightAfter();
                }
            }
            start = start.plus(Counts.of(section.length()));
        }
        return weight;
    }

    public static List<Step> steps(Part part) {
        return part.sections().stream()
                .flatMap(section -> section.steps().stream())
                .toList();
    }
}
