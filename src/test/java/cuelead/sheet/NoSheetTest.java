package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Texts that are no step sheets: one sentence each, and no list of words that were not understood. */
class NoSheetTest {
    private static final String NONE =
            "sheet.txt: error: This is no step sheet: no line was found that has counts and steps behind them. "
                    + "A step sheet has lines such as \"1-2 Step R to side, step L beside R\".";

    @Test
    void aPoem() {
        no("The Tide\n\nThe tide came in at half past two\nand left the harbour wall,\nand one by one the lamps lit up"
                + "\nthe windows of the hall.\n");
    }

    @Test
    void anEmailWithNumberedPoints() {
        no(
                "From: the hall\nSubject: Tuesday\n\nHello all,\n1. Bring two chairs\n2. Step out at 8, please\n\nSee you\n");
    }

    @Test
    void aShoppingList() {
        no("Shopping\n1 bread\n2 eggs\n3 a kick of ginger\n4 tea\n5 apples\n6 salt\n7 oats\n8 milk\n");
    }

    @Test
    void aTextOfManyPages() {
        String sentence =
                SheetFixtures.messages("A line of a long story.\n".repeat(600)).get(0);
        assertTrue(
                sentence.startsWith("sheet.txt: error: This text has 601 lines; a step sheet has at most 500."),
                sentence);
    }

    /** The one line is left out; the others are read. */
    @Test
    void aLineWithoutEnd() {
        String text = SheetFixtures.SHEET + "Note: " + "and so on ".repeat(300) + "\n";
        assertEquals("12:2000 long_line", String.join(" | ", SheetFixtures.places(text)));
        assertEquals(
                16, SheetReader.read("sheet.txt", text).dance().orElseThrow().counts());
    }

    private static void no(String text) {
        assertEquals(NONE, String.join("\n", SheetFixtures.messages(text)));
        assertTrue(SheetReader.read("sheet.txt", text).dance().isEmpty());
    }
}
