package cuelead.sheet;

import cuelead.dance.ClockMark;
import cuelead.dance.Doubt;
import cuelead.dance.FigureFinder;
import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Tag;
import cuelead.dance.WallClaim;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Reads the lines of the dance itself: sections and their counts, parts, tags, restarts, the sequence, the ending. */
final class BodyReader {
    /** Counts; a numbered list in a letter may well hold a word or two of the trade. */
    private static final int SHORTEST_DANCE = 4;

    private final Problems problems;
    private final PartsDraft parts = new PartsDraft();
    private final TagReader tags;
    private final RestartReader restarts;
    /** Told in lines of their own, such as "Wall 2 starts facing 9:00". */
    private final List<WallClaim> wallStarts = new ArrayList<>();

    /** Lines below the dance that belong to nothing in it. */
    private final List<SheetLine> saidBelow = new ArrayList<>();

    private final CountedLines lines;
    private final SequenceReader sequence;
    private final EndingDraft ending;
    private boolean headed;

    private Place place = Place.DANCE;

    /** Which stretch of the sheet is being read. */
    private enum Place {
        DANCE,
        ENDING,
        AFTER
    }

    BodyReader(Problems problems, FigureFinder figures, Optional<Weight> startWeight, boolean waltz) {
        this.problems = problems;
        this.restarts = new RestartReader(problems);
        this.tags = new TagReader(problems);
        this.sequence = new SequenceReader(problems);
        this.lines =
                new CountedLines(problems, parts, tags, restarts, figures, startWeight.orElse(Weight.UNKNOWN), waltz);
        this.ending = new EndingDraft(lines, tags);
    }

    /** {@code below} is the next line that is not blank. */
    void read(SheetLine line, Optional<SheetLine> below) {
        LineKind kind = LineKind.of(line);
        if (place == Place.DANCE && kind != LineKind.COUNTS && kind != LineKind.NOTE) {
            OwnCallReader.reportLost(line, problems);
        }
        if (kind != LineKind.COUNTS && tags.repeats(line, lines.lastCount())) {
            return;
        }
        if (kind == LineKind.RESTART || kind == LineKind.REPEAT) {
            tags.restartsBehind(line);
        }
        Optional<SectionHead> inTag =
                tags.isOpen() && place == Place.DANCE ? SectionHead.inTag(line) : Optional.empty();
        if (inTag.isPresent()) {
            lines.closeSection();
            lines.open(
                    inTag.get().heading(),
                    line.number(),
                    0,
                    inTag.get().hasRange() ? inTag.get().length() : 0);
            return;
        }
        switch (kind) {
            case TAG -> tag(line, below);
            case RESTART -> restart(line);
            case SEQUENCE -> sequence.line(line);
            case ENDING -> ending(line);
            case REPEAT -> repeat(line);
            case NOTE -> {
                wallStarts.addAll(WallStarts.in(line));
                sequence.note(line);
            }
            case SECTION -> section(line);
            case COUNTS -> {
                if (place != Place.ENDING || tags.isOpen()) {
                    lines.counts(line);
                }
            }
            case OTHER -> other(line);
        }
    }

    /** A line above the dance, read when all of the dance is known. */
    void note(SheetLine line) {
        lines.closeSection();
        tags.close();
        place = Place.AFTER;
        if (!sequence.note(line)) {
            NoteClauses.notes(line).forEach(this::clause);
        }
    }

    private void clause(SheetLine line) {
        WallNote note = WallNote.read(line.tokens());
        switch (LineKind.of(line)) {
            case SEQUENCE -> sequence.line(line);
            case RESTART -> {
                boolean named = line.told().isPresent() || line.namesWall();
                if (named && note.isPlace()) {
                    restart(line);
                } else if (named) {
                    restarts.header(line, note);
                }
            }
            case TAG -> {
                if (tags.tags().isEmpty() && OneLineTag.read(line).isPresent()) {
                    tag(line, Optional.empty());
                } else {
                    tags.headerNote(line, note);
                }
            }
            case ENDING -> {
                if (!ending.isTold()) {
                    ending(line);
                    place = Place.AFTER;
                }
            }
            default -> {
                // a fact of the header
            }
        }
    }

    private void section(SheetLine line) {
        SectionHead head = SectionHead.read(line.text())
                .orElseGet(() -> SectionHead.words(line.text().strip()));
        headed |= line.told().isEmpty() || head.hasRange();
        lines.endsBefore(head);
        lines.closeSection();
        if (tags.takes(head, parts.counts())) {
            lines.open(head.heading(), line.number(), head.first() - 1, head.length());
            return;
        }
        tags.close();
        place = Place.DANCE;
        parts.enter(head);
        if (head.opensPart()) {
            return;
        }
        parts.followsOn(head, line, problems);
        lines.open(
                head.heading(),
                line.number(),
                head.hasRange() ? head.first() - 1 : 0,
                head.hasRange() ? head.length() : 0);
    }

