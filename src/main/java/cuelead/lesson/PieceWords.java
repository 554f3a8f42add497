package cuelead.lesson;

import cuelead.dance.Dance;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.english.NumberWords;
import cuelead.lesson.Piece.Joined;
import cuelead.lesson.Piece.OneSection;
import cuelead.lesson.Piece.RestartOf;
import cuelead.lesson.Piece.TagOf;
import cuelead.lesson.Piece.Wall;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the pieces of one dance are called, in writing and aloud. */
public final class PieceWords {
    private static final Pattern PART_AND_NUMBER = Pattern.compile("(\\p{L}+)(\\d+)");

    private final Dance dance;
    private final List<Section> sections;

    public PieceWords(Dance dance) {
        this.dance = dance;
        sections =
                dance.parts().stream().map(Part::sections).flatMap(List::stream).toList();
    }

    int sections() {
        return sections.size();
    }

    /** As a lesson's text has it: "section 2", "sections A1 to A3", "tag of wall 4". */
    public String written(Piece piece) {
        if (piece instanceof OneSection one) {
            return "section " + name(one.section());
        } else if (piece instanceof Joined joined) {
            return "sections " + name(joined.first()) + " to " + name(joined.last());
        } else if (piece instanceof Wall wall) {
            return "wall " + wall.wall();
        } else if (piece instanceof TagOf tag) {
            return "tag of wall " + tag.wall();
        } else if (piece instanceof RestartOf restart) {
            return "restart of wall " + restart.wall();
        }
        return "dance";
    }

    /** As it is announced: "section two", "sections one to three", "tag". */
    public String spoken(Piece piece) {
        if (piece instanceof OneSection one) {
            return "section " + aloud(one.section());
        } else if (piece instanceof Joined joined) {
            return "sections " + aloud(joined.first()) + " to " + aloud(joined.last());
        } else if (piece instanceof Wall wall) {
            return "wall " + NumberWords.cardinal(wall.wall());
        } else if (piece instanceof TagOf) {
            return "the tag";
        } else if (piece instanceof RestartOf) {
            return "the restart";
        }
        return "the whole dance";
    }

    private String name(int section) {
        return dance.isPhrased() ? sections.get(section - 1).name() : Integer.toString(section);
    }

    private String aloud(int section) {
        Matcher parts = PART_AND_NUMBER.matcher(name(section));
        return parts.matches()
                ? parts.group(1).toLowerCase(Locale.ROOT) + " " + NumberWords.cardinal(parts.group(2))
                : NumberWords.cardinal(section);
    }

    /** The number of a section that is named in writing, by number or as the sheet names it; empty if there is none. */
    OptionalInt numberOf(String name) {
        for (int section = 1; section <= sections.size(); section++) {
            boolean isNumber = !dance.isPhrased() && name.equals(Integer.toString(section));
            if (isNumber || name.equalsIgnoreCase(sections.get(section - 1).name())) {
                return OptionalInt.of(section);
            }
        }
        return OptionalInt.empty();
    }

    /** What sections can be named, for a sentence: "1 to 4" or "A1, A2, B1". */
    String choices() {
        return dance.isPhrased()
                ? String.join(", ", sections.stream().map(Section::name).toList())
                : "1 to " + sections.size();
    }

    /** Whether both stand in one part. */
    boolean areTogether(int first, int last) {
        int before = 0;
        for (Part part : dance.parts()) {
            int end = before + part.sections().size();
            if (first > before && first <= end) {
                return last <= end;
            }
            before = end;
        }
        return false;
    }
}
