package cuelead.sheet;

import cuelead.dance.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Lays out a sheet as the grammar reads it: one line a group of counts, its counts before its steps, whatever the
 * style of its author; headings as headings; lines that were broken put together again.
 */
final class SheetLayout {
    private final List<Row> rows;
    private final List<LaidLine> laid = new ArrayList<>();
    private final SectionCuts cuts;
    private int bodyStart;
    /** Whether the last line that was laid is a count line that may go on below. */
    private boolean open;

    private boolean inTag;
    /** Whether the dance, or its tag, is told to the end. */
    private boolean over;
    /** Counts of the dance so far. */
    private int written;

    private SheetLayout(List<Row> rows, int countsInSection) {
        this.rows = rows;
        this.cuts = new SectionCuts(countsInSection);
    }

    /**
     * The lines in the order in which they are read.
     *
     * @param header how many of them stand above the dance
     */
    record Laid(List<LaidLine> lines, int header) {}

    /** Laid out in the manners in which the sheet is written. */
    static Laid of(List<SheetLine> lines) {
        return Manners.chosen(lines);
    }

    /** Laid out as the lines stand. */
    static Laid laid(List<SheetLine> lines) {
        return laid(lines, new LayoutFit(Integer.MAX_VALUE)).orElseThrow();
    }

    /** The same, given up where it makes too little sense. */
    static Optional<Laid> laid(List<SheetLine> lines, LayoutFit fit) {
        List<SheetLine> parted = TagHeads.told(HeadedSteps.parted(BrokenHeadings.joined(HeaderValues.joined(lines))));
        List<Row> rows = BareCounts.joined(ColumnsApart.beside(settled(rows(parted))));
        boolean waltz = lines.stream()
                .anyMatch(line -> line.text().toLowerCase(Locale.ROOT).contains("waltz"));
        SheetLayout layout = new SheetLayout(rows, waltz ? 6 : 8);
        boolean whole = layout.lay(fit);
        return whole
                ? Optional.of(new Laid(layout.laid, Math.min(layout.bodyStart, layout.laid.size())))
                : Optional.empty();
    }

    private static List<Row> rows(List<SheetLine> lines) {
        List<Row> rows = new ArrayList<>();
        CountHabit habit = new CountHabit();
        int last = 0;
        boolean apart = false;
        for (SheetLine line : lines) {
            if (line.isBlank() || PageCrumbs.isCrumb(line)) {
                apart |= line.isBlank();
                continue;
            }
            Row row = habit.kept(Row.of(line, last, apart), last);
            last = row.isCounted() ? row.lastCount() : row.kind() == LineKind.SECTION ? 0 : last;
            rows.add(row);
            apart = false;
        }
        return rows;
    }

