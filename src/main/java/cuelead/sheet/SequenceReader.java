package cuelead.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Reads the order of a phrased dance: {@code Sequence: A A B, Tag, A, B}, {@code AAB AAB}, {@code A - B - A* - bridge}. */
final class SequenceReader {
    private static final int SHORTEST = 3;
    private static final Set<String> SMALL = Set.of(
            "and", "then", "of", "the", "parts", "part", "order", "is", "dance", "repeat", "to", "end", "intro",
            "ending");
    private static final Set<String> HEADS = Set.of("sequence", "order", "phrasing", "phrased", "pattern", "parts");
    private static final Set<String> TAGS = Set.of("tag", "bridge", "tags");

    private final Problems problems;
    private final List<Name> names = new ArrayList<>();
    private final Map<String, Integer> shortened = new HashMap<>();

    SequenceReader(Problems problems) {
        this.problems = problems;
    }

    /** {@code counts}: how many of the part are danced; 0 = all. */
    private record Name(String name, boolean cut, int line, int column) {}

    /** Whether a line is a sequence: told so, or a row of letters and tags and nothing else. */
    static boolean isSequence(SheetLine line) {
        List<Token> words = words(line);
        boolean told = !words.isEmpty() && words.get(0).text().equals("sequence");
        boolean headed = words.size() > SHORTEST
                && HEADS.contains(words.get(0).text())
                && words.subList(1, words.size()).stream().allMatch(SequenceReader::isPartOrSmall);
        boolean row = words.size() >= SHORTEST && words.stream().allMatch(SequenceReader::isPart);
        return told || headed || row;
    }

    private static List<Token> words(SheetLine line) {
        return line.tokens().stream().filter(token -> token.is(Token.Kind.WORD)).toList();
    }

    private static boolean isPartOrSmall(Token token) {
        return isPart(token) || SMALL.contains(token.text());
    }

    private static boolean isPart(Token token) {
        return TAGS.contains(token.text()) || token.text().matches("[a-f]{1,4}|[a-f]\\d{1,2}|tag\\d");
    }

    void line(SheetLine line) {
        List<Token> tokens = line.tokens();
        int depth = 0;
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            depth += token.is(Token.Kind.OPEN) ? 1 : token.is(Token.Kind.CLOSE) ? -1 : 0;
            boolean head = i == 0 || HEADS.contains(token.text());
            boolean word = token.is(Token.Kind.WORD) && !SMALL.contains(token.text());
            if (word && depth == 0 && !(head && HEADS.contains(token.text()))) {
                boolean cut = i + 1 < tokens.size()
                        && tokens.get(i + 1).is(Token.Kind.MARK)
                        && isBeside(token, tokens.get(i + 1));
                take(token, cut, line.number());
            }
        }
    }

    /** "A*" and "A-" are parts of A; a dash on its own parts two names. */
    private static boolean isBeside(Token token, Token mark) {
        return mark.column() == token.column() + token.text().length();
    }

    private void take(Token token, boolean cut, int line) {
        String text = token.text();
        if (text.matches("[a-f]{2,4}")) {
            for (int i = 0; i < text.length(); i++) {
                boolean last = i == text.length() - 1;
                names.add(new Name(upper(text.substring(i, i + 1)), cut && last, line, token.column() + i));
            }
        } else if (text.matches("[a-f]\\d{1,2}")) {
            shortened.put(upper(text.substring(0, 1)), Integer.parseInt(text.substring(1)));
            names.add(new Name(upper(text.substring(0, 1)), true, line, token.column()));
        } else {
            names.add(new Name(upper(text), cut, line, token.column()));
        }
    }

    private static String upper(String word) {
        return word.toUpperCase(Locale.ROOT);
    }

    /** Whether a line tells how much of a part its short form has. */
    static boolean isNote(SheetLine line) {
        return new SequenceReader(Problems.unheard()).note(line);
    }

    /** "A* is only the first 16 counts of A", "A- = A1 and A2": how much of a part its short form has. */
    boolean note(SheetLine line) {
        List<Token> tokens = line.tokens();
        for (int i = 0; i + 1 < tokens.size() && !isSequence(line); i++) {
            Token part = tokens.get(i);
            boolean cut = part.is(Token.Kind.WORD)
                    && part.text().matches("[a-f]")
                    && tokens.get(i + 1).is(Token.Kind.MARK)
                    && isBeside(part, tokens.get(i + 1));
            int counts = WallNote.read(tokens).counts().orElse(0);
            if (cut && counts > 0) {
                shortened.put(upper(part.text()), counts);
                return true;
            }
        }
        return false;
    }

    /** Reports each name that is no part and no tag, once, and forgets it. Where no order is told, it is the written one. */
    void finish(Collection<String> parts, List<String> tags) {
        names.replaceAll(name -> name.name().equals("BRIDGE") && !tags.contains("BRIDGE") && !tags.isEmpty()
                ? new Name(tags.get(0), false, name.line(), name.column())
                : name);
        Set<String> known = new HashSet<>(parts);
        known.addAll(tags);
        for (Name name : names) {
            if (known.add(name.name())) {
                problems.error(
                        "unknown_part",
                        name.line(),
                        name.column(),
                        "The sequence names \"" + name.name() + "\", but the sheet has no such part or tag.",
                        "Its parts are " + String.join(", ", parts) + ".");
            }
        }
        names.removeIf(name -> !parts.contains(name.name()) && !tags.contains(name.name()));
        if (names.isEmpty() && parts.size() > 1) {
            problems.error(
                    "no_sequence",
                    0,
                    0,
                    "The sheet has the parts " + String.join(", ", parts)
                            + ", but does not say in which order they are danced.",
                    "Write a line such as \"Sequence: " + String.join(", ", parts) + ", " + String.join(", ", parts)
                            + "\".");
            parts.forEach(part -> names.add(new Name(part, false, 0, 0)));
        }
    }

    List<String> names() {
        return names.stream().map(Name::name).toList();
    }

    /** A part of the sequence that is broken off: which of the parts, from 1, and after how many of its counts. */
    record Cut(int run, int afterCount, int line) {}

    /** The short forms whose length is told. */
    List<Cut> cuts(Collection<String> parts) {
        List<Cut> cuts = new ArrayList<>();
        int run = 0;
        for (Name name : names) {
            run += parts.contains(name.name()) ? 1 : 0;
            int counts = shortened.getOrDefault(name.name(), 0);
            if (name.cut() && counts > 0) {
                cuts.add(new Cut(run, counts, name.line()));
            }
        }
        return cuts;
    }
}
