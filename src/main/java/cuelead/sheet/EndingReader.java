package cuelead.sheet;

import cuelead.dance.EndingClaim;
import cuelead.dance.Facing;
import cuelead.dance.Turn;
import cuelead.sheet.Token.Kind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads where a line about the ending says that the dancers face at last. */
final class EndingReader {
    private EndingReader() {}

    /** Empty where it claims no facing, or tells of turns beside. {@code starts}: counts before section 1, 2, 3 ... */
    static Optional<EndingClaim> claim(SheetLine line, List<Integer> starts) {
        List<Token> tokens = line.tokens();
        Optional<Token> clock =
                tokens.stream().filter(token -> token.is(Kind.CLOCK)).reduce((first, last) -> last);
        boolean turns = Vocabulary.STANDARD.terms(tokens).stream()
                .anyMatch(term -> term.is(Term.Kind.FRACTION) || term.is(Term.Kind.TURN));
        if (clock.isEmpty() || turns) {
            return Optional.empty();
        }
        WallNote note = WallNote.read(tokens);
        Facing stated = Remark.facing(clock.get().text());
        OptionalInt wall = note.walls().isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(note.walls().get(0));
        return Optional.of(new EndingClaim(stated, wall, note.place(starts), Turn.NONE, line.number()));
    }
}
