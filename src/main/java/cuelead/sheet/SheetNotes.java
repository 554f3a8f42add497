package cuelead.sheet;

import java.util.List;

/**
 * What a sheet says beside the dance, in its own words.
 *
 * @param credits who made it, to which music: lines above the dance
 * @param notes   hints, styling and greetings below; "Note:" before them is left out
 */
public record SheetNotes(List<String> credits, List<String> notes) {
    public static final SheetNotes NONE = new SheetNotes(List.of(), List.of());

    public SheetNotes {
        credits = List.copyOf(credits);
        notes = List.copyOf(notes);
    }
}
