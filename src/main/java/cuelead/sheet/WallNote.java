package cuelead.sheet;

import cuelead.dance.Facing;
import cuelead.dance.WallClaim;
import cuelead.sheet.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What a line about a tag or a restart says: "on walls 2 and 5 after count 16, facing 6:00", in any order.
 *
 * @param walls   wall numbers from 1
 * @param counts  the number that stands with "count"
 * @param section the number that stands with "section"
 * @param facing  the clock time or "front", "back"
 * @param wallFacings one a wall, where each has its own; else empty
 * @param number  a number directly behind the first word ("Tag 2")
 */
record WallNote(
        List<Integer> walls,
        OptionalInt counts,
        OptionalInt section,
        Optional<Facing> facing,
        OptionalInt number,
        List<Facing> wallFacings) {
    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");
    private static final Set<String> WALL = Set.of("wall", "walls");
    private static final Set<String> COUNT = Set.of("count", "counts", "beat", "beats", "ct", "cts");

    /** What it claims of the ends of its walls. */
    List<WallClaim> wallEnds(int line) {
        List<WallClaim> claims = new ArrayList<>();
        for (int i = 0; i < wallFacings.size(); i++) {
            claims.add(new WallClaim(walls.get(i), wallFacings.get(i), line));
        }
        return claims;
    }

    /** The length that a tag's head states is none of its place. */
    WallNote withoutCounts() {
        return new WallNote(walls, OptionalInt.empty(), section, facing, number, wallFacings);
    }

    /** The count of the dance that section and count together tell; {@code starts} = counts before section 1, 2 ... */
    OptionalInt place(List<Integer> starts) {
        if (section.isEmpty()) {
            return counts;
        }
        int number = section.getAsInt();
        if (number < 1 || number >= starts.size()) {
            return OptionalInt.empty();
        }
        int length = starts.get(number) - starts.get(number - 1);
        int within = counts.orElse(length);
        return OptionalInt.of(within <= length ? starts.get(number - 1) + within : within);
    }

    /** Whether it tells a wall and a place on it. */
    boolean isPlace() {
        return !walls.isEmpty() && (counts.isPresent() || section.isPresent());
    }

    /** "On wall 3": not "4 walls". */
    static boolean namesWall(List<Token> tokens) {
        for (int i = 0; i + 1 < tokens.size(); i++) {
            boolean wall =
                    tokens.get(i).is(Kind.WORD) && WALL.contains(tokens.get(i).text());
            if (wall && tokens.get(i + 1).is(Kind.NUMBER)) {
                return true;
            }
        }
        return false;
    }

    static WallNote read(List<Token> tokens) {
        return new Reader(tokens).read();
    }

    private static final class Reader {
        private final List<Token> tokens;
        private final List<Integer> walls = new ArrayList<>();
        private OptionalInt counts = OptionalInt.empty();
        private OptionalInt section = OptionalInt.empty();
        private Optional<Facing> facing = Optional.empty();

        Reader(List<Token> tokens) {
            this.tokens = tokens.stream().filter(token -> !token.is(Kind.MARK)).toList();
        }

        /** The clock that stands with each wall: "wall 2 (6:00) and wall 6 (3:00)"; fewer where not each has one. */
        WallNote read() {
            for (int i = 0; i < tokens.size(); i++) {
                Token token = tokens.get(i);
                if (isWord(i, WALL)) {
                    walls(i);
                } else if (isWord(i, COUNT) && counts.isEmpty()) {
                    counts = beside(i);
                } else if (isWord(i, Set.of("section", "s", "sec", "set"))) {
                    section = number(i + 1).isPresent() ? number(i + 1) : section;
                } else if (isWord(i, Set.of("after"))
                        && number(i + 1).isPresent()
                        && !isWord(i + 2, WALL)
                        && counts.isEmpty()) {
                    counts = number(i + 1);
                } else if (token.is(Kind.WORD) && token.text().matches("s[1-9]\\d?")) {
                    section = OptionalInt.of(Integer.parseInt(token.text().substring(1)));
                } else if (token.is(Kind.CLOCK)) {
                    facing = Optional.of(Remark.facing(token.text()));
                } else if (isWord(i, Set.of("facing", "face")) && facing.isEmpty()) {
                    facing = named(i + 1);
                }
            }
            OptionalInt own = isWord(2, COUNT) ? OptionalInt.empty() : number(1);
            return new WallNote(List.copyOf(walls), counts, section, facing, own, wallFacings());
        }

        /** "wall 3", "walls 2, 4 and 5", "the 3rd wall", "the second and fourth walls" */
        private void walls(int word) {
            int at = word + 1;
            boolean more = true;
            while (more) {
                int next = isJoint(at) ? at + 1 : at;
                OptionalInt number = number(next);
                more = number.isPresent() && !isWord(next + 1, COUNT) && (next == word + 1 || next > at);
                if (more) {
                    walls.add(number.getAsInt());
                    at = next + 1;
                }
            }
            for (int before = word - 1; walls.isEmpty() && number(before).isPresent(); before--) {
                walls.add(number(before).getAsInt());
            }
        }

        private List<Facing> wallFacings() {
            List<Facing> facings = new ArrayList<>();
            int clocks = 0;
            boolean open = false;
            for (int i = 0; i < tokens.size(); i++) {
                open |= isWord(i, WALL);
                boolean clock = tokens.get(i).is(Kind.CLOCK);
                clocks += clock ? 1 : 0;
                if (clock && open) {
                    facings.add(Remark.facing(tokens.get(i).text()));
                    open = false;
                }
            }
            boolean each = walls.size() > 1 && facings.size() == walls.size() && clocks == facings.size();
            return each ? List.copyOf(facings) : List.of();
        }

        private boolean isJoint(int at) {
            return at < tokens.size()
                    && (tokens.get(at).is(Kind.SEPARATOR)
                            || tokens.get(at).is(Kind.AMPERSAND)
                            || tokens.get(at).isWord("and"));
        }

        private OptionalInt beside(int word) {
            OptionalInt behind = number(word + 1);
            return behind.isPresent() ? behind : number(word - 1);
        }

        private Optional<Facing> named(int from) {
            for (int at = from; at < Math.min(from + 3, tokens.size()); at++) {
                if (isWord(at, Set.of("front", "home"))) {
                    return Optional.of(Facing.FRONT);
                }
                if (isWord(at, Set.of("back"))) {
                    return Optional.of(new Facing(180));
                }
            }
            return Optional.empty();
        }

        private OptionalInt number(int at) {
            if (at < 0 || at >= tokens.size()) {
                return OptionalInt.empty();
            }
            Token token = tokens.get(at);
            if (token.is(Kind.NUMBER) && token.text().length() <= 3) {
                return OptionalInt.of(Integer.parseInt(token.text()));
            }
            int ordinal = token.is(Kind.WORD) ? ORDINALS.indexOf(token.text()) : -1;
            return ordinal < 0 ? OptionalInt.empty() : OptionalInt.of(ordinal + 1);
        }

        private boolean isWord(int at, Set<String> words) {
            return at >= 0
                    && at < tokens.size()
                    && tokens.get(at).is(Kind.WORD)
                    && words.contains(tokens.get(at).text());
        }
    }
}
