package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Steps behind the place where a wall stops, before the dance begins again: "dance to count 14, then rock R back (15),
 * recover L (16) and restart".
 */
final class AddedSteps {
    private static final Pattern PLACE = Pattern.compile(
            "\\b(?:counts?|cts?|beats?)\\s+(?:1\\s*-\\s*)?(\\d{1,3})\\b(?!\\s*-)"
                    + "|(?<![\\d-])\\b(\\d{1,3})\\s*(?:counts?|cts?|beats?)\\b"
                    + "|\\bafter\\s+(\\d{1,3})\\b(?!\\s*(?:st|nd|rd|th|walls?|sections?))",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern AGAIN =
            Pattern.compile("\\b(?:re-?start\\w*|recommence|start|begin|go)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern ENDS_BEFORE = Pattern.compile(
            "\\b(?:facing|face|instead|which|you)\\b|\\d{1,2}[:.]\\d\\d|\\d o'?clock", Pattern.CASE_INSENSITIVE);
    private static final Pattern JOINT = Pattern.compile(
            "(?:(?:[,:;(.]|-\\s|\\b(?:then|and|add|adding|do|dance|dancing|with|plus)\\b)\\s*)+",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern TAIL =
            Pattern.compile("(?:[\\s,;:.(&-]|\\b(?:and|then|before|to|now)\\b)+$", Pattern.CASE_INSENSITIVE);
    private static final Pattern ADDS = Pattern.compile(
            "\\b(?:add|adding|adds|extra|additional|plus)\\b|\\b(?:hold|wait|pause)\\b[^,;.]*\\d\\s*(?:counts?|beats?)\\b",
            Pattern.CASE_INSENSITIVE);
    /** Counts; music begins anew behind so many. */
    private static final int BAR = 4;

    private final String text;
    private final int place;
    private final int from;

    private AddedSteps(String text, int place, int from) {
        this.text = text;
        this.place = place;
        this.from = from;
    }

    /** The steps with the counts that they come on; empty where none are told, or they are not understood. */
    static Optional<StepChange> in(SheetLine line) {
        return of(line.text()).flatMap(AddedSteps::steps);
    }

    /** Whether they may as well come in place of the last counts: the wall stops with a bar, and they are less than one. */
    static boolean areUnclear(SheetLine line) {
        return of(line.text())
                .filter(added -> added.place % BAR == 0)
                .filter(added -> !ADDS.matcher(added.text).find(added.from))
                .filter(added -> !added.isNumbered())
                .flatMap(AddedSteps::steps)
                .filter(change -> change.last() % BAR != 0)
                .isPresent();
    }

    /** Whether they fill up the bar that is broken off, so that they are no tag. */
    static boolean fillBar(SheetLine line) {
        return of(line.text())
                .filter(added -> added.place % BAR != 0)
                .flatMap(AddedSteps::steps)
                .filter(change -> change.last() % BAR == 0)
                .isPresent();
    }

    /** Whether counts behind the place are told, with steps that are not understood. */
    static boolean areLost(SheetLine line) {
        return of(line.text())
                .filter(AddedSteps::isNumbered)
                .filter(added -> added.steps().isEmpty())
                .isPresent();
    }

    /** The count behind which the wall stops, as the line tells it. */
    static OptionalInt place(SheetLine line) {
        return of(line.text()).map(added -> OptionalInt.of(added.place)).orElse(OptionalInt.empty());
    }

    /** The words from this 0-based index on, up to where the dance begins again. */
    static String stepsFrom(SheetLine line, int from) {
        AddedSteps rest = new AddedSteps(line.text(), 0, from);
        return trimmed(line.text().substring(from, rest.end()));
    }

    /** Without what joins it to the words behind, and without the end of a bracket that begins before it. */
    private static String trimmed(String words) {
        String steps = TAIL.matcher(words).replaceFirst("");
        boolean closes = steps.endsWith(")") && steps.indexOf('(') < 0;
        return closes ? steps.substring(0, steps.length() - 1) : steps;
    }

    private static Optional<AddedSteps> of(String text) {
        Matcher place = PLACE.matcher(text);
        if (!place.find()) {
            return Optional.empty();
        }
        int group = place.group(1) != null ? 1 : place.group(2) != null ? 2 : 3;
        return Optional.of(new AddedSteps(text, Integer.parseInt(place.group(group)), place.end()));
    }

    /** Where the dance begins again; the line's end where it does not say so behind the place. */
    private OptionalInt again() {
        Matcher again = AGAIN.matcher(text);
        return again.find(from) ? OptionalInt.of(again.start()) : OptionalInt.empty();
    }

    private int end() {
        OptionalInt again = again();
        Matcher stop = ENDS_BEFORE.matcher(text).region(from, again.orElse(text.length()));
        return stop.find() ? stop.start() : again.orElse(text.length());
    }

    private Optional<StepChange> steps() {
        int to = end();
        boolean told = again().isPresent() || isNumbered() || ADDS.matcher(text).find(from);
        for (int start : told ? starts(to) : List.<Integer>of()) {
            if (!DanceLine.isStill(text.substring(from, start))) {
                return Optional.empty();
            }
            String prose = trimmed(text.substring(start, to));
            Optional<StepChange> change = StepChange.behind(place, prose);
            if (change.isPresent()) {
                return change;
            }
        }
        return Optional.empty();
    }

    /** 0-based indices behind commas and what else joins the steps to their place. */
    private List<Integer> starts(int to) {
        List<Integer> starts = new ArrayList<>();
        Matcher joint = JOINT.matcher(text).region(from, to);
        while (joint.find()) {
            starts.add(joint.end());
        }
        return starts;
    }

    /** Whether the count behind the place stands beside the steps. */
    private boolean isNumbered() {
        String rest = text.substring(from);
        return DanceLine.isDanced(rest)
                && Pattern.compile("(?<![\\d/:])" + (place + 1) + "(?![\\d/:])")
                        .matcher(rest)
                        .find();
    }
}