    private void tag(SheetLine line, Optional<SheetLine> below) {
        Place before = place;
        lines.closeSection();
        tags.close();
        place = Place.DANCE;
        boolean hasLines = below.filter(DanceLine::countsFromOne).isPresent();
        Optional<OneLineTag> whole = hasLines ? Optional.empty() : OneLineTag.read(line);
        tags.open(whole.map(OneLineTag::head).orElse(line));
        whole.ifPresent(tag -> {
            tag.counted(tags.statedCounts()).forEach(lines::counts);
            lines.closeSection();
            tags.close();
            place = before;
        });
    }

    private void restart(SheetLine line) {
        if (RestartReader.saysNone(line)) {
            return;
        }
        int written = parts.counts() + lines.lastCount();
        restarts.line(line, place == Place.DANCE ? written : 0, lines.startsSoFar());
    }

    List<WallClaim> wallClaims() {
        return Stream.of(tags.wallEnds(), restarts.wallStarts(), wallStarts)
                .flatMap(List::stream)
                .toList();
    }

    /** How the sheet says to finish. */
    EndingDraft ending() {
        return ending;
    }

    private void ending(SheetLine line) {
        lines.closeSection();
        tags.close();
        place = Place.ENDING;
        ending.begin(line);
    }

    private void repeat(SheetLine line) {
        wallStarts.addAll(WallStarts.in(line));
        facings(line);
        lines.closeSection();
        tags.close();
        place = Place.AFTER;
    }

    /**
     * "You now face 6:00", "Repeat, facing 9:00", "Facing the back to begin the second wall": where the counts that are
     * written so far have brought the dancers.
     */
    private boolean facings(SheetLine line) {
        List<SaidFacing> said = SaidFacing.in(line.tokens());
        boolean ofDance = !tellsOfAnotherMoment(line) && !line.namesWall() && !namesPart(line);
        boolean one = said.size() == 1 && lines.written() > 0 && place == Place.DANCE && ofDance;
        if (one) {
            lines.mark(said.get(0), line);
        }
        return one;
    }

    /** "If you finish on the back wall, wave", "Line up facing 12:00", "The dance ends at the front". */
    private static boolean tellsOfAnotherMoment(SheetLine line) {
        return line.tokens().stream().anyMatch(token -> token.is(Token.Kind.WORD) && OTHERWISE.contains(token.text()));
    }

    private static final Set<String> OTHERWISE = Set.of(
            "if", "unless", "line", "lines", "stand", "before", "form", "when", "last", "final", "music", "song",
            "first");

    /** "A- is A.1 and A.2 only, you face the back": told of a part wherever the sequence has it. */
    private boolean namesPart(SheetLine line) {
        Set<String> names = parts.names();
        return names.size() > 1
                && line.tokens().stream()
                        .map(token -> token.text().toUpperCase(Locale.ROOT))
                        .anyMatch(names::contains);
    }

    private void other(SheetLine line) {
        List<WallClaim> starts = WallStarts.in(line);
        if (!starts.isEmpty()) {
            wallStarts.addAll(starts);
            return;
        }
        boolean below = place == Place.AFTER && sequence.note(line);
        if (place == Place.AFTER && !below) {
            saidBelow.add(line);
        }
        if (below || place != Place.DANCE || line.text().charAt(line.firstColumn() - 1) == '"') {
            return;
        }
        if (sequence.note(line)) {
            return;
        }
        if (DanceLine.movesNothing(line.text()) && facings(line)) {
            return;
        }
        if (!DanceLine.mayBeDanced(line) || Easier.isOffer(line)) {
            Asides.note(problems, line, "since it has no counts and no step");
            return;
        }
        lines.aside(line);
    }

    /** Closes what is open. */
    void finish() {
        lines.closeSection();
        tags.close();
        restarts.finish(parts.counts(), parts.sections(), firstWeight());
        tags.place(lines.starts());
        restarts.behindTags(tags.restarts());
        sequence.finish(parts.names(), tags.names());
        sequence.cuts(parts.partCounts()).forEach(restarts::cut);
        tags.finish(sequence.names());
        ending.finish(problems);
    }

    boolean isDance() {
        boolean longEnough = headed || parts.total() >= SHORTEST_DANCE;
        return longEnough && lines.areUnderstood() && !parts.isEmpty();
    }

    Metre metre() {
        return lines.metre();
    }

    /** Parts in the order in which they are first written. */
    List<Part> parts() {
        return parts.parts(sequence.names()).stream()
                .map(new OpenWeights(problems)::settled)
                .toList();
    }

    /** Where the weight is before the first step. */
    Weight firstWeight() {
        return lines.firstWeight();
    }

    /** Lines below the dance that belong to nothing in it. */
    List<SheetLine> saidBelow() {
        return saidBelow;
    }

    List<Doubt> doubts() {
        return lines.doubts();
    }

    List<Tag> tags() {
        return tags.tags();
    }

    List<Restart> restarts() {
        return restarts.restarts();
    }

    List<ClockMark> marks() {
        return lines.marks();
    }

    List<String> sequence() {
        return sequence.names();
    }
}
