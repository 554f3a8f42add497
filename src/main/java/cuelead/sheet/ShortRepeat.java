package cuelead.sheet;

import cuelead.dance.Foot;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** "5-8 same again", "5-8 ditto", "5-8 repeat", "5-8 and the other side": counts on which nothing new is danced. */
final class ShortRepeat {
    static final Set<String> SAME =
            Set.of("same", "again", "ditto", "more", "rpt", "repeat", "repeats", "repeated", "above", "idem", "dito");
    private static final Set<String> MIRROR =
            Set.of("opposite", "mirror", "mirrored", "mirroring", "reverse", "reversed", "other");
    private static final Set<String> AROUND = Set.of(
            "thing",
            "that",
            "this",
            "these",
            "it",
            "all",
            "as",
            "the",
            "do",
            "now",
            "and",
            "then",
            "on",
            "to",
            "with",
            "side",
            "foot",
            "leg",
            "way",
            "whole",
            "once",
            "time",
            "times",
            "one",
            "just",
            "image",
            "leading",
            "starting",
            "beginning",
            "in",
            "your",
            "you",
            "we",
            "of",
            "what",
            "did",
            "before",
            "for",
            "a",
            "but",
            "direction",
            "steps",
            "counts",
            "last",
            "so",
            "twice",
            "two",
            "are",
            "is",
            "back");
    private static final Set<String> LEFT = Set.of("left", "l", "lf");
    private static final Set<String> RIGHT = Set.of("right", "r", "rf");

    private ShortRepeat() {}

    /** Empty where the words behind the counts say anything else, or where no counts stand before them. */
    static Optional<RepeatCall> read(String text, int from) {
        if (text.substring(0, from).chars().noneMatch(c -> Scanner.isDigit((char) c))) {
            return Optional.empty();
        }
        List<Token> words = Scanner.tokens(text, from).stream()
                .filter(token -> token.is(Token.Kind.WORD) || token.is(Token.Kind.NUMBER))
                .toList();
        boolean mirror = has(words, MIRROR);
        boolean side = has(words, LEFT) || has(words, RIGHT);
        boolean told = has(words, SAME) || mirror || (side && has(words, Set.of("and", "now")));
        boolean only = words.stream().allMatch(ShortRepeat::isPlain);
        if (!told || !only || (has(words, LEFT) && has(words, RIGHT))) {
            return Optional.empty();
        }
        Optional<Foot> lead = side ? Optional.of(has(words, LEFT) ? Foot.LEFT : Foot.RIGHT) : Optional.empty();
        int times = has(words, Set.of("twice", "two")) && has(words, Set.of("more")) ? 2 : 1;
        return Optional.of(new RepeatCall(new RepeatCall.Source.Before(0), lead, mirror && !side, times));
    }

    private static boolean isPlain(Token token) {
        List<Token> word = List.of(token);
        return has(word, SAME) || has(word, MIRROR) || has(word, AROUND) || has(word, LEFT) || has(word, RIGHT);
    }

    private static boolean has(List<Token> tokens, Set<String> words) {
        return tokens.stream().anyMatch(token -> words.contains(token.text()));
    }
}
