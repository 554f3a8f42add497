package cuelead.sheet;

import cuelead.dance.OwnCall;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.report.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Writes a call of the user's own into a sheet: the quoted words behind the steps of its line, and no other character.
 * Sheets are written in so many ways that no rule tells where quotes belong; so they are put where they may belong, and
 * the sheet is read anew: where they then call what was wanted, and the dance is what it was, they stay.
 */
public final class OwnCallEdit {
    private static final String SILENCE = "-";
    /** Asks which steps quotes at a place are for. */
    private static final String PROBE = "\"cue\"";

    private final String text;
    private final StepPlace place;
    private final BiFunction<Section, Step, String> said;
    private final ReadSheet read;
    private final Section section;

    private OwnCallEdit(String text, ReadSheet read, StepPlace place, BiFunction<Section, Step, String> said) {
        this.text = text;
        this.read = read;
        this.place = place;
        this.said = said;
        section = place.sectionOf(read.dance().orElseThrow());
    }

    /**
     * The sheet with another call.
     *
     * @param text  of the sheet
     * @param place the step that is called
     * @param words what to say; {@code -} for silence; nothing = what the trade says
     * @param said  what the trade says for a step, which is written down where that step comes before the call in its
     *              quotes
     * @throws Refused when there is no such step, the words cannot stand in quotes, or the line of the step cannot be given any
     */
    public static String of(String text, StepPlace place, String words, BiFunction<Section, Step, String> said)
            throws Refused {
        ReadSheet read = reading(text);
        if (!read.dance().map(place::isIn).orElse(false)) {
            throw new Refused("The count that was to be called otherwise is not in the sheet any more.");
        }
        return new OwnCallEdit(text, read, place, said).with(wanted(words));
    }

    /** Empty where nothing of the user's own is wanted; words without any for silence. */
    private static Optional<String> wanted(String words) throws Refused {
        String call = Characters.plain(words).strip();
        if (call.isEmpty()) {
            return Optional.empty();
        }
        if (words.chars().anyMatch(c -> c == ',' || c == '\n' || Scanner.isQuote((char) c))) {
            throw new Refused("A call is written without commas and quotes; name the words alone, or - for silence.");
        }
        return Optional.of(call.equals(SILENCE) ? "" : call);
    }

    private String with(Optional<String> wanted) throws Refused {
        Step step = section.steps().get(place.step());
        for (QuotePlaces.Spot spot : QuotePlaces.of(text, step.line(), step.column())) {
            Optional<Integer> first = firstStepAt(spot);
            if (first.isPresent()) {
                List<Optional<String>> calls = calls(first.get(), spot.calls(), wanted);
                String edited = spot.with(text, written(first.get(), calls));
                if (isAsWanted(reading(edited), first.get(), calls)) {
                    return edited;
                }
            }
        }
        throw new Refused("A call of your own has no place at line " + step.line()
                + "; write these counts out on a line of their own, such as \"5-6 Step R to side, touch L\","
                + " and try again.");
    }

    private static ReadSheet reading(String sheet) {
        return SheetReader.read("", sheet);
    }

    /** The first step that quotes at a spot are for, where the step to be called may be one of theirs. */
    private Optional<Integer> firstStepAt(QuotePlaces.Spot spot) {
        Optional<Section> probed = reading(spot.with(text, PROBE))
                .dance()
                .filter(place::isIn)
                .map(place::sectionOf)
                .filter(other -> other.steps().size() == section.steps().size());
        for (int i = place.step(); i >= 0 && probed.isPresent(); i--) {
            Optional<String> own = own(probed.get(), i);
            if (own.isPresent() && own.get().equals("cue") && !own.equals(own(section, i))) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> own(Section section, int step) {
        return section.ownCalls().stream()
                .filter(call -> call.count().equals(section.steps().get(step).count()))
                .findFirst()
                .map(OwnCall::words);
    }

    /** The user's own calls of the quotes from their first step on, to the last one. */
    private List<Optional<String>> calls(int first, int before, Optional<String> wanted) {
        List<Optional<String>> calls = new ArrayList<>();
        int count = Math.max(before, place.step() - first + 1);
        for (int i = first; i < Math.min(first + count, section.steps().size()); i++) {
            calls.add(i == place.step() ? wanted : own(section, i));
        }
        while (!calls.isEmpty() && calls.get(calls.size() - 1).isEmpty()) {
            calls.remove(calls.size() - 1);
        }
        return calls;
    }

    private String written(int first, List<Optional<String>> calls) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < calls.size(); i++) {
            String call = calls.get(i).orElse(said(first + i));
            words.add(call.isEmpty() ? SILENCE : call);
        }
        return words.isEmpty() ? "" : "\"" + String.join(", ", words) + "\"";
    }

    /** What the trade says for a step. */
    private String said(int step) {
        Section without = new Section(
                section.name(),
                section.heading(),
                section.length(),
                section.steps(),
                section.figures(),
                List.of(),
                section.line());
        return said.apply(without, section.steps().get(step));
    }

    private boolean isAsWanted(ReadSheet edited, int first, List<Optional<String>> calls) {
        return edited.dance()
                .filter(after -> SameDance.but(read.dance().orElseThrow(), after, place.section()))
                .filter(after -> areCalled(place.sectionOf(after), first, calls))
                .filter(after -> SameDance.hasNoMoreProblems(read, edited))
                .isPresent();
    }

    /** Those of the quotes as wanted, all others of the section as before. */
    private boolean areCalled(Section after, int first, List<Optional<String>> calls) {
        for (int i = 0; i < section.steps().size(); i++) {
            boolean isInQuotes = i >= first && i < first + calls.size();
            Optional<String> before = i == place.step() ? Optional.empty() : own(section, i);
            Optional<String> expected =
                    isInQuotes ? Optional.of(calls.get(i - first).orElse(said(i))) : before;
            if (!own(after, i).equals(expected)) {
                return false;
            }
        }
        return true;
    }
}
