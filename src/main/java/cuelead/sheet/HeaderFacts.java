package cuelead.sheet;

import java.util.Set;

/** Whether a line states facts about the dance, as those of a header do. */
final class HeaderFacts {
    /** Words that begin a line of credits. */
    static final Set<String> CREDITS = Set.of(
            "music",
            "choreographer",
            "choreographers",
            "choreographed",
            "choreo",
            "date",
            "country",
            "website",
            "email",
            "contact",
            "phone",
            "video",
            "note",
            "notes");

    private HeaderFacts() {}

    /** Whether a line states something about the dance, rather than to name what is danced. */
    static boolean isFact(SheetLine line) {
        return line.tokens().stream()
                .anyMatch(token ->
                        token.is(Token.Kind.WORD) && (FACTS.contains(token.text()) || CREDITS.contains(token.text())));
    }

    /** Whether a line states what only a header states; "4 counts" and "start with" stand in prose of steps as well. */
    static boolean isHeader(SheetLine line) {
        return line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD) && !IN_PROSE.contains(token.text()))
                .anyMatch(token -> FACTS.contains(token.text()) || CREDITS.contains(token.text()));
    }

    private static final Set<String> IN_PROSE =
            Set.of("count", "counts", "start", "dance", "clockwise", "anticlockwise");

    private static final Set<String> FACTS = Set.of(
            "count",
            "counts",
            "wall",
            "walls",
            "level",
            "intro",
            "bpm",
            "weight",
            "vocals",
            "lyrics",
            "restart",
            "restarts",
            "tag",
            "tags",
            "sequence",
            "beginner",
            "improver",
            "intermediate",
            "advanced",
            "waltz",
            "dance",
            "rhythm",
            "tempo",
            "start",
            "song",
            "artist",
            "track",
            "phrased",
            "clockwise",
            "anticlockwise",
            "abbreviations",
            "ending");
}
