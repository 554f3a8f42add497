package cuelead.window.sheet;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.listing.DanceFacts;
import cuelead.listing.ListedDance;
import cuelead.listing.ListedLine;
import cuelead.report.Problem;
import cuelead.sheet.ReadSheet;
import cuelead.sheet.SheetNotes;
import cuelead.sheet.SheetReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What was understood of a text.
 *
 * @param text     of the sheet
 * @param dance    empty where it holds none
 * @param notes    what it says beside the dance
 * @param lines    of the dance, count by count
 * @param findings in the order of their lines
 */
record Understood(
        String text, Optional<Dance> dance, SheetNotes notes, List<ListedLine> lines, List<Finding> findings) {
    static final Understood NOTHING = new Understood("", Optional.empty(), SheetNotes.NONE, List.of(), List.of());

    Understood {
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
    }

    /** Reads it; some milliseconds, on any thread. */
    static Understood of(String text) {
        if (text.isBlank()) {
            return NOTHING;
        }
        ReadSheet read = SheetReader.read("", text);
        List<Problem> problems = new ArrayList<>(read.problems());
        read.dance().ifPresent(dance -> problems.addAll(DanceCheck.check(dance, "")));
        return new Understood(
                text,
                read.dance(),
                read.notes(),
                read.dance().map(ListedDance::of).orElse(List.of()),
                problems.stream()
                        .map(Finding::of)
                        .sorted(Comparator.comparingInt(Finding::line))
                        .toList());
    }

    /** A line about it. */
    String facts() {
        return text.isBlank()
                ? "No step sheet yet: choose one, paste it, drop it here, or write it below."
                : dance.map(DanceFacts::of).orElse("No dance was found in it.");
    }

    /** The dance's name, or another where it has none. */
    String title(String otherwise) {
        return dance.map(read -> read.header().title())
                .filter(title -> !title.isBlank())
                .orElse(otherwise);
    }

    /** The song that it names; may be empty. */
    String song() {
        return dance.map(read -> read.header().song()).orElse("");
    }
}
