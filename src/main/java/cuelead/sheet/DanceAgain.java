package cuelead.sheet;

import java.util.List;
import java.util.Set;

/** "The dance restarts from the beginning", "Restart the dance", "Now restart on the new wall": the end of every wall. */
final class DanceAgain {
    private static final Set<String> FROM = Set.of(
            "beginning",
            "top",
            "start",
            "begin",
            "dance",
            "new",
            "next",
            "enjoy",
            "again",
            "over",
            "fun",
            "smile",
            "scratch");
    private static final Set<String> PLACES = Set.of(
            "count",
            "counts",
            "beat",
            "beats",
            "ct",
            "cts",
            "section",
            "sections",
            "after",
            "here",
            "during",
            "tag",
            "tags",
            "when",
            "no",
            "times",
            "twice",
            "once",
            "there",
            "point",
            "facing",
            "only",
            "first",
            "note",
            "step",
            "steps",
            "replace",
            "change",
            "restarts",
            "marked",
            "sequence",
            "bridge",
            "ending");
    private static final int LONGEST = 10;

    private DanceAgain() {}

    /** Whether a line tells so, and no wall or place at which a wall is broken off. */
    static boolean isTold(SheetLine line) {
        List<Token> words = line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD))
                .toList();
        boolean dance = words.stream().limit(2).anyMatch(token -> token.isWord("dance"));
        boolean restart = words.stream()
                .anyMatch(token ->
                        token.isWord("restart") || token.isWord("restarting") || (dance && token.isWord("restarts")));
        boolean from = words.stream().anyMatch(token -> FROM.contains(token.text()));
        boolean place =
                words.stream().anyMatch(token -> PLACES.contains(token.text()) && !(dance && token.isWord("restarts")));
        boolean plain = line.tokens().stream().noneMatch(token -> token.is(Token.Kind.NUMBER))
                && !line.namesWall()
                && words.size() <= LONGEST;
        return restart && from && !place && plain;
    }
}
