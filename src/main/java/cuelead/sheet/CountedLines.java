package cuelead.sheet;

import cuelead.dance.ClockMark;
import cuelead.dance.Count;
import cuelead.dance.Counts;
import cuelead.dance.Doubt;
import cuelead.dance.Doubt.About;
import cuelead.dance.FigureFinder;
import cuelead.dance.Metre;
import cuelead.dance.RunOver;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the counted lines of a dance into the sections of its parts and tags, one section after the other. */
final class CountedLines {
    private final FigureFinder figures;
    private final Problems problems;
    private final PartsDraft parts;
    private final TagReader tags;
    private final RestartReader restarts;
    private final boolean waltz;
    private final Footing footing;
    private final Asides asides;
    private final List<ClockMark> marks = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();
    /** Numbers of lines that are told to be headings perhaps. */
    private final Set<Integer> maybeHeadings = new HashSet<>();

    private Optional<SectionDraft> section = Optional.empty();
    private int countLines;
    private int understoodLines;

    /**
     * Lines of one sheet.
     *
     * @param parts    the parts that they are written into
     * @param tags     the tags, of which one may be open
     * @param restarts where restarts in the lines are noted
     * @param figures  recognises figures in steps
     */
    CountedLines(
            Problems problems,
            PartsDraft parts,
            TagReader tags,
            RestartReader restarts,
            FigureFinder figures,
            Weight startWeight,
            boolean waltz) {
        this.figures = figures;
        this.problems = problems;
        this.parts = parts;
        this.tags = tags;
        this.restarts = restarts;
        this.waltz = waltz;
        this.footing = new Footing(startWeight);
        this.asides = new Asides(problems);
    }

    /** Begins a section; a length of 0 is not known. */
    void open(String heading, int line, int base, int length) {
        String name = tags.name().orElse(parts.nextName());
        List<Section> above = tags.isOpen() ? tags.sections() : parts.sections();
        section = Optional.of(new SectionDraft(
                name, heading, line, base, length, RunOver.behind(above, waltz ? Metre.SIXES : Metre.EIGHTS)));
    }

    /** A line with counts before its steps, or with counts that are left out. */
    void counts(SheetLine line) {
        countLines++;
        CountGroup.read(line.text())
                .ifPresentOrElse(group -> counted(line, group), () -> Asides.unread(problems, line));
    }

