package cuelead.sheet;

import cuelead.dance.Count;
import cuelead.dance.Step;
import cuelead.dance.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Steps that are danced instead of others before a restart: "replace counts 7-8 with stomp L (7), hold (8)", "replace
 * count 16 with a touch".
 *
 * @param counts as the sheet numbers them
 * @param prose  the steps
 */
record StepChange(List<Count> counts, String prose) {
    StepChange {
        counts = List.copyOf(counts);
    }

    /** Steps behind the first so many counts of a wall, with the counts that they tell, else with those that they take. */
    static Optional<StepChange> behind(int place, String prose) {
        StepChange told = of(List.of(), prose);
        List<Phrase> phrases = LineFit.phrases(told.prose());
        if (!LineFit.areReadable(phrases)) {
            return Optional.empty();
        }
        Optional<StepChange> counted =
                Optional.of(told).filter(change -> !change.counts().isEmpty());
        return counted.or(() -> CountGroup.read(UsualCounts.of(phrases, place + 1))
                        .map(group -> new StepChange(group.counts(), told.prose())))
                .filter(change -> change.counts().get(0).number() == place + 1 && change.fits());
    }

    /** Steps on the last counts up to this one. */
    static Optional<StepChange> upTo(int last, String prose) {
        String steps = of(List.of(), prose).prose();
        List<Phrase> phrases = LineFit.phrases(steps);
        int length = LineFit.areReadable(phrases) ? UsualCounts.length(phrases) : 0;
        return length == 0 || length > last ? Optional.empty() : behind(last - length, steps);
    }

    /** Whether its steps are understood and fill its counts. */
    boolean fits() {
        List<Phrase> phrases = LineFit.phrases(prose);
        return LineFit.areReadable(phrases) && Fitting.of(phrases, counts).isPresent();
    }

    /** Counts that stand in the steps tell more than those of the steps that they replace. */
    static StepChange of(List<Count> replaced, String prose) {
        String steps = LEADING.matcher(prose.strip()).replaceFirst("");
        List<CountPlaces.Counted> counted = CountPlaces.of(steps, 0);
        List<Count> told =
                counted.stream().flatMap(each -> each.group().counts().stream()).toList();
        return told.isEmpty()
                ? new StepChange(replaced, withoutCounts(steps))
                : new StepChange(
                        told,
                        withoutCounts(counted.stream()
                                .map(each -> steps.substring(each.from(), each.to()))
                                .collect(Collectors.joining(" "))));
    }

    private static final Pattern LEADING = Pattern.compile("^[\\s:]+");

    /** "LF step fwd (7), RF touch (8)": the counts are known already. */
    private static String withoutCounts(String prose) {
        return prose.replaceAll("\\(\\s*[0-9&a ,-]+\\)", " ")
                .replaceAll("[\"\u201c\u201d]", " ")
                .replaceAll("^[\\s:]+", "");
    }

    /** Its steps as a count line of their own; empty where they are not understood. */
    Optional<SheetLine> asLine(SheetLine line) {
        int first = counts.get(0).number();
        String text = first + (last() > first ? "-" + last() : "") + " " + prose;
        return line.fit().fits(text) ? Optional.of(new SheetLine(line.number(), text)) : Optional.empty();
    }

    /** The last count, for which the first is not enough. */
    int last() {
        return counts.get(counts.size() - 1).number();
    }

    /** Its steps, numbered through the dance with {@code before} counts before count 1 of the sheet's numbers. */
    List<Step> steps(int before, Weight weight, int line) {
        if (!fits()) {
            return List.of();
        }
        List<Phrase> phrases = LineFit.phrases(prose);
        Optional<Fitting.Fit> fit = Fitting.of(phrases, counts);
        MoveMaker maker = new MoveMaker(Problems.unheard(), line, new Footing(weight));
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < phrases.size(); i++) {
            for (Move move : maker.moves(phrases.get(i), fit.get().sizes().get(i))) {
                Count count = fit.get()
                        .counts()
                        .get(Math.min(steps.size(), fit.get().counts().size() - 1));
                steps.add(LineReader.step(move, new Count(count.number() + before, count.split()), line));
            }
        }
        return steps;
    }
}
