package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.Facing;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Weight;
import cuelead.sheet.WrittenCounts.Run;
import java.util.ArrayList;
import java.util.List;

/** The sections of a part, a tag or an ending as they are written: bracket and heading, count lines, easy options. */
final class WrittenSections {
    private final Dance dance;
    private final List<Section> all;
    private final List<Unread> unread;
    private final WrittenCounts counts;
    /** It goes on from part to part. */
    private Footing footing;

    /** {@code unread} are the words of the sheet that were not understood. */
    WrittenSections(Dance dance, List<Unread> unread) {
        this.dance = dance;
        this.unread = unread;
        all = UnreadPlaces.sections(dance);
        counts = new WrittenCounts(dance.header().metre());
        footing = new Footing(dance.header().startWeight());
    }

    /** What is written next begins so. */
    void standOn(Weight weight) {
        footing = new Footing(weight);
    }

    /** Those of a part: {@code letter} before each bracket, the dancers facing {@code start} before the first. */
    List<String> of(Part part, String letter, Facing start) {
        List<String> lines = new ArrayList<>();
        int before = 0;
        for (Section section : part.sections()) {
            int end = before + section.length();
            lines.add("");
            lines.add(letter + "[" + (before + 1) + "-" + end + "] " + section.heading());
            lines.addAll(lines(part, section, before, start));
            before = end;
        }
        return lines;
    }

    /** Those of a tag or an ending, whose own heading tells what they are: one that has no other name needs no bracket. */
    List<String> ofExtra(Part part, Facing start) {
        boolean isPlain =
                part.sections().size() == 1 && part.sections().get(0).heading().isEmpty();
        if (!isPlain) {
            return of(part, "", start);
        }
        Section section = part.sections().get(0);
        return lines(part, section, 0, start);
    }

    private List<String> lines(Part part, Section section, int before, Facing start) {
        List<Unread> here = unread.stream()
                .filter(each -> all.get(each.section()).equals(section))
                .toList();
        List<String> written = new ArrayList<>(leftOut(here, 0, 1));
        List<List<Run>> lines = counts.lines(WrittenCounts.runs(section.steps(), here));
        WrittenClocks clocks = new WrittenClocks(dance, part, before, start, isKnown(part, section));
        for (int i = 0; i < lines.size(); i++) {
            List<Run> line = lines.get(i);
            boolean isLast = i == lines.size() - 1;
            written.add(WrittenCounts.labels(line) + "  " + String.join(", ", phrases(line, clocks))
                    + (isLast ? clocks.behind(section) : "") + calls(section, line));
            int next =
                    isLast ? Integer.MAX_VALUE : lines.get(i + 1).get(0).first().number();
            written.addAll(leftOut(here, Math.max(1, line.get(0).first().number()), next));
        }
        dance.options().stream()
                .filter(option -> option.section().equals(section.name()))
                .forEach(option ->
                        written.add("(Easy option for counts " + option.counts() + ": " + option.words() + ")"));
        return written;
    }

    /** Whether all was understood in a part up to the end of a section. */
    private boolean isKnown(Part part, Section section) {
        return unread.stream()
                .map(each -> all.get(each.section()))
                .filter(part.sections()::contains)
                .allMatch(
                        each -> part.sections().indexOf(each) > part.sections().indexOf(section));
    }

    /** Lines that nobody dances, which stand behind one of these counts. */
    private static List<String> leftOut(List<Unread> unread, int from, int to) {
        return unread.stream()
                .filter(each -> each.actions() == 0
                        && each.at().number() >= from
                        && each.at().number() < to)
                .map(each -> NotUnderstood.written(each.words()))
                .toList();
    }

    private List<String> phrases(List<Run> line, WrittenClocks clocks) {
        List<String> phrases = new ArrayList<>();
        for (Run run : line) {
            String words = run.unread()
                    .map(Unread::words)
                    .map(NotUnderstood::written)
                    .orElseGet(() -> StepWords.of(run.steps(), footing));
            run.unread().ifPresent(ignored -> footing.lose());
            phrases.add(words + clocks.behind(run));
        }
        return phrases;
    }

    private static String calls(Section section, List<Run> line) {
        List<String> calls = new ArrayList<>();
        for (Step step : WrittenCounts.steps(line)) {
            section.ownCalls().stream()
                    .filter(call -> call.count().equals(step.count()))
                    .findFirst()
                    .ifPresent(call -> calls.add(call.isSilence() ? "-" : call.words()));
        }
        return calls.isEmpty() ? "" : "  \"" + String.join(", ", calls) + "\"";
    }
}
