package cuelead.listing;

import cuelead.dance.Dance;
import cuelead.sheet.SheetNotes;
import java.util.List;
import java.util.Optional;

/** What a dance is printed as. */
public enum SheetForm {
    /** What is said, in large print. */
    CALL_SHEET("call sheet"),
    /** What is danced, in the style of {@link cuelead.sheet.SheetWriter}. */
    STEP_SHEET("step sheet");

    private static final String CAUTION =
            "Turn only as fast as is safe for you, take small steps where the floor is full or sticky, and easier ones"
                    + " as you like.";

    private final String word;

    SheetForm(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /**
     * A PDF file of it.
     *
     * @param notes what the sheet says beside the dance
     */
    public byte[] pdf(Dance dance, SheetNotes notes, Paper paper) {
        try (PdfSheet sheet = new PdfSheet(paper, dance.header().title())) {
            return sheet.written(blocks(dance, notes, sheet.rows(), sheet.heightPoints()), caution(dance));
        }
    }

    List<List<PrintedRow>> blocks(Dance dance, SheetNotes notes, RowMaker rows, double heightPoints) {
        return this == CALL_SHEET ? CallSheet.of(dance, rows, heightPoints) : StepSheet.of(dance, notes, rows);
    }

    private static Optional<String> caution(Dance dance) {
        return CallSheet.turns(dance) ? Optional.of(CAUTION) : Optional.empty();
    }
}
