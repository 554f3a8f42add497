package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Count;
import cuelead.dance.Dance;
import cuelead.dance.Ending;
import cuelead.dance.Part;
import cuelead.dance.Section;
import cuelead.dance.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds where in a dance the words stand that were not understood, as long as its steps know the lines that were read. */
final class UnreadPlaces {
    private final AuthorsWords authors;
    private final List<Section> sections;
    private final List<Unread> found = new ArrayList<>();

    private UnreadPlaces(Dance dance, AuthorsWords authors) {
        this.authors = authors;
        sections = sections(dance);
    }

    /** All sections in the order in which {@link Unread#section()} numbers them. */
    static List<Section> sections(Dance dance) {
        Stream<Part> ending = dance.ending().flatMap(Ending::part).stream();
        return Stream.concat(dance.sections(), ending.flatMap(part -> part.sections().stream()))
                .toList();
    }

    /** In the order of the dance. */
    static List<Unread> of(Dance dance, List<Problems.Span> spans, AuthorsWords authors) {
        UnreadPlaces places = new UnreadPlaces(dance, authors);
        Set<Integer> wholeLines = spans.stream()
                .filter(span -> span.extent() == Problems.Extent.LINE)
                .map(Problems.Span::line)
                .collect(Collectors.toSet());
        spans.stream()
                .distinct()
                .filter(span -> authors.knows(span.line()))
                .filter(span -> span.extent() != Problems.Extent.ACTION || !wholeLines.contains(span.line()))
                .forEach(places::find);
        return places.found;
    }

    private void find(Problems.Span span) {
        if (span.extent() == Problems.Extent.LEFT_OUT) {
            leftOut(span);
            return;
        }
        for (int section = 0; section < sections.size(); section++) {
            List<Step> steps = sections.get(section).steps().stream()
                    .filter(step -> isOf(step, span))
                    .toList();
            if (!steps.isEmpty()) {
                found.add(new Unread(section, steps.get(0).count(), steps.size(), authors.words(span)));
            }
        }
    }

    private static boolean isOf(Step step, Problems.Span span) {
        boolean whole = span.extent() == Problems.Extent.LINE;
        return step.line() == span.line() && (whole || (step.column() == span.from() && step.action() == Action.HOLD));
    }

    /** Behind the last step that is written above it. */
    private void leftOut(Problems.Span span) {
        int section = 0;
        Count at = Count.on(0);
        int last = 0;
        for (int i = 0; i < sections.size(); i++) {
            for (Step step : sections.get(i).steps()) {
                if (step.line() < span.line() && step.line() >= last) {
                    section = i;
                    at = step.count();
                    last = step.line();
                }
            }
        }
        found.add(new Unread(section, at, 0, authors.words(span)));
    }
}