    private static List<Row> settled(List<Row> rows) {
        List<Row> settled = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Optional<Row> below = i + 1 < rows.size() ? Optional.of(rows.get(i + 1)) : Optional.empty();
            settled.add(rows.get(i).settled(below));
        }
        return settled;
    }

    /** Whether it was laid to its end. */
    private boolean lay(LayoutFit fit) {
        bodyStart = new BodyStart(rows).index();
        for (int i = 0; i < rows.size() && !fit.isBeyond(laid, bodyStart); i++) {
            if (i < bodyStart) {
                laid.add(LaidLine.whole(rows.get(i).line()));
            } else {
                i = body(i);
            }
        }
        return !fit.isBeyond(laid, bodyStart);
    }

    private Optional<Row> below(int i) {
        return i + 1 < rows.size() ? Optional.of(rows.get(i + 1)) : Optional.empty();
    }

    /** Lays the row, and gives the index of the last one that was laid with it. */
    private int body(int i) {
        Row row = rows.get(i);
        if (row.isCounted() && row.isHeadingOf(below(i)) && !inTag) {
            heading(row);
        } else if (row.isCounted()) {
            counted(row);
        } else if (row.kind() == LineKind.OTHER || row.kind() == LineKind.NOTE) {
            return words(i);
        } else {
            whole(i);
        }
        return i;
    }

    private void whole(int i) {
        Row row = rows.get(i);
        if (isSaidBetween(i)) {
            laid.add(LaidLine.whole(row.line()).as(LineKind.NOTE));
            return;
        }
        boolean goesOn = row.kind() != LineKind.SECTION && row.kind() != LineKind.RESTART;
        boolean head = row.kind() == LineKind.SECTION || row.kind() == LineKind.TAG;
        boolean whole = row.kind() == LineKind.TAG
                && OneLineTag.read(row.line()).isPresent()
                && below(i).filter(Row::isCounted).isEmpty();
        over = whole || (!head && (over || row.kind() == LineKind.REPEAT || (inTag && row.kind() == LineKind.RESTART)));
        inTag = row.kind() == LineKind.TAG || (inTag && goesOn);
        if (row.kind() == LineKind.SECTION) {
            cuts.head(SectionHead.read(row.line().text()).orElseThrow());
        } else if (row.kind() == LineKind.TAG) {
            cuts.tag();
        }
        laid.add(LaidLine.whole(row.line()));
        open = false;
        if (row.kind() == LineKind.SECTION && isFollowedByNoCounts(i)) {
            headingAsSteps(row);
        }
    }

    /** "Enjoy!" among the counts of a section that go on below. */
    private boolean isSaidBetween(int i) {
        LineKind kind = rows.get(i).kind();
        boolean none =
                kind == LineKind.RESTART && RestartReader.saysNone(rows.get(i).line());
        boolean ends = none || kind == LineKind.REPEAT || kind == LineKind.ENDING;
        boolean goesOn = below(i).filter(Row::isCounted)
                .filter(row -> row.firstCount() == cuts.next())
                .isPresent();
        return ends && !inTag && goesOn && (cuts.isOpen() || cuts.isTitled());
    }

    /** "[9-16] Heading" without its brackets. */
    private void heading(Row row) {
        CountPlaces.Counted counted = row.counted().get(0);
        String written = counted.group().written(row.line().text());
        int first = counted.group().counts().get(0).number();
        int last = row.lastCount();
        laid.add(new LaidLine.Builder()
                .add("[" + first + "-" + last + "]", row.line(), counted.group().column() - 1)
                .add(row.line(), counted.from(), counted.to())
                .line()
                .as(LineKind.SECTION));
        cuts.head(SectionHead.read("[" + first + "-" + last + "]").orElseThrow());
        open = written.isEmpty();
    }

    private void counted(Row written) {
        if (open) {
            SheetLine above = written.leadIn();
            Optional<LaidLine> both = Continuation.completed(laid.get(laid.size() - 1), above);
            both.ifPresent(line -> laid.set(laid.size() - 1, line));
        }
        Optional<HeadInFront> head = HeadInFront.of(written);
        Row row = head.map(HeadInFront::row).orElse(written);
        head.filter(found -> !inTag && cuts.mayBegin(row.firstCount())).ifPresent(found -> {
            SheetLine words = row.line().part(found.from(), found.to());
            cuts.head(SectionHead.words(words.text().strip()));
            laid.add(LaidLine.whole(words).as(LineKind.SECTION));
        });
        for (LaidLine line : Merged.lines(row)) {
            CountGroup.read(line.text()).ifPresent(group -> begin(group, row));
            laid.add(line);
        }
        open = true;
    }

    private void begin(CountGroup group, Row row) {
        if (cuts.beginsSection(group) && !inTag) {
            laid.add(new LaidLine.Builder().add("", row.line(), 0).line().as(LineKind.SECTION));
        }
        cuts.count(group);
        written += (int) group.counts().stream().filter(Count::isWhole).count();
    }

    /** A line without counts: it goes on from the line above, or leads to the one below, or is a heading, or a note. */
    private int words(int i) {
        Row row = rows.get(i);
        boolean repeatsTag = inTag && TagTimes.below(row.line()) > 1;
        if (repeatsTag || SequenceReader.isNote(row.line())) {
            laid.add(LaidLine.whole(row.line()).as(LineKind.NOTE));
            return i;
        }
        boolean heads = row.kind() == LineKind.OTHER && row.apart() && isHeading(i);
        if (open && LoneAnd.isLone(row)) {
            Optional<LaidLine> both = LoneAnd.joined(laid.get(laid.size() - 1), row);
            if (both.isPresent()) {
                laid.set(laid.size() - 1, both.get());
                return i;
            }
        }
        if (open && !heads && goesOn(row)) {
            LaidLine above = laid.remove(laid.size() - 1);
            laid.add(Continuation.joined(above, row.line()));
            return i;
        }
        Optional<Row> below = below(i).filter(Row::countsBehind);
        if (!heads && row.kind() == LineKind.OTHER && below.isPresent() && Continuation.leadsTo(row, below.get())) {
            LaidLine first = LaidRow.line(below.get(), below.get().counted().get(0));
            cuts.count(below.get().counted().get(0).group());
            laid.add(Continuation.led(row.line(), first));
            open = true;
            return i + 1;
        }
        open = false;
        if (row.kind() == LineKind.NOTE || !isHeading(i)) {
            laid.add(uncounted(row, i));
        } else {
            cuts.head(SectionHead.words(row.line().text().strip()));
            laid.add(LaidLine.whole(row.line()).as(LineKind.SECTION));
        }
        return i;
    }

    private boolean goesOn(Row row) {
        return Continuation.goesOn(laid.get(laid.size() - 1), row);
    }

    /** A line of words above counts that begin a section. */
    private boolean isHeading(int i) {
        Optional<Row> below = below(i);
        return !inTag
                && !cuts.isTitled()
                && below.filter(Row::isCounted)
                        .filter(row -> cuts.mayBegin(row.firstCount()))
                        .isPresent();
    }

    /** A line that is danced without counts takes those that it usually has; a note is none. */
    private LaidLine uncounted(Row row, int i) {
        Optional<RepeatCall> call = RepeatCall.read(row.line().text(), 0);
        if (call.filter(again -> again.isOfAll(written)).isPresent()) {
            return LaidLine.whole(row.line()).as(LineKind.REPEAT);
        }
        boolean repeat = call.isPresent();
        boolean alone = !over && !hasCountsInSection(i);
        if (row.kind() == LineKind.OTHER && (repeat || alone)) {
            int first = cuts.next();
            int room = cuts.countsInSection() - (first - 1) % cuts.countsInSection();
            Optional<LaidLine> line = Uncounted.line(row.line(), 0, repeat ? room : 0, first);
            line.flatMap(found -> CountGroup.read(found.text())).ifPresent(cuts::count);
            return line.orElse(LaidLine.whole(row.line()));
        }
        return LaidLine.whole(row.line());
    }

    /** Whether the author counts the lines of this section. */
    private boolean hasCountsInSection(int i) {
        int first = i;
        while (first > bodyStart && !isHead(first - 1)) {
            first--;
        }
        for (int at = first; at < rows.size() && !isHead(at); at++) {
            if (rows.get(at).isCounted()) {
                return true;
            }
        }
        return false;
    }

    private boolean isHead(int at) {
        LineKind kind = rows.get(at).kind();
        return kind == LineKind.SECTION || kind == LineKind.TAG;
    }

    private boolean isFollowedByNoCounts(int i) {
        for (int next = i + 1; next < rows.size(); next++) {
            Row row = rows.get(next);
            if (row.isCounted()) {
                return false;
            }
            if (row.kind() != LineKind.NOTE && row.kind() != LineKind.OTHER) {
                boolean head = row.kind() == LineKind.SECTION || row.kind() == LineKind.TAG;
                return head || below(next).filter(Row::isCounted).isEmpty();
            }
            if (row.kind() == LineKind.OTHER) {
                return false;
            }
        }
        return true;
    }

    /** A section of which only the heading is written: it names the figures that are danced. */
    private void headingAsSteps(Row row) {
        SectionHead head = SectionHead.read(row.line().text()).orElseThrow();
        int from = Math.max(0, row.line().text().lastIndexOf(head.heading()));
        int length = head.hasRange() ? head.length() : cuts.countsInSection();
        Optional<LaidLine> steps = head.opensPart() || head.heading().isEmpty()
                ? Optional.empty()
                : Uncounted.line(row.line(), from, length, 1);
        steps.flatMap(found -> CountGroup.read(found.text())).ifPresent(cuts::count);
        steps.ifPresent(laid::add);
    }
}
