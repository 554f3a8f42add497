package cuelead.lesson;

import cuelead.dance.Dance;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.english.NumberWords;
import cuelead.lesson.Piece.Joined;
import cuelead.lesson.Piece.OneSection;
import cuelead.lesson.Piece.PartChange;
import cuelead.lesson.Piece.RestartOf;
import cuelead.lesson.Piece.TagOf;
import cuelead.lesson.Piece.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
        } else if (piece instanceof PartChange change) {
            return "change " + change.from() + " to " + change.to();
        }
        return "dance";
    }

    /** What the sheet calls a section that is danced alone; empty for anything else. */
    public String heading(Piece piece) {
        return piece instanceof OneSection one
                ? sections.get(one.section() - 1).heading().strip()
                : "";
    }

    /** One of each kind that this dance has, for a sentence. */
    String examples(String between) {
        List<Piece> examples = new ArrayList<>(List.of(new OneSection(1)));
        dance.parts().stream()
                .filter(part -> part.sections().size() > 1)
                .findFirst()
                .ifPresent(part -> examples.add(wholePart(part.name())));
        examples.add(new Wall(2));
        examples.addAll(Changes.ofParts(dance));
        examples.addAll(Changes.restarts(dance));
        examples.addAll(Changes.tags(dance));
        examples.add(new Piece.WholeDance());
        return String.join(between, examples.stream().map(this::written).toList());
    }

    /** Several, for a sentence. */
    String written(List<Piece> pieces) {
        return String.join(", ", pieces.stream().map(this::written).toList());
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
        } else if (piece instanceof PartChange change) {
            return "part " + change.from().toLowerCase(Locale.ROOT) + " to "
                    + change.to().toLowerCase(Locale.ROOT);
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
    Optional<Integer> numberOf(String name) {
        String digits = SpelledNumber.inDigits(name);
        for (int section = 1; section <= sections.size(); section++) {
            boolean isNumber = !dance.isPhrased() && digits.equals(Integer.toString(section));
            if (isNumber || name.equalsIgnoreCase(sections.get(section - 1).name())) {
                return Optional.of(section);
            }
        }
        return Optional.empty();
    }

    /** What sections can be named, for a sentence: "1 to 4" or "A1, A2, B1". */
    String choices() {
        return dance.isPhrased()
                ? String.join(", ", sections.stream().map(Section::name).toList())
                : "1 to " + sections.size();
    }

    /** The name of a part in the sheet's spelling; empty if there is none. */
    Optional<String> partOf(String name) {
        return dance.parts().stream()
                .map(Part::name)
                .filter(name::equalsIgnoreCase)
                .findFirst();
    }

    /** The names of all parts, for a sentence. */
    String parts() {
        return String.join(", ", dance.parts().stream().map(Part::name).toList());
    }

    /** All sections of a part, joined. */
    Piece wholePart(String name) {
        int before = 0;
        for (Part part : dance.parts()) {
            int last = before + part.sections().size();
            if (part.name().equals(name)) {
                return last == before + 1 ? new OneSection(last) : new Joined(before + 1, last);
            }
            before = last;
        }
        throw new IllegalArgumentException("no part " + name);
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