    private void counted(SheetLine line, CountGroup group) {
        startsAnew(group);
        SectionDraft draft = section.orElseThrow();
        List<Count> counts = draft.local(group.counts(), tags.hasSections() ? tags.counts() : parts.counts());
        decide(draft.leavesOutBefore(counts.get(0)));
        if (lastCount() > 0) {
            SaidFacing.before(line, group.end()).ifPresent(said -> mark(said, line));
        }
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
            Asides.leftOut(problems, line);
            footing.doubt();
            return;
        }
        take(result, draft, line);
        if (doubts.isEmpty() && degrees(draft) % QUARTER_DEGREES == 0) {
            NoWalls.report(line, problems);
        }
        draft.write(counts, line.number());
    }

    /** What the dance or its open tag turns up to the end of a draft. */
    private int degrees(SectionDraft draft) {
        List<Step> steps = new ArrayList<>(draft.steps());
        (tags.isOpen() ? tags.sections() : parts.sections()).forEach(each -> steps.addAll(each.steps()));
        return steps.stream().mapToInt(step -> step.turn().degrees()).sum();
    }

    private static final int QUARTER_DEGREES = 90;

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
            Asides.leftOut(problems, line);
            doubt(line, Counts.of(before()).plus(counts.get(0).offset()));
            footing.doubt();
        }
        draft.add(steps);
        draft.write(counts, line.number());
        List<SaidFacing> said = SaidFacing.in(line.tokens());
        if (said.size() == 1 && !steps.isEmpty()) {
            mark(said.get(0), line);
        }
    }

    /** What this line turns, and whether it is danced at all, is not known. */
    private void doubt(SheetLine line, Counts from) {
        section.ifPresent(SectionDraft::doubt);
        boolean turns = DanceLine.mayTurn(line.text());
        About about = turns ? About.WEIGHT_AND_TURNS : About.WEIGHT;
        doubts.add(new Doubt(partName(), from, about, line.number()));
    }

    /** Counts that were written before keep what was written first. */
    private void take(LineReader.Result result, SectionDraft draft, SheetLine line) {
        int before = before();
        String name = partName();
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

    /** A line without counts that may be danced. */
    void aside(SheetLine line) {
        asides.add(line, Counts.of(written()));
    }

    /** Where counts are missing around lines that have none, what follows them is in doubt. */
    private void decide(boolean missing) {
        if (!missing) {
            asides.dismiss();
            return;
        }
        for (Asides.Aside aside : asides.suspect()) {
            doubt(aside.line(), aside.behind());
            footing.doubt();
        }
    }

    /** A facing that the dancers have after all that is written so far. */
    void mark(SaidFacing said, SheetLine line) {
        marks.add(new ClockMark(partName(), Counts.of(written()), said.facing(), line.number(), said.column()));
    }

    private String partName() {
        return tags.name().orElse(parts.name());
    }

    private int before() {
        return tags.isOpen() ? tags.counts() : parts.counts();
    }

    /** Counts of the part, or of the tag, that are written so far. */
    int written() {
        return before() + lastCount();
    }

    /** The last count of the section that is open; 0 where none is. */
    int lastCount() {
        return section.map(SectionDraft::lastCount).orElse(0);
    }

    /** The section that is open ends before this one. */
    void endsBefore(SectionHead next) {
        section.filter(draft -> next.hasRange()).ifPresent(draft -> draft.endsBefore(next.first(), problems));
    }

    /** Ends the section that is open. */
    void closeSection() {
        decide(section.filter(draft -> draft.isShort(metre())).isPresent());
        section.filter(draft -> draft.isEmpty() && draft.isBracketed()).ifPresent(draft -> draft.empty(problems));
        section.filter(draft -> !draft.isEmpty()).ifPresent(draft -> {
            draft.check(problems);
            Section done = draft.section(figures, metre());
            if (draft.isWhole() && !draft.isShort(metre())) {
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

    /** Counts before section 1, 2, 3 ... and behind the last one that is closed. */
    List<Integer> starts() {
        List<Integer> starts = new ArrayList<>(List.of(0));
        for (Section each : parts.sections()) {
            starts.add(starts.get(starts.size() - 1) + each.length());
        }
        return starts;
    }

    /** The same, and behind the one that is open. */
    List<Integer> startsSoFar() {
        List<Integer> starts = starts();
        section.filter(draft -> !tags.isOpen() && !draft.isEmpty())
                .ifPresent(draft -> starts.add(starts.get(starts.size() - 1) + draft.length()));
        return starts;
    }

    /** Whether enough of the lines was understood. */
    boolean areUnderstood() {
        return understoodLines > 0 && understoodLines * 3 >= countLines;
    }

    Metre metre() {
        List<Integer> lengths = new ArrayList<>(parts.lengths());
        section.ifPresent(draft -> lengths.add(draft.length()));
        long sixes = lengths.stream()
                .filter(length -> length == 3 || (length % 6 == 0 && length % 8 != 0))
                .count();
        long eights = lengths.stream()
                .filter(length -> length % 4 == 0 && length % 6 != 0)
                .count();
        return waltz || sixes > eights ? Metre.SIXES : Metre.EIGHTS;
    }

    /** Where the weight is before the first step. */
    Weight firstWeight() {
        return footing.start();
    }

    List<Doubt> doubts() {
        return doubts;
    }

    List<ClockMark> marks() {
        return marks;
    }
}
