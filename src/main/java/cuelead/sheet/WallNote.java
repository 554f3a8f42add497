package cuelead.sheet;

import cuelead.dance.Facing;
import cuelead.dance.WallClaim;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a line about a tag or a restart says: "on walls 2 and 5 after count 16, facing 6:00", in any order. What is told
 * as often as there are walls belongs to them one by one; what is told once belongs to all.
 *
 * @param walls       wall numbers from 1
 * @param groups      how many of them stand together at each place: "on wall 2 and on walls 5 and 6" has 1 and 2
 * @param toldCounts  the numbers that stand with "count"
 * @param places      those of them that tell where in the wall, and no length
 * @param sections    the numbers that stand with "section"
 * @param facings     the ways that it says they face there
 * @param startFacing the way that it says the wall begins
 * @param besideWalls whether the facings stand in brackets behind the numbers of their walls
 * @param number      a number directly behind the first word ("Tag 2")
 */
record WallNote(
        List<Integer> walls,
        List<Integer> groups,
        List<Integer> toldCounts,
        List<Integer> places,
        List<Integer> sections,
        List<Facing> facings,
        Optional<Facing> startFacing,
        boolean besideWalls,
        OptionalInt number) {
    WallNote {
        walls = List.copyOf(walls);
        groups = List.copyOf(groups);
        toldCounts = List.copyOf(toldCounts);
        places = List.copyOf(places);
        sections = List.copyOf(sections);
        facings = List.copyOf(facings);
    }

    static WallNote read(List<Token> tokens) {
        return new WallNoteReader(tokens).read();
    }

    /** "On wall 3", "on the third wall": not "4 walls". */
    static boolean namesWall(List<Token> tokens) {
        return WallNoteReader.mayNameWall(tokens) && new WallNoteReader(tokens).namesWall();
    }

    /** The first wall that it names; empty where it names none, or one that no song has. */
    OptionalInt firstWall() {
        return walls.stream()
                .limit(1)
                .filter(WallNumbers::isReal)
                .mapToInt(wall -> wall)
                .findFirst();
    }

    /** What it says of one of its walls alone. */
    WallNote of(int wall) {
        int index = walls.indexOf(wall);
        return new WallNote(
                List.of(wall),
                List.of(1),
                own(toldCounts, index),
                own(places, index),
                own(sections, index),
                own(facings, index),
                startFacing,
                besideWalls,
                number);
    }

    private <T> List<T> own(List<T> told, int index) {
        if (walls.size() < 2 || told.size() < 2) {
            return told;
        }
        if (told.size() == walls.size()) {
            return List.of(told.get(index));
        }
        return told.size() == groups.size() ? List.of(told.get(group(index))) : told;
    }

    private int group(int index) {
        int group = 0;
        int end = groups.get(0);
        while (index >= end) {
            group++;
            end += groups.get(group);
        }
        return group;
    }

    OptionalInt counts() {
        return toldCounts.isEmpty() ? OptionalInt.empty() : OptionalInt.of(toldCounts.get(0));
    }

    OptionalInt section() {
        return sections.isEmpty() ? OptionalInt.empty() : OptionalInt.of(sections.get(sections.size() - 1));
    }

    /** Of a line about one wall, the last that is told; of several, what is told once for all of them. */
    Optional<Facing> facing() {
        boolean unclear = walls.size() > 1 && facings.size() > 1;
        return facings.isEmpty() || unclear ? Optional.empty() : Optional.of(facings.get(facings.size() - 1));
    }

    /** What it claims of the ends of its walls, where each has a facing of its own. */
    List<WallClaim> wallEnds(int line) {
        List<WallClaim> claims = new ArrayList<>();
        if (walls.size() > 1 && facings.size() == walls.size()) {
            walls.forEach(wall -> claims.add(
                    new WallClaim(wall, WallClaim.Moment.END, of(wall).facings.get(0), line)));
        }
        return claims;
    }

    /** The length that the head of a tag states; 0 where it states none. */
    int length() {
        List<Integer> lengths = new ArrayList<>(toldCounts);
        places.forEach(lengths::remove);
        return lengths.isEmpty() ? 0 : lengths.get(0);
    }

    /** Where within its walls a tag comes; the length that its head states is none of its place. */
    OptionalInt placeOfTag(List<Integer> starts) {
        return new WallNote(walls, groups, places, places, sections, facings, startFacing, besideWalls, number)
                .place(starts);
    }

    /** The count of the dance that section and count together tell; {@code starts} = counts before section 1, 2 ... */
    OptionalInt place(List<Integer> starts) {
        if (section().isEmpty()) {
            return counts();
        }
        int which = section().getAsInt();
        if (which < 1 || which >= starts.size()) {
            return OptionalInt.empty();
        }
        int length = starts.get(which) - starts.get(which - 1);
        int within = counts().orElse(length);
        return OptionalInt.of(within <= length ? starts.get(which - 1) + within : within);
    }

    /** Whether it tells a wall and a place on it. */
    boolean isPlace() {
        return !walls.isEmpty() && !(toldCounts.isEmpty() && sections.isEmpty());
    }
}
