package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line that tells of several things at once: "32 counts, 4 walls, 1 restart (wall 3), 1 tag of 2 counts (end of wall
 * 5)". Each clause is read as a line of its own, so that the wall of the one is none of the other's.
 */
final class NoteClauses {
    private static final Pattern BOUNDARY = Pattern.compile(
            "[,;|&+*\u2022\u00b7(]|(?<!\\d)/|/(?!\\d)|[.:!](?=\\s)|\\t|\\s{2,}|\\s[-\u2013\u2014]\\s|\\b(?:and|plus|with)\\b");
    private static final Set<String> TAGS = Set.of("tag", "tags", "bridge", "bridges");
    /** What a header states behind a note as well as before it. */
    private static final Set<String> HEADER_WORDS = Set.of(
            "novice",
            "beginner",
            "improver",
            "intermediate",
            "advanced",
            "level",
            "intro",
            "introduction",
            "bpm",
            "music",
            "song",
            "track",
            "choreographer",
            "choreographed",
            "choreo");

    private NoteClauses() {}

    /** What a clause is about. */
    private enum About {
        FACT,
        RESTART,
        TAG,
        NOTHING
    }

    private record Clause(int from, int to, About about) {}

    /** What the line states of the whole dance; the line itself where it tells of one thing only. */
    static List<SheetLine> facts(SheetLine line) {
        List<Clause> clauses = clauses(line);
        return clauses.isEmpty()
                ? List.of(line)
                : clauses.stream()
                        .filter(clause -> clause.about() == About.FACT)
                        .map(clause -> words(line, clause))
                        .toList();
    }

    /** What it tells of restarts and tags, each as a line of that kind; the line itself where it tells of one thing only. */
    static List<SheetLine> notes(SheetLine line) {
        List<Clause> clauses = clauses(line);
        return clauses.isEmpty()
                ? List.of(line)
                : clauses.stream()
                        .filter(clause -> clause.about() != About.FACT)
                        .map(clause ->
                                words(line, clause).as(clause.about() == About.TAG ? LineKind.TAG : LineKind.RESTART))
                        .toList();
    }

    /** Without what parts it from the clause before. */
    private static SheetLine words(SheetLine line, Clause clause) {
        Matcher parting = PARTING.matcher(line.text()).region(clause.from(), clause.to());
        return line.part(parting.lookingAt() ? parting.end() : clause.from(), clause.to());
    }

    private static final Pattern PARTING = Pattern.compile("[^\\p{L}\\d]*(?:(?:and|plus|with)\\b\\W*)?");

    /** Empty where the line is read as a whole. */
    private static List<Clause> clauses(SheetLine line) {
        if (!isMixed(line)) {
            return List.of();
        }
        List<Clause> clauses = new ArrayList<>();
        Matcher boundary = BOUNDARY.matcher(line.text());
        int from = 0;
        while (boundary.find()) {
            add(clauses, line, from, boundary.start());
            from = boundary.start();
        }
        add(clauses, line, from, line.text().length());
        boolean told = clauses.stream()
                .filter(clause -> isNote(clause.about()))
                .allMatch(clause -> namesWall(line, clause) || isNumberOnly(line, clause));
        boolean somewhere = clauses.stream().anyMatch(clause -> isNote(clause.about()) && namesWall(line, clause));
        return told && somewhere && clauses.size() > 1 ? clauses : List.of();
    }

    /** Whether there is a word of restarts or tags on it at all. */
    private static boolean isMixed(SheetLine line) {
        return !line.isBlank() && (tellsOfTag(line) || tellsOfRestart(line));
    }

    /** A clause of its own, or more of the one before it. */
    private static void add(List<Clause> clauses, SheetLine line, int from, int to) {
        About about = about(line, from, to);
        Clause last = clauses.isEmpty() ? new Clause(0, 0, About.FACT) : clauses.get(clauses.size() - 1);
        boolean fact = about == About.FACT || (about == About.NOTHING && !isNote(last.about()));
        if (isNote(about) || (fact && isNote(last.about())) || clauses.isEmpty()) {
            clauses.add(new Clause(from, to, fact ? About.FACT : about));
        } else {
            clauses.set(clauses.size() - 1, new Clause(last.from(), to, last.about()));
        }
    }

    private static About about(SheetLine line, int from, int to) {
        SheetLine part = line.part(from, to);
        boolean restart = tellsOfRestart(part);
        if (restart || tellsOfTag(part)) {
            return restart ? About.RESTART : About.TAG;
        }
        return part.tokens().stream().map(Token::text).anyMatch(HEADER_WORDS::contains) ? About.FACT : About.NOTHING;
    }

    static boolean tellsOfRestart(SheetLine line) {
        return line.tokens().stream().map(Token::text).anyMatch(NoteClauses::isRestart);
    }

    static boolean tellsOfTag(SheetLine line) {
        return line.tokens().stream().map(Token::text).anyMatch(TAGS::contains);
    }

    private static boolean isRestart(String word) {
        return word.startsWith("restart");
    }

    private static boolean isNote(About about) {
        return about == About.RESTART || about == About.TAG;
    }

    private static boolean namesWall(SheetLine line, Clause clause) {
        SheetLine words = words(line, clause);
        return WallNote.namesWall(words.tokens())
                || ORDINAL.matcher(words.text()).find();
    }

    private static final Pattern ORDINAL = Pattern.compile("\\d(?:st|nd|rd|th) walls?\\b", Pattern.CASE_INSENSITIVE);

    /** "1 tag", "Restarts:" */
    private static boolean isNumberOnly(SheetLine line, Clause clause) {
        return line.part(clause.from(), clause.to()).tokens().stream()
                        .filter(token -> token.is(Token.Kind.WORD))
                        .count()
                <= SHORTEST_NOTE;
    }

    private static final int SHORTEST_NOTE = 2;
}
