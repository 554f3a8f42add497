package cuelead.sheet;

import java.util.List;
import java.util.Optional;

/** Gives a line that is danced without counts those that its figures usually take. */
final class Uncounted {
    /** Above this a touch or a kick would be held over several counts. */
    private static final int STRAINED = 10;

    private Uncounted() {}

    /**
     * The line with counts before its words.
     *
     * @param from   0-based index of the first word
     * @param length counts that it must fill; 1 or less where that is not known
     * @param first  its first count
     */
    static Optional<LaidLine> line(SheetLine line, int from, int length, int first) {
        Optional<RepeatCall> repeat = RepeatCall.read(line.text(), from);
        if (repeat.isPresent()) {
            int counts = repeat.get().length(length);
            return Optional.of(counted(first + "-" + (first + counts - 1), line, from))
                    .filter(found -> counts > 1);
        }
        List<Phrase> phrases = line.fit().phrases(line.text(), from);
        boolean clear = phrases.size() > 1
                || phrases.stream()
                        .anyMatch(phrase ->
                                phrase.figure().isPresent() || phrase.left().isEmpty());
        int usual = clear && LineFit.areReadable(phrases) ? UsualCounts.length(phrases) : 0;
        if (usual > 0 && (length <= 1 || usual == length)) {
            return Optional.of(counted(UsualCounts.of(phrases, first), line, from));
        }
        return Optional.of(counted(first + "-" + (first + length - 1), line, from))
                .filter(filled -> length > 1 && line.fit().cost(filled.text()) < STRAINED);
    }

    private static LaidLine counted(String counts, SheetLine line, int from) {
        return new LaidLine.Builder()
                .add(counts, line, from)
                .add(line, from, line.text().length())
                .line();
    }
}
