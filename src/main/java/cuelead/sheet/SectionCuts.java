package cuelead.sheet;

import cuelead.dance.Count;

/** Knows where a section ends in a sheet that counts on through the dance, or begins at 1 again, without a heading. */
final class SectionCuts {
    private final int countsInSection;
    private int base;
    private int last;
    private boolean bracketed;
    /** Whether the heading of the section says what is danced in it. */
    private boolean titled;

    private boolean fresh = true;
    /** Whether the last count is the first of the next section, danced on from an "and". */
    private boolean over;
    /** Sections that began with 1 again behind a whole one; of so many, a count behind the last one is one too many. */
    private int begunAnew;

    private static final int MANNER = 2;

    SectionCuts(int countsInSection) {
        this.countsInSection = countsInSection;
    }

    void head(SectionHead head) {
        bracketed = head.hasRange();
        titled =
                !head.heading().isEmpty() && (head.hasRange() || head.numbered() || DanceLine.isDanced(head.heading()));
        base = last;
        fresh = true;
    }

    void tag() {
        bracketed = true;
        titled = false;
        base = 0;
        last = 0;
        fresh = true;
    }

    private static int first(CountGroup group) {
        Count first = group.counts().get(0);
        return first.isWhole() ? first.number() : first.number() + 1;
    }

    /** Whether a new section begins with these counts though no heading stands above them. */
    boolean beginsSection(CountGroup group) {
        int first = first(group);
        int written = last - base;
        boolean whole = written >= countsInSection && written % countsInSection == 0;
        boolean runsOn = first == last + 1;
        boolean again = first == 1 && last >= countsInSection;
        boolean goesOn = over && (first == 2 || runsOn);
        return !fresh
                && !bracketed
                && ((whole && runsOn && begunAnew < MANNER) || (again && last % countsInSection == 0) || goesOn);
    }

    /** Whether a heading with its title stands above, and no counts below it yet. */
    boolean isTitled() {
        return fresh && titled;
    }

    /** Whether the section that is open has counts, and more of them are to come. */
    boolean isOpen() {
        return !fresh && (last - base) % countsInSection != 0;
    }

    /** The count behind the last one, as the section numbers them: from 1 where it begins. */
    int next() {
        return fresh ? 1 : last + 1;
    }

    int countsInSection() {
        return countsInSection;
    }

    /** Whether counts from here on may be those of a new section, perhaps behind counts that are left out. */
    boolean mayBegin(int first) {
        boolean runsOn = first == last + 1 && (over || last % countsInSection == 0);
        boolean leftOut = first > last + 1 && last > 0 && first - last <= countsInSection;
        return first == 1 || runsOn || (over && first == 2) || (leftOut && (first - 1) % countsInSection == 0);
    }

    void count(CountGroup group) {
        int first = first(group);
        begunAnew += fresh && first == 1 && last == countsInSection ? 1 : 0;
        begunAnew = last > countsInSection ? 0 : begunAnew;
        if (fresh || beginsSection(group)) {
            base = first - 1;
        }
        fresh = false;
        over = group.runsOver(countsInSection);
        last = Math.max(group.counts().get(group.counts().size() - 1).number(), first);
    }
}
