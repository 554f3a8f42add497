package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.EasyOption;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Weight;
import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the easier ways that a sheet offers, and the counts that each is for: those that it names; else those of its line,
 * of the line with the same footnote mark, or of the last line of steps above it. What it says is read as steps of these
 * counts, or of the last of them; where it tells none, its words are kept.
 */
final class EasyOptions {
    /** An option for more counts would be a dance of its own. */
    private static final int LONGEST = 16;

    private static final String MARKS = "*\u2020\u2021\u00b9\u00b2\u00b3";

    private final Dance dance;
    private final List<SheetLine> lines;

    private EasyOptions(Dance dance, List<SheetLine> lines) {
        this.dance = dance;
        this.lines = lines;
    }

    /** A dance with the options of its sheet. */
    static Dance with(Dance dance, List<SheetLine> lines) {
        List<EasyOption> options = new EasyOptions(dance, lines).all();
        return options.isEmpty() ? dance : dance.with(options);
    }

    /** Steps of one section. */
    private record Place(Section section, List<Step> steps) {
        int first() {
            return steps.get(0).count().number();
        }

        int last() {
            return steps.get(steps.size() - 1).count().number();
        }
    }

    private List<EasyOption> all() {
        int firstLine = dance.sections()
                .flatMap(section -> section.steps().stream())
                .mapToInt(Step::line)
                .min()
                .orElse(Integer.MAX_VALUE);
        List<EasyOption> options = new ArrayList<>();
        for (SheetLine line : lines) {
            if (line.number() >= firstLine) {
                for (OptionWords words : OptionWords.of(line.text())) {
                    place(line, words).map(place -> option(place, words, line)).ifPresent(options::add);
                }
            }
        }
        return options;
    }

    private Optional<Place> place(SheetLine line, OptionWords words) {
        Optional<Place> near = danced(line.number()).or(() -> withMarkOf(line)).or(() -> above(line.number()));
        if (words.first().isEmpty()) {
            return NamedRun.of(dance, words.replaced(), line.number())
                    .map(run -> new Place(run.section(), run.steps()))
                    .or(() -> near);
        }
        Optional<Section> named = words.section().isPresent()
                ? dance.parts().get(0).sections().stream()
                        .skip(words.section().getAsInt() - 1L)
                        .findFirst()
                : near.map(Place::section);
        return named.flatMap(section -> counts(section, words, 0)).or(() -> countsOfDance(words));
    }

    /** "Counts 25-28" of a dance whose sections have eight each. */
    private Optional<Place> countsOfDance(OptionWords words) {
        int before = 0;
        for (Section section : dance.parts().get(0).sections()) {
            if (words.first().getAsInt() <= before + section.length()) {
                return counts(section, words, before);
            }
            before += section.length();
        }
        return Optional.empty();
    }

    /** {@code before}: counts that the words count and the section does not. */
    private static Optional<Place> counts(Section section, OptionWords words, int before) {
        List<Step> steps = section.steps().stream()
                .filter(step -> step.count().number() + before >= words.first().getAsInt()
                        && step.count().number() + before <= words.last().getAsInt())
                .toList();
        return place(section, steps);
    }

    /** The steps that stand on a line. */
    private Optional<Place> danced(int line) {
        return dance.sections()
                .flatMap(section ->
                        place(
                                section,
                                section.steps().stream()
                                        .filter(step -> step.line() == line)
                                        .toList())
                                .stream())
                .findFirst();
    }

    private static Optional<Place> place(Section section, List<Step> steps) {
        return steps.isEmpty() ? Optional.empty() : Optional.of(new Place(section, steps));
    }

    private Optional<Place> withMarkOf(SheetLine line) {
        String text = line.text().strip();
        if (text.isEmpty() || MARKS.indexOf(text.charAt(0)) < 0) {
            return Optional.empty();
        }
        int end = 0;
        while (end < text.length() && MARKS.indexOf(text.charAt(end)) >= 0) {
            end++;
        }
        String mark = text.substring(0, end);
        return lines.stream()
                .filter(other -> other.number() != line.number() && other.text().contains(mark))
                .flatMap(other -> danced(other.number()).stream())
                .findFirst();
    }

    private Optional<Place> above(int line) {
        return dance.sections()
                .flatMap(section -> section.steps().stream())
                .map(Step::line)
                .filter(number -> number < line)
                .max(Comparator.naturalOrder())
                .flatMap(this::danced);
    }

    private EasyOption option(Place place, OptionWords words, SheetLine line) {
        boolean isTold = words.first().isPresent();
        for (int first : isTold ? List.of(Math.max(1, place.first())) : beginnings(place, line)) {
            List<Step> steps = read(place, first, words.words());
            if (!steps.isEmpty()) {
                List<Step> written = steps.stream()
                        .map(step -> step.writtenAt(line.number(), words.column() + 1))
                        .toList();
                return new EasyOption(place.section().name(), first, place.last(), words.words(), written);
            }
        }
        return new EasyOption(
                place.section().name(), Math.max(1, place.first()), place.last(), words.words(), List.of());
    }

    /** The counts of the place, or the last of them; below the steps it may be for more than the last line. */
    private static List<Integer> beginnings(Place place, SheetLine line) {
        int earliest = Math.max(1, place.last() - LONGEST + 1);
        int first = Math.max(earliest, place.first());
        List<Integer> all = new ArrayList<>();
        IntStream.rangeClosed(first, place.last()).forEach(all::add);
        if (place.steps().stream().noneMatch(step -> step.line() == line.number())) {
            IntStream.range(earliest, first)
                    .boxed()
                    .sorted(Comparator.reverseOrder())
                    .forEach(all::add);
        }
        return all;
    }

    /** The words as the steps of these counts; none where they are no steps, or not so many. */
    private List<Step> read(Place place, int first, String words) {
        String counts = first == place.last() ? String.valueOf(first) : first + "-" + place.last();
        SheetLine line = new SheetLine(1, counts + " " + words);
        Problems found = new Problems("option");
        return CountGroup.read(line.text())
                .map(group -> new LineReader(found, new Footing(weightBefore(place, first)))
                        .read(line, group, group.counts()))
                .filter(read -> read.understood() && !read.doubtful())
                .filter(read -> found.all().stream().allMatch(problem -> problem.severity() == Problem.Severity.NOTE))
                .map(LineReader.Result::steps)
                .filter(steps -> fill(steps, first, place.last()))
                .filter(steps -> begins(steps, weightBefore(place, first)))
                .orElse(List.of());
    }

    private Weight weightBefore(Place place, int first) {
        Weight before = dance.header().startWeight();
        for (Section section : dance.sections().toList()) {
            for (Step step : section.steps()) {
                if (section.name().equals(place.section().name())
                        && step.count().number() >= first) {
                    return before;
                }
                before = step.weightAfter();
            }
        }
        return before;
    }

    /** An option that begins with the foot that bears the weight is for other counts. */
    private static boolean begins(List<Step> steps, Weight before) {
        return steps.stream()
                .filter(step -> step.foot().isPresent())
                .findFirst()
                .filter(step -> before.isOn(step.foot().get()) && step.action().needsFreeFoot())
                .isEmpty();
    }

    /** Whether there is a step on each whole count, and none elsewhere. */
    private static boolean fill(List<Step> steps, int first, int last) {
        long whole = steps.stream()
                .filter(step -> step.count().isWhole())
                .map(step -> step.count().number())
                .distinct()
                .count();
        return whole == last - first + 1
                && steps.stream()
                        .allMatch(step ->
                                step.count().number() >= first && step.count().number() <= last);
    }
}
