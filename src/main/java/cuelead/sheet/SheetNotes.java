package cuelead.sheet;

import java.util.List;

/**
 * What a sheet says beside the dance, in its own words.
 *
 * @param credits who made it, to which music: lines above the dance
 * @param notes   hints, styling and greetings below; "Note:" before them is left out
 * @param unread  what was not understood, in the order of the dance
 */
public record SheetNotes(List<String> credits, List<String> notes, List<Unread> unread) {
    public static final SheetNotes NONE = new SheetNotes(List.of(), List.of(), List.of());

    public SheetNotes {
        credits = List.copyOf(credits);
        notes = List.copyOf(notes);
        unread = List.copyOf(unread);
    }

    /** With these places as well. */
    SheetNotes with(List<Unread> places) {
        return new SheetNotes(credits, notes, places);
    }
}
