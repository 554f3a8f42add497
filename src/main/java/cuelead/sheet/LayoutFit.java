package cuelead.sheet;

import cuelead.dance.Count;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How little sense a layout of a sheet makes: lines that do not fit their counts, counts left out, a length not kept. It
 * follows the layout while that is made, so that one which makes too little sense is not made to its end.
 */
final class LayoutFit {
    private static final int NO_DANCE = 1000;
    private static final int MISFIT = 4;
    private static final int LONGEST_GAP = 8;
    /** The same for every length but the stated one: a header may be wrong, and then no reading comes nearer to it. */
    private static final int OTHER_TOTAL = 8;

    private static final int EIGHT = 8;
    private static final int SIX = 6;

    private int cost;
    private int last;
    /** Counts that the heading of the open section promises and that are still to come; 0 where it promises none. */
    private int due;

    private boolean over;
    private int written;
    private boolean inTag;
    /** The length in the header may then be that of the whole song. */
    private boolean inParts;

    private final int limit;
    /** Lines that are counted already, those of the header among them. */
    private int taken;

    /** @param limit the cost beyond which a layout is of no use */
    LayoutFit(int limit) {
        this.limit = limit;
    }

    /** Whether the cost is beyond the limit, whatever follows; the last of the lines may still change. */
    boolean isBeyond(List<LaidLine> laid, int header) {
        take(laid, header, laid.size() - 1);
        return cost > limit;
    }

    /** Of the whole layout: 0 where all lines fit; told exactly up to the limit. */
    int cost(SheetLayout.Laid laid) {
        take(laid.lines(), laid.header(), laid.lines().size());
        ends();
        return cost > limit ? cost : total(stated(laid.lines().subList(0, laid.header())));
    }

    private void take(List<LaidLine> laid, int header, int end) {
        taken = Math.max(taken, header);
        while (taken < end && cost <= limit) {
            add(laid.get(taken++));
        }
    }

    private static OptionalInt stated(List<LaidLine> header) {
        return header.isEmpty()
                ? OptionalInt.empty()
                : header.get(0)
                        .tried()
                        .statedCounts(header.stream().map(LaidLine::asRead).toList());
    }

    /** Whether far more lines fill their counts than do not: then they are counts, and what does not fit is a mistake. */
    static boolean isMostlyCounted(SheetLayout.Laid laid) {
        List<LaidLine> counted = laid.lines().stream()
                .skip(laid.header())
                .filter(line -> LineKind.of(line.asRead()) == LineKind.COUNTS)
                .toList();
        long fitting = counted.stream().filter(LaidLine::fits).count();
        return fitting >= FEWEST_COUNTED && fitting > (counted.size() - fitting) * 2;
    }

    private static final int FEWEST_COUNTED = 6;

    private void add(LaidLine laid) {
        SheetLine line = laid.asRead();
        switch (LineKind.of(line)) {
            case COUNTS -> counts(laid);
            case OTHER -> cost += DanceLine.mayBeDanced(line) ? MISFIT : 0;
            case SECTION -> section(line);
            case TAG -> {
                ends();
                inTag = true;
            }
            default -> {
                // nothing that is danced
            }
        }
    }

    private void section(SheetLine line) {
        Optional<SectionHead> head = SectionHead.read(line.text());
        ends();
        inTag = false;
        inParts |= head.filter(found -> !found.part().isEmpty()).isPresent();
        last = head.filter(SectionHead::hasRange)
                .map(found -> found.first() - 1)
                .orElse(last);
        due = head.filter(SectionHead::hasRange).map(SectionHead::length).orElse(0);
    }

    /** A section that breaks off before the counts of its heading are filled. */
    private void ends() {
        cost += Math.min(LONGEST_GAP, Math.max(0, due));
        due = 0;
    }

    private void counts(LaidLine line) {
        CountGroup group = CountGroup.read(line.text()).orElseThrow();
        Count first = group.counts().get(0);
        int number = first.isWhole() ? first.number() : first.number() + 1;
        int whole = (int) group.counts().stream().filter(Count::isWhole).count();
        boolean fits = line.fits() && !Lengths.contradict(line.text(), group.counts());
        cost += fits || RepeatCall.read(line.text(), group.end()).isPresent() ? 0 : MISFIT;
        boolean follows = number == last + 1 || number == 1 || !first.isWhole() || (over && number == 2);
        cost += follows ? 0 : Math.min(LONGEST_GAP, Math.abs(number - last - 1));
        over = group.runsOver(EIGHT) || group.runsOver(SIX);
        last = Math.max(1, group.counts().get(group.counts().size() - 1).number());
        written += inTag ? 0 : whole;
        due -= whole;
    }

    private int total(OptionalInt stated) {
        boolean kept = stated.isEmpty() || inParts || stated.getAsInt() == written;
        return written == 0 ? NO_DANCE : cost + (kept ? 0 : OTHER_TOTAL);
    }
}
