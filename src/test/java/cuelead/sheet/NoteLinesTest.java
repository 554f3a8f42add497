package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class NoteLinesTest {
    private static final String SHEET = """
            HAY LOFT LANE
            Choreographed by Invented Person, May
            Count: 8  Wall: 4  Level: Beginner
            Music: any cheerful tune

            [1-8] VINES
            1-4 Step R to side, cross L behind R, step R to side, touch L next to R
            Styling: let the hips roll
            5-8 Step L to side, cross R behind L, 1/4 turn L step L forward, touch R next to L
            (easy option for 5-8: vine L, touch)

            REPEAT
            Note: those with sore knees may leave the
            bend out.
            Thank you for your kindness
            Count   Step   Facing
            """;

    private static ReadSheet read(String text) {
        return SheetReader.read("sheet.txt", text);
    }

    @Test
    void whoMadeItAndWhatIsSaidIsKept() {
        SheetNotes notes = read(SHEET).notes();
        assertEquals(List.of("Choreographed by Invented Person, May", "Music: any cheerful tune"), notes.credits());
        assertTrue(notes.notes().contains("Styling: let the hips roll"), notes.toString());
        assertTrue(notes.notes().contains("those with sore knees may leave the bend out."), notes.toString());
    }

    @Test
    void anOptionIsNoNote() {
        assertTrue(read(SHEET).notes().notes().stream().noneMatch(note -> note.contains("option")));
    }

    @Test
    void whatIsWrittenReadsBackToTheSameNotes() {
        ReadSheet read = read(SHEET);
        String written = SheetWriter.write(read.dance().orElseThrow(), read.notes());
        assertEquals(read.notes(), read(written).notes(), written);
        assertTrue(written.contains("\nNote: those with sore knees"), written);
    }
}
