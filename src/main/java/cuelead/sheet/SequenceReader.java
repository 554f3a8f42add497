package cuelead.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

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

    /** {@code cut}: marked as short; {@code told}: how much of it, where that stands beside the name. */
    private record Name(String name, boolean cut, Optional<ShortPart> told, int line, int column) {
        Name(String name, boolean cut, int line, int column) {
            this(name, cut, Optional.empty(), line, column);
        }
    }

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

    private static final Pattern PART = Pattern.compile("[a-f]{1,4}|[a-f]\\d{1,2}|tag\\d");

    private static boolean isPart(Token token) {
        return TAGS.contains(token.text()) || PART.matcher(token.text()).matches();
    }

    void line(SheetLine told) {
        SheetLine line = PhrasedWords.repeated(told);
        Map<Integer, ShortPart> parts = new HashMap<>();
        Optional<ShortPart.Placed> part = ShortPart.find(line.text(), 0);
        while (part.isPresent()) {
            ShortPart.Placed found = part.get();
            parts.put(found.name() + 1, found.part());
            line = line.with(found.name() + 1, found.to(), " ".repeat(found.to() - found.name() - 1))
                    .with(found.from(), found.name(), " ".repeat(found.name() - found.from()));
            part = ShortPart.find(line.text(), found.to());
        }
        names(line, parts);
    }

    private void names(SheetLine line, Map<Integer, ShortPart> parts) {
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
                Optional<ShortPart> part = Optional.ofNullable(parts.get(token.column()));
                part.ifPresentOrElse(
                        told -> names.add(new Name(upper(token.text()), true, part, line.number(), token.column())),
                        () -> take(token, cut, line.number()));
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
            ShortPart part = new ShortPart(ShortPart.Kind.FIRST, Integer.parseInt(text.substring(1)));
            names.add(new Name(upper(text.substring(0, 1)), true, Optional.of(part), line, token.column()));
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
        List<Token> tokens = isSequence(line) ? List.of() : line.tokens();
        for (int i = 0; i + 1 < tokens.size(); i++) {
            Token part = tokens.get(i);
            boolean cut = part.is(Token.Kind.WORD)
                    && isLetter(part.text())
                    && tokens.get(i + 1).is(Token.Kind.MARK)
                    && isBeside(part, tokens.get(i + 1));
            int counts = cut ? WallNote.read(tokens).counts().orElse(0) : 0;
            if (counts > 0) {
                shortened.put(upper(part.text()), counts);
                return true;
            }
        }
        return false;
    }

    private static boolean isLetter(String name) {
        return name.length() == 1 && name.charAt(0) >= 'a' && name.charAt(0) <= 'f';
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

    private void unclear(Name name) {
        problems.warning(
                "unknown_part",
                name.line(),
                name.column(),
                "It is not clear how many counts of " + name.name() + " are danced here; all of them are.",
                "Write it like \"" + name.name() + "(8)\".");
    }

    /** A part of the sequence that is broken off: which of the parts, from 1, and after how many of its counts. */
    record Cut(int run, int afterCount, int line) {}

    /**
     * The short forms whose length is told; where the order says that a part is short and not how, it is reported.
     *
     * @param parts lengths in counts by name
     */
    List<Cut> cuts(Map<String, Integer> parts) {
        List<Cut> cuts = new ArrayList<>();
        Set<String> unclear = new HashSet<>();
        int run = 0;
        for (Name name : names) {
            int length = parts.getOrDefault(name.name(), 0);
            run += length > 0 ? 1 : 0;
            int mark = shortened.getOrDefault(name.name(), 0);
            int counts = name.told().map(part -> part.of(length)).orElse(mark);
            if (name.cut() && counts > 0) {
                cuts.add(new Cut(run, counts, name.line()));
            } else if (name.cut() && name.told().filter(ShortPart::isUnclear).isPresent()) {
                unclear(name);
            } else if (name.cut() && name.told().isEmpty() && unclear.add(name.name())) {
                problems.note(
                        "unknown_part",
                        name.line(),
                        name.column(),
                        "A mark stands behind " + name.name()
                                + ", but it is not said what it means; all of it is danced.",
                        "Say how much of it is danced, such as \"" + name.name() + "(8)\".");
            }
        }
        return cuts;
    }
}
