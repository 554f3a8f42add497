package cuelead.sheet;

import cuelead.dance.Counts;
import cuelead.dance.Figure;
import java.util.List;

/** The counts that phrases take by themselves, as a sheet writes them: "1-4", "3&4", "1&2,3&4". */
final class UsualCounts {
    private final StringBuilder labels = new StringBuilder();
    private boolean whole = true;
    private int next;

    private UsualCounts(int first) {
        next = first;
    }

    /** As written, beginning with this count. */
    static String of(List<Phrase> phrases, int first) {
        UsualCounts counts = new UsualCounts(first);
        counts.all(phrases);
        boolean one = counts.next == first + 1;
        return counts.whole ? first + (one ? "" : "-" + (counts.next - 1)) : counts.labels.toString();
    }

    /** Whole counts. */
    static int length(List<Phrase> phrases) {
        UsualCounts counts = new UsualCounts(0);
        counts.all(phrases);
        return counts.next;
    }

    private void all(List<Phrase> phrases) {
        for (int i = 0; i < phrases.size(); i++) {
            add(phrases.get(i), Fitting.usual(phrases, i));
        }
    }

    private void add(Phrase phrase, int usual) {
        boolean cut = usual < Fitting.usual(phrase);
        if (phrase.figure().isEmpty() || cut) {
            for (int i = 0; i < usual; i++) {
                begin().append(next++);
            }
            return;
        }
        for (int i = 0; i < phrase.repeats(); i++) {
            add(phrase.figure().get().row().figure().pattern());
        }
    }

    private void add(List<Figure.Beat> pattern) {
        begin();
        int beats = 0;
        for (int i = 0; i < pattern.size(); i++) {
            Counts offset = pattern.get(i).offset();
            int number = (int) Math.floorDiv(offset.ticks(), Counts.TICKS_PER_COUNT);
            long part = Math.floorMod(offset.ticks(), Counts.TICKS_PER_COUNT);
            whole &= part == 0;
            boolean afterWhole =
                    i > 0 && part == 0 && pattern.get(i - 1).offset().ticks() % Counts.TICKS_PER_COUNT == 0;
            labels.append(afterWhole ? "," : "");
            labels.append(
                    part == 0 ? String.valueOf(next + number) : part * 4 == Counts.TICKS_PER_COUNT * 3 ? "a" : "&");
            beats = Math.max(beats, number + 1);
        }
        next += beats;
    }

    private StringBuilder begin() {
        return labels.append(labels.isEmpty() ? "" : ",");
    }
}
