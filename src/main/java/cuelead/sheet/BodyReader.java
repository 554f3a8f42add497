package cuelead.sheet;

import cuelead.dance.ClockMark;
import cuelead.dance.Count;
import cuelead.dance.Counts;
import cuelead.dance.Doubt;
import cuelead.dance.Doubt.About;
import cuelead.dance.EndingClaim;
import cuelead.dance.FigureFinder;
import cuelead.dance.Figures;
import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.dance.WallClaim;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.HashSet;
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
    private static final FigureFinder FIGURES = new FigureFinder(Figures.standard());
    private final PartsDraft parts = new PartsDraft();
    private final TagReader tags;
    private final RestartReader restarts;
    private final List<ClockMark> marks = new ArrayList<>();
    /** Told in lines of their own, such as "Wall 2 starts facing 9:00". */
    private final List<WallClaim> wallStarts = new ArrayList<>();

    private final SequenceReader sequence;
    private Optional<String> ending = Optional.empty();
    private Optional<SheetLine> endingLine = Optional.empty();
    private Optional<SectionDraft> section = Optional.empty();
    private boolean headed;
    private final boolean waltz;
    private final Footing footing;
    private final List<Doubt> doubts = new ArrayList<>();
    /** Numbers of lines that are told to be headings perhaps. */
    private final Set<Integer> maybeHeadings = new HashSet<>();

    private int countLines;
    private int understoodLines;
    private Place place = Place.DANCE;

    /** Which stretch of the sheet is being read. */
    private enum Place {
        DANCE,
        ENDING,
        AFTER
    }

    BodyReader(Problems problems, Optional<Weight> startWeight, boolean waltz) {
        this.problems = problems;
        this.restarts = new RestartReader(problems);
        this.tags = new TagReader(problems);
        this.sequence = new SequenceReader(problems);
        this.waltz = waltz;
        this.footing = new Footing(startWeight.orElse(Weight.UNKNOWN));
    }

    /** {@code below} is the next line that is not blank. */
    void read(SheetLine line, Optional<SheetLine> below) {
        LineKind kind = LineKind.of(line);
        if (place == Place.DANCE && kind != LineKind.COUNTS && kind != LineKind.NOTE) {
            OwnCallReader.reportLost(line, problems);
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
            case COUNTS -> counts(line);
            case OTHER -> other(line);
        }
    }

    /** A line above the dance, read when all of the dance is known. */
    void note(SheetLine line) {
        closeSection();
        tags.close();
        place = Place.AFTER;
        if (sequence.note(line)) {
            return;
        }
        WallNote note = WallNote.read(line.tokens());
        switch (LineKind.of(line)) {
            case SEQUENCE -> sequence.line(line);
            case RESTART -> {
                if (note.isPlace() && WallNote.namesWall(line.tokens())) {
                    restart(line);
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
                ending = ending.or(() -> Optional.of(line.text().strip()));
                endingLine = endingLine.or(() -> Optional.of(line));
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
        closeSection();
        if (tags.takes(head, parts.counts())) {
            open(head.heading(), line.number(), head.first() - 1, head.length());
            return;
        }
        tags.close();
        place = Place.DANCE;
        parts.enter(head);
        if (head.opensPart()) {
            return;
        }
        parts.followsOn(head, line, problems);
        open(
                head.heading(),
                line.number(),
                head.hasRange() ? head.first() - 1 : 0,
                head.hasRange() ? head.length() : 0);
    }

    private void open(String heading, int line, int base, int length) {
        String name = tags.name().orElse(parts.nextName());
        section = Optional.of(new SectionDraft(name, heading, line, base, length));
    }

    private void counts(SheetLine line) {
        if (place == Place.ENDING) {
            return;
        }
        countLines++;
        CountGroup.read(line.text()).ifPresentOrElse(group -> counted(line, group), () -> leftOut(line));
    }

    private void counted(SheetLine line, CountGroup group) {
        startsAnew(group);
        SectionDraft draft = section.orElseThrow();
        List<Count> counts = draft.local(group.counts(), tags.hasSections() ? tags.counts() : parts.counts());
        boolean behind = counts.stream().anyMatch(draft::isBehind);
        if (behind) {
            behind(draft, group, counts, line);
        }
        Optional<RepeatCall> repeat = RepeatCall.read(line.text(), group.end())
                .or(() -> tags.isOpen() ? RepeatCall.named(line.text(), group.end()) : Optional.empty());
        if (repeat.isPresent() && !behind) {
            repeated(repeat.get(), line, group, counts);
            return;
        }
        boolean dropped = counts.stream().allMatch(draft::isBehind);
        LineReader reader =
                dropped ? new LineReader(Problems.unheard(), footing.copy()) : new LineReader(problems, footing);
        LineReader.Result result = reader.read(line, group, counts);
        understoodLines += result.understood() ? 1 : 0;
        if (behind || result.doubtful()) {
            doubt(line, Counts.of(before()).plus(counts.get(0).offset()));
        }
        if (dropped) {
            footing.doubt();
            return;
        }
        take(result, draft, line);
        draft.write(counts, line.number());
    }

    /** What was danced before is danced again. */
    private void repeated(RepeatCall call, SheetLine line, CountGroup group, List<Count> counts) {
        SectionDraft draft = section.orElseThrow();
        boolean ofDance = tags.isOpen() && !tags.hasSections() && draft.steps().isEmpty();
        List<Section> closed = tags.isOpen() && !ofDance ? tags.sections() : parts.sections();
        Repeats repeats =
                new Repeats(closed, draft.steps(), draft.base(), counts.get(0).number() - 1);
        List<Step> steps = new ArrayList<>();
        for (Step step : repeats.steps(call, group, counts, footing)) {
            Move move = Move.of(step, group.column());
            steps.add(LineReader.step(footing.take(move, Footing.Naming.NAMED), step.count(), line.number()));
        }
        understoodLines++;
        if (steps.isEmpty()) {
            problems.error(
                    "repeat_unclear",
                    line.number(),
                    group.column(),
                    "It is not clear what is danced again here.",
                    "Write it like \"Repeat 1-4\", or write the steps out.");
            doubt(line, Counts.of(before()).plus(counts.get(0).offset()));
            footing.doubt();
        }
        draft.add(steps);
        draft.write(counts, line.number());
    }

    /** What this line turns, and whether it is danced at all, is not known. */
    private void doubt(SheetLine line, Counts from) {
        section.ifPresent(SectionDraft::doubt);
        boolean turns = DanceLine.mayTurn(line.text());
        About about = turns ? About.WEIGHT_AND_TURNS : About.WEIGHT;
        doubts.add(new Doubt(tags.name().orElse(parts.name()), from, about, line.number()));
    }

    private int before() {
        return tags.isOpen() ? tags.counts() : parts.counts();
    }

    /** Counts that were written before keep what was written first. */
    private void take(LineReader.Result result, SectionDraft draft, SheetLine line) {
        int before = before();
        String name = tags.name().orElse(parts.name());
        result.marks().stream()
                .filter(mark -> !draft.isBehind(mark.value().count()))
                .forEach(mark -> marks.add(LineReader.clockMark(name, before, mark, line.number())));
        result.restarts().forEach(count -> restarts.mark(line, before + count.number()));
        result.calls().stream().filter(call -> !draft.isBehind(call.count())).forEach(draft::call);
        draft.add(result.steps().stream()
                .filter(step -> !draft.isBehind(step.count()))
                .toList());
    }

    /** Without headings, a line that counts from 1 again begins a new section; so does a line above all headings. */
    private void startsAnew(CountGroup group) {
        boolean fromOne =
                group.counts().get(0).isWhole() && group.counts().get(0).number() == 1;
        boolean again = section.filter(draft -> draft.length() >= 4 && draft.hasNoHead() && !draft.isEmpty())
                .isPresent();
        if (section.isEmpty() || (fromOne && again && !tags.isOpen())) {
            closeSection();
            open("", 0, 0, tags.statedCounts());
        }
    }

    private void behind(SectionDraft draft, CountGroup group, List<Count> counts, SheetLine line) {
        Optional<Integer> maybeHeading = draft.longLineOf(counts);
        if (maybeHeading.isPresent() && !maybeHeadings.add(maybeHeading.get())) {
            return;
        }
        String tryThis = maybeHeading
                .map(above -> "If line " + above + " is a heading, put its counts in brackets, such as \"[1-8]\" or"
                        + " \"[9-16]\".")
                .orElse("Number the counts of a section upwards, or begin a new section above this line.");
        problems.error(
                "count_order",
                line.number(),
                group.column(),
                "\"" + group.written(line.text()) + "\" comes again in " + draft.name() + ", or too late.",
                tryThis);
    }

    private void closeSection() {
        section.filter(draft -> draft.isEmpty() && draft.isBracketed()).ifPresent(draft -> draft.empty(problems));
        section.filter(draft -> !draft.isEmpty()).ifPresent(draft -> {
            draft.check(problems);
            Section done = draft.section(FIGURES, metre());
            if (draft.isWhole()) {
                new HeadingCheck(problems).check(done, done.line());
            }
            if (tags.isOpen()) {
                tags.add(done);
            } else {
                parts.add(done);
            }
        });
        section = Optional.empty();
    }

    private void tag(SheetLine line, Optional<SheetLine> below) {
        Place before = place;
        closeSection();
        tags.close();
        place = Place.DANCE;
        boolean hasLines = below.filter(DanceLine::countsFromOne).isPresent();
        Optional<OneLineTag> whole = hasLines ? Optional.empty() : OneLineTag.read(line);
        tags.open(whole.map(OneLineTag::head).orElse(line));
        whole.ifPresent(tag -> {
            tag.counted(tags.statedCounts()).forEach(this::counts);
            closeSection();
            tags.close();
            place = before;
        });
    }

    private void restart(SheetLine line) {
        if (RestartReader.saysNone(line)) {
            closeSection();
            return;
        }
        int written = parts.counts() + section.map(SectionDraft::lastCount).orElse(0);
        List<Integer> starts = new ArrayList<>(starts());
        section.filter(draft -> !tags.isOpen() && !draft.isEmpty())
                .ifPresent(draft -> starts.add(starts.get(starts.size() - 1) + draft.length()));
        restarts.line(line, place == Place.DANCE ? written : 0, starts);
    }

    /** Counts before section 1, 2, 3 ... and behind the last one that is closed. */
    private List<Integer> starts() {
        List<Integer> starts = new ArrayList<>(List.of(0));
        for (Section each : parts.sections()) {
            starts.add(starts.get(starts.size() - 1) + each.length());
        }
        return starts;
    }

    List<WallClaim> wallClaims() {
        return Stream.of(tags.wallEnds(), restarts.wallStarts(), wallStarts)
                .flatMap(List::stream)
                .toList();
    }

    /** Where the sheet says that the dance ends, as far as it says it. */
    List<EndingClaim> endingClaims() {
        return endingLine.map(line -> EndingReader.claims(line, starts())).orElse(List.of());
    }

    private void ending(SheetLine line) {
        endingLine = Optional.of(line);
        closeSection();
        tags.close();
        place = Place.ENDING;
        ending = Optional.of(line.text().strip());
    }

    private void repeat(SheetLine line) {
        wallStarts.addAll(WallStarts.in(line));
        facings(line);
        closeSection();
        tags.close();
        place = Place.AFTER;
    }

    /**
     * "You now face 6:00", "Repeat, facing 9:00", "Facing the back to begin the second wall": where the counts that are
     * written so far have brought the dancers.
     */
    private boolean facings(SheetLine line) {
        int written = before() + section.map(SectionDraft::lastCount).orElse(0);
        List<SaidFacing> said = SaidFacing.in(line.tokens());
        boolean ofDance = !WallNote.namesWall(line.tokens()) && !namesPart(line);
        boolean one = said.size() == 1 && written > 0 && place == Place.DANCE && ofDance;
        if (one) {
            marks.add(new ClockMark(
                    tags.name().orElse(parts.name()),
                    Counts.of(written),
                    said.get(0).facing(),
                    line.number(),
                    said.get(0).column()));
        }
        return one;
    }

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
            problems.note(
                    "not_read",
                    line.number(),
                    line.firstColumn(),
                    "This line is not read, since it has no counts and no step.",
                    "");
            return;
        }
        int sofar = section.map(SectionDraft::lastCount).orElse(0);
        doubt(line, Counts.of(before() + sofar));
        footing.doubt();
        leftOut(line);
    }

    private void leftOut(SheetLine line) {
        problems.warning(
                "unread",
                line.number(),
                line.firstColumn(),
                "This line is not understood, so it is left out.",
                "Begin it with its counts (\"1-2 ...\"), or with \"Note:\" if it is no step.");
    }

    /** Closes what is open. */
    void finish() {
        closeSection();
        tags.close();
        restarts.finish(parts.counts(), parts.sections(), firstWeight());
        tags.place(starts());
        sequence.finish(parts.names(), tags.names());
        sequence.cuts(parts.names()).forEach(restarts::cut);
        tags.finish(sequence.names());
    }

    boolean isDance() {
        boolean longEnough = headed || parts.total() >= SHORTEST_DANCE;
        return longEnough && understoodLines > 0 && understoodLines * 3 >= countLines && !parts.isEmpty();
    }

    Metre metre() {
        int first = parts.first()
                .map(Section::length)
                .or(() -> section.map(SectionDraft::length))
                .orElse(8);
        return waltz || (first % 3 == 0 && first % 8 != 0) ? Metre.SIXES : Metre.EIGHTS;
    }

    /** Parts in the order in which they are first written. */
    List<Part> parts() {
        return parts.parts(sequence.names());
    }

    /** Where the weight is before the first step. */
    Weight firstWeight() {
        return footing.start();
    }

    List<Doubt> doubts() {
        return doubts;
    }

    List<Tag> tags() {
        return tags.tags();
    }

    List<Restart> restarts() {
        return restarts.restarts();
    }

    List<ClockMark> marks() {
        return marks;
    }

    List<String> sequence() {
        return sequence.names();
    }

    Optional<String> ending() {
        return ending;
    }
}
