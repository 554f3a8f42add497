package cuelead.lesson;

import cuelead.dance.Dance;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Parses what a pass goes through. */
final class PieceParser {
    private static final Pattern SECTION = Pattern.compile("section (\\w+)");
    private static final Pattern SECTIONS = Pattern.compile("sections (\\w+) ?(?:to|-|\u2013) ?(\\w+)");
    private static final Pattern OF_WALL = Pattern.compile("(?:(tag|restart) (?:of|in|after) )?wall (\\d{1,3})");
    private static final String PIECES =
            "A pass begins with section 1, sections 1 to 3, wall 2, tag of wall 2, restart of wall 3 or dance.";

    private final Dance dance;
    private final PieceWords words;

    PieceParser(Dance dance) {
        this.dance = dance;
        words = new PieceWords(dance);
    }

    Piece parse(String text, int column) throws LessonMistake {
        Matcher section = SECTION.matcher(text);
        Matcher sections = SECTIONS.matcher(text);
        Matcher ofWall = OF_WALL.matcher(text);
        if (section.matches()) {
            return new Piece.OneSection(number(section.group(1), column));
        } else if (sections.matches()) {
            return joined(number(sections.group(1), column), number(sections.group(2), column), column);
        } else if (ofWall.matches() && Integer.parseInt(ofWall.group(2)) > 0) {
            return ofWall(ofWall.group(1), Integer.parseInt(ofWall.group(2)), column);
        } else if (text.equals("dance")) {
            return new Piece.WholeDance();
        }
        throw new LessonMistake(column, "\"" + text + "\" is no piece of a dance.", PIECES);
    }

    private int number(String name, int column) throws LessonMistake {
        OptionalInt number = words.numberOf(name);
        if (number.isEmpty()) {
            throw new LessonMistake(
                    column,
                    "This dance has no section " + name.toUpperCase(Locale.ROOT) + ".",
                    "Its sections are " + words.choices() + ".");
        }
        return number.getAsInt();
    }

    private Piece joined(int first, int last, int column) throws LessonMistake {
        if (first == last) {
            return new Piece.OneSection(first);
        }
        if (first > last || !words.areTogether(first, last)) {
            throw new LessonMistake(
                    column, "These sections do not follow each other.", "Name the first before the last of a part.");
        }
        return new Piece.Joined(first, last);
    }

    private Piece ofWall(String change, int wall, int column) throws LessonMistake {
        if (change == null) {
            return new Piece.Wall(wall);
        }
        boolean isTag = change.equals("tag");
        if (!(isTag ? hasTag(wall) : hasRestart(wall))) {
            throw new LessonMistake(
                    column, "The sheet has no " + change + " on wall " + wall + ".", "Name a wall that has one.");
        }
        return isTag ? new Piece.TagOf(wall) : new Piece.RestartOf(wall);
    }

    /** Of a phrased dance it is known only when it is laid out. */
    private boolean hasTag(int wall) {
        return dance.isPhrased()
                ? !dance.tags().isEmpty()
                : dance.tags().stream().anyMatch(tag -> tag.afterWalls().contains(wall));
    }

    private boolean hasRestart(int wall) {
        return dance.restarts().stream().anyMatch(restart -> restart.wall() == wall);
    }
}
