package cuelead.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Reads the order of a phrased dance: {@code Sequence: A A B, Tag, A, B}. */
final class SequenceReader {
    private static final Set<String> SMALL = Set.of("and", "then");

    private final Problems problems;
    private final List<Name> names = new ArrayList<>();

    SequenceReader(Problems problems) {
        this.problems = problems;
    }

    private record Name(String name, int line, int column) {}

    void line(SheetLine line) {
        List<Token> tokens = line.tokens();
        for (Token token : tokens.subList(1, tokens.size())) {
            if (token.is(Token.Kind.WORD) && !SMALL.contains(token.text())) {
                names.add(new Name(token.text().toUpperCase(Locale.ROOT), line.number(), token.column()));
            }
        }
    }

    /** Reports each name that is no part and no tag, once. */
    void finish(Collection<String> parts, List<String> tags) {
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
    }

    List<String> names() {
        return names.stream().map(Name::name).toList();
    }
}
