package cuelead.sheet;

import cuelead.dance.Ending;
import cuelead.dance.EndingClaim;
import cuelead.dance.Section;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * The ending while it is read: the line that tells of it, and its steps, which stand in that line or, with counts, below
 * it. The last such line of a sheet counts.
 */
final class EndingDraft {
    private final CountedLines lines;
    private final TagReader tags;

    /** "Dance the first 16 counts, then ...": so much of its wall comes before it. */
    private static final Pattern FIRST_COUNTS = Pattern.compile(
            "\\b(?:first|dance|dancing) (?:the )?(?:first )?\\d{1,3} (?:counts?|beats?|cts?)\\b(?!\\s*:)",
            Pattern.CASE_INSENSITIVE);

    private Optional<SheetLine> told = Optional.empty();
    /** The count behind which it comes. */
    private OptionalInt place = OptionalInt.empty();

    EndingDraft(CountedLines lines, TagReader tags) {
        this.lines = lines;
        this.tags = tags;
    }

    boolean isTold() {
        return told.isPresent();
    }

    /** Begins an ending; what was open before must be closed. */
    void begin(SheetLine line) {
        told = Optional.of(line);
        WallNote note = WallNote.read(line.tokens());
        Optional<StepChange> change = StepChangeReader.read(line);
        Optional<SheetLine> changed = change.flatMap(steps -> steps.asLine(line));
        place = change.isPresent()
                ? OptionalInt.of(before(note) + change.get().counts().get(0).number() - 1)
                : FIRST_COUNTS.matcher(line.text()).find()
                        ? note.place(lines.starts())
                        : note.placeOfTag(lines.starts());
        tags.openEnding(line);
        lines.open("", line.number(), changed.isPresent() ? firstOf(changed.get()) - 1 : place.orElse(0), 0);
        changed.or(() -> EndingSteps.in(line)).ifPresent(lines::counts);
    }

    /** "Replace counts 7-8 of section 2": counts before the section that is named. */
    private int before(WallNote note) {
        int section = note.section().orElse(1);
        boolean isKnown = section >= 1 && section < lines.starts().size();
        return isKnown ? lines.starts().get(section - 1) : 0;
    }

    private static int firstOf(SheetLine counted) {
        return CountGroup.read(counted.text()).orElseThrow().counts().get(0).number();
    }

    /** How the sheet says to finish; empty where it says nothing of it. */
    Optional<Ending> ending(List<Section> sections) {
        return told.map(line -> new Ending(
                line.text().strip(),
                WallNote.read(line.tokens()).firstWall(),
                place(line, sections),
                tags.ending(),
                line.number()));
    }

    /** Where no count tells it, the steps do that others are danced in place of. */
    private OptionalInt place(SheetLine line, List<Section> sections) {
        Optional<ReplacedSteps> replaced =
                place.isPresent() || tags.ending().isEmpty() ? Optional.empty() : ReplacedSteps.in(line.text());
        return replaced.isEmpty()
                ? place
                : replaced.get().lastBefore(sections, tags.ending().get().counts());
    }

    /** Where the sheet says that the dance ends, as far as it says it. */
    List<EndingClaim> claims() {
        return told.map(line -> EndingReader.claims(line, lines.starts())).orElse(List.of());
    }

    /** Tells that nobody will dance it, where it has steps that are not understood. */
    void finish(Problems problems) {
        told.filter(line -> tags.ending().isEmpty() && line.isDanced())
                .ifPresent(line -> problems.note(
                        "ending_told",
                        line.number(),
                        line.firstColumn(),
                        "The steps of the ending are not understood, so it is neither danced nor called.",
                        "Write it like \"Ending: on wall 9 after count 16\", and its count lines below it."));
    }
}
