package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.Direction;
import cuelead.dance.Facing;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;

/** The sections of a part, a tag or an ending as they are written: bracket and heading, count lines, easy options. */
final class WrittenSections {
    private final Dance dance;
    private final WrittenCounts counts;
    /** It goes on from part to part. */
    private Footing footing;

    WrittenSections(Dance dance) {
        this.dance = dance;
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
        Facing facing = start;
        int before = 0;
        for (Section section : part.sections()) {
            facing = facing.after(section.netTurn());
            lines.add("");
            lines.add(letter + "[" + (before + 1) + "-" + (before + section.length()) + "] " + section.heading());
            lines.addAll(lines(section, facing));
            before += section.length();
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
        return lines(section, start.after(section.netTurn()));
    }

    private List<String> lines(Section section, Facing end) {
        boolean turned = section.steps().stream().anyMatch(step -> !step.turn().isNone());
        String clock = turned ? " (" + end.clock() + ")" : "";
        List<String> written = new ArrayList<>();
        List<List<Step>> lines = counts.lines(section.steps());
        for (int i = 0; i < lines.size(); i++) {
            List<Step> line = lines.get(i);
            written.add(WrittenCounts.labels(line) + "  " + String.join(", ", phrases(line))
                    + (i == lines.size() - 1 ? clock : "") + calls(section, line));
        }
        dance.options().stream()
                .filter(option -> option.section().equals(section.name()))
                .forEach(option ->
                        written.add("(Easy option for counts " + option.counts() + ": " + option.words() + ")"));
        return written;
    }

    private List<String> phrases(List<Step> line) {
        List<String> phrases = new ArrayList<>();
        int from = 0;
        while (from < line.size()) {
            int end = continued(line, from);
            phrases.add(StepWords.of(line.subList(from, end), footing));
            from = end;
        }
        return phrases;
    }

    /** Index behind the steps that go on from this one. */
    private static int continued(List<Step> line, int from) {
        int end = from + 1;
        while (end < line.size() && line.get(end).direction() == Direction.CONT) {
            end++;
        }
        return end;
    }

    private static String calls(Section section, List<Step> line) {
        List<String> calls = new ArrayList<>();
        for (Step step : line) {
            section.ownCalls().stream()
                    .filter(call -> call.count().equals(step.count()))
                    .findFirst()
                    .ifPresent(call -> calls.add(call.isSilence() ? "-" : call.words()));
        }
        return calls.isEmpty() ? "" : "  \"" + String.join(", ", calls) + "\"";
    }
}
