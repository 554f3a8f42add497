package cuelead.lesson;

import cuelead.dance.Dance;
import cuelead.lesson.LineScanner.Found;
import cuelead.lesson.Piece.PartChange;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a pass goes through, in words. */
final class PieceRules {
    private static final String NAME = "(?!(?:the|music|song|clicks?)\\b)[\\p{L}\\p{N}]+";
    private static final String NUMBER = "(?<wall>" + SpelledNumber.PATTERN + ")";

    private final Dance dance;
    private final PieceWords words;

    private PieceRules(Dance dance) {
        this.dance = dance;
        words = new PieceWords(dance);
    }

    static List<LineRule> of(Dance dance) {
        PieceRules all = new PieceRules(dance);
        String first = "sections? (?<first>" + NAME + ")";
        String last =
                "(?:\\s*(?<joint>\\b(?:to|through|and)\\b|[-&\u2013\u2014])\\s*(?:section )?(?<last>" + NAME + "))?";
        String change =
                "(?:the )?change (?:from )?(?:part )?(?<from>" + NAME + ") (?:to|into) (?:part )?(?<to>" + NAME + ")";
        return List.of(
                rule("(?:the )?(?:whole |entire )?dance|all of it", found -> new Piece.WholeDance()),
                rule(first + last, all::sections),
                rule("(?:the )?(?:whole )?part (?<part>" + NAME + ")", all::part),
                rule(change, all::change),
                rule("(?:the )?(?<what>tag|restart)(?: (?:of|in|on|at|after) wall " + NUMBER + ")?", all::tagOrRestart),
                rule("wall " + NUMBER, all::wall));
    }

    /** What may be written. */
    static String pieces(Dance dance) {
        return "Write a piece such as " + new PieceWords(dance).examples(", ") + ".";
    }

    /** How a piece is made of what was found. */
    private interface Meaning {
        Piece of(Found found) throws LessonMistake;
    }

    private static LineRule rule(String words, Meaning meaning) {
        return new LineRule(words, (found, draft) -> draft.piece.say(meaning.of(found), found));
    }

    private Piece sections(Found found) throws LessonMistake {
        int first = section(found, "first");
        if (found.group("last").isEmpty()) {
            return new Piece.OneSection(first);
        }
        int last = section(found, "last");
        boolean areTwo = found.group("joint").orElseThrow().matches("(?i)and|&");
        boolean follow = last > first && words.areTogether(first, last) && (!areTwo || last == first + 1);
        if (last != first && !follow) {
            throw new LessonMistake(
                    found.column(),
                    "These sections do not follow each other.",
                    "Name the first before the last of a part, such as sections 1 to 3, or write a line for each.");
        }
        return first == last ? new Piece.OneSection(first) : new Piece.Joined(first, last);
    }

    private int section(Found found, String group) throws LessonMistake {
        String name = found.group(group).orElseThrow();
        return words.numberOf(name)
                .orElseThrow(() -> new LessonMistake(
                        found.column(),
                        "This dance has no section " + name.toUpperCase(Locale.ROOT) + ".",
                        "Its sections are " + words.choices() + "."));
    }

    private Piece part(Found found) throws LessonMistake {
        return words.wholePart(partName(found, "part"));
    }

    private Piece change(Found found) throws LessonMistake {
        PartChange change = new PartChange(partName(found, "from"), partName(found, "to"));
        if (!Changes.ofParts(dance).contains(change)) {
            throw new LessonMistake(
                    found.column(),
                    "Part " + change.to() + " never follows part " + change.from() + ".",
                    "The sheet's sequence is " + String.join(", ", dance.sequence()) + ".");
        }
        return change;
    }

    private String partName(Found found, String group) throws LessonMistake {
        String name = found.group(group).orElseThrow();
        if (!dance.isPhrased()) {
            throw new LessonMistake(found.column(), "This dance has no parts.", pieces(dance));
        }
        return words.partOf(name)
                .orElseThrow(() -> new LessonMistake(
                        found.column(),
                        "This dance has no part " + name.toUpperCase(Locale.ROOT) + ".",
                        "Its parts are " + words.parts() + "."));
    }

    private Piece tagOrRestart(Found found) throws LessonMistake {
        boolean isTag = found.group("what").orElseThrow().equalsIgnoreCase("tag");
        List<Piece> there = isTag ? Changes.tags(dance) : Changes.restarts(dance);
        Optional<String> wall = found.group("wall");
        if (wall.isEmpty() && there.size() == 1) {
            return there.get(0);
        }
        Piece wanted = isTag ? new Piece.TagOf(number(wall)) : new Piece.RestartOf(number(wall));
        if (wall.isPresent() && there.contains(wanted)) {
            return wanted;
        }
        String what = isTag ? "tag" : "restart";
        String sentence = wall.isEmpty() && there.size() > 1
                ? "The sheet has several " + what + "s."
                : "The sheet has no " + what
                        + wall.map(number -> " on wall " + number).orElse("") + ".";
        throw new LessonMistake(
                found.column(), sentence, there.isEmpty() ? pieces(dance) : "Name one: " + words.written(there) + ".");
    }

    private static int number(Optional<String> text) {
        return text.map(SpelledNumber::value).map(BigDecimal::intValue).orElse(0);
    }

    private Piece wall(Found found) throws LessonMistake {
        int wall = number(found.group("wall"));
        if (wall < 1) {
            throw new LessonMistake(found.column(), "\"" + found.text() + "\" is no piece of a dance.", pieces(dance));
        }
        return new Piece.Wall(wall);
    }
}
