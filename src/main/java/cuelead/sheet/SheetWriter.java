package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.Facing;
import cuelead.dance.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes a dance as a step sheet in one clean style: facts first, a bracket and a heading for each section, two counts a
 * line with every foot named. What is written reads back to the same dance.
 */
public final class SheetWriter {
    private SheetWriter() {}

    /** Without what its sheet says beside it. */
    public static String write(Dance dance) {
        return write(dance, SheetNotes.NONE);
    }

    /** With credits behind the facts, and notes below the dance. */
    public static String write(Dance dance, SheetNotes notes) {
        WrittenSections sections = new WrittenSections(dance, notes.unread());
        WrittenExtras extras = new WrittenExtras(dance, sections);
        List<String> lines = new ArrayList<>(WrittenHeader.lines(dance, notes));
        dance.parts().forEach(part -> lines.addAll(part(dance, part, sections)));
        if (!dance.isPhrased()) {
            lines.addAll(List.of("", "REPEAT"));
        }
        dance.tags().forEach(tag -> lines.addAll(extras.tag(tag)));
        dance.restarts().forEach(restart -> lines.addAll(extras.restart(restart)));
        dance.ending().ifPresent(ending -> lines.addAll(extras.ending(ending)));
        if (!notes.notes().isEmpty()) {
            lines.add("");
        }
        notes.notes().forEach(note -> lines.add(NoteLines.written(note)));
        return lines.stream().map(line -> line.stripTrailing() + "\n").collect(Collectors.joining());
    }

    private static List<String> part(Dance dance, Part part, WrittenSections sections) {
        List<String> lines = new ArrayList<>();
        if (dance.isPhrased()) {
            lines.addAll(List.of("", "PART " + part.name()));
        }
        lines.addAll(sections.of(part, dance.isPhrased() ? part.name() : "", Facing.FRONT));
        return lines;
    }
}
