package cuelead.dance;

import java.util.List;

/**
 * "8&1": a section whose last step is the first count of the next one, as nightclub and cha-cha sheets write it. Such a
 * section keeps its ninth count, and the next one begins with its second.
 */
public final class RunOver {
    private RunOver() {}

    /** Counts of the next section that the last of these has danced already: 1 or 0. */
    public static int behind(List<Section> sections, Metre metre) {
        int taken = 0;
        for (Section section : sections) {
            boolean over = (section.length() + taken) % metre.countsInSection() == 1;
            taken = over && endsOnFrom(section.steps(), section.length()) ? 1 : 0;
        }
        return taken;
    }

    /** Whether the last of these steps stands on this count and the one before it on the split of the count before. */
    public static boolean endsOnFrom(List<Step> steps, int count) {
        if (steps.size() < 2) {
            return false;
        }
        Count last = steps.get(steps.size() - 1).count();
        Count before = steps.get(steps.size() - 2).count();
        return last.equals(Count.on(count)) && !before.isWhole() && before.number() == count - 1;
    }

    /** Length of one of these as the bars go: what a section dances of the next one is counted to that. */
    public static int countsInBars(List<Section> sections, int index, Metre metre) {
        int above = behind(sections.subList(0, index), metre);
        return sections.get(index).length() + above - behind(sections.subList(0, index + 1), metre);
    }
}
