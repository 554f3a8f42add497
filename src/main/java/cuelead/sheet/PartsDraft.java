package cuelead.sheet;

import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.RunOver;
import cuelead.dance.Section;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The parts of a dance while their sections are read; one part, A, for an ordinary dance. */
final class PartsDraft {
    private static final String ONLY_PART = "A";

    private final Map<String, List<Section>> parts = new LinkedHashMap<>();
    private final Map<String, Integer> bracketEnds = new HashMap<>();
    private String part = ONLY_PART;
    private boolean lettered;

    /** The part that is being read. */
    String name() {
        return part;
    }

    /** Goes on with the part that this heading names, if it names one. */
    void enter(SectionHead head) {
        if (!head.part().isEmpty()) {
            lettered = true;
            part = head.part();
        }
        if (head.opensPart()) {
            parts.computeIfAbsent(part, name -> new ArrayList<>());
        }
    }

    void add(Section section) {
        parts.computeIfAbsent(part, name -> new ArrayList<>()).add(section);
    }

    /** What the next section is called. */
    String nextName() {
        return (lettered ? part : "S") + (sections().size() + 1);
    }

    /** Of this part, that are closed. */
    List<Section> sections() {
        return parts.getOrDefault(part, List.of());
    }

    /** Counts of this part so far. */
    int counts() {
        return sections().stream().mapToInt(Section::length).sum();
    }

    /** Brackets run on from section to section, or begin at 1 in each. */
    void followsOn(SectionHead head, SheetLine line, Problems problems) {
        if (!head.hasRange()) {
            return;
        }
        int expected = bracketEnds.getOrDefault(part, counts()) + 1;
        bracketEnds.put(part, head.last());
        int local = 1 + RunOver.behind(sections(), Metre.EIGHTS);
        if (head.first() == expected || head.first() == counts() + 1 || head.first() == 1 || head.first() == local) {
            return;
        }
        boolean gap = head.first() > expected;
        if (head.last() == expected - 1 && isWrittenAbove(head)) {
            problems.error(
                    "count_order",
                    line.number(),
                    line.firstColumn(),
                    "This section stands twice: it is written above already.",
                    "Take it out here, or give it the counts that follow.");
            return;
        }
        problems.error(
                gap ? "missing_counts" : "count_order",
                line.number(),
                line.firstColumn(),
                gap
                        ? "Counts " + expected + " to " + (head.first() - 1) + " are missing above this section."
                        : "This section begins at count " + head.first() + ", but the one above it ends at "
                                + (expected - 1) + ".",
                "Check the numbers in the brackets, and whether a section is missing or stands twice.");
    }

    private boolean isWrittenAbove(SectionHead head) {
        if (sections().isEmpty()) {
            return false;
        }
        Section last = sections().get(sections().size() - 1);
        return last.heading().equals(head.heading()) && last.length() == head.length();
    }

    /** Of the parts that have steps; of some there is a heading only. */
    Set<String> names() {
        return parts.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Their lengths in counts by their names. */
    Map<String, Integer> partCounts() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        parts.forEach((name, sections) ->
                counts.put(name, sections.stream().mapToInt(Section::length).sum()));
        return counts;
    }

    boolean isEmpty() {
        return parts.isEmpty();
    }

    /** Counts of all parts. */
    int total() {
        return parts.values().stream()
                .flatMap(List::stream)
                .mapToInt(Section::length)
                .sum();
    }

    /** Of the sections of all parts, in counts. */
    List<Integer> lengths() {
        return parts.values().stream()
                .flatMap(List::stream)
                .map(Section::length)
                .toList();
    }

    /** In the order in which they are first written; {@code sequence} as the sheet states it, else empty. */
    List<Part> parts(List<String> sequence) {
        boolean phrased = parts.size() > 1 || !sequence.isEmpty();
        return parts.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> new Part(entry.getKey(), phrased ? entry.getValue() : numbered(entry.getValue())))
                .toList();
    }

    /** The sections of an ordinary dance are S1, S2 ... */
    private static List<Section> numbered(List<Section> sections) {
        List<Section> named = new ArrayList<>();
        for (Section found : sections) {
            named.add(new Section(
                    "S" + (named.size() + 1),
                    found.heading(),
                    found.length(),
                    found.steps(),
                    found.figures(),
                    found.ownCalls(),
                    found.line()));
        }
        return named;
    }
}
