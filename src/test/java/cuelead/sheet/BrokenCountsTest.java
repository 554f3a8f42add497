package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.FIRST_EIGHT;
import static cuelead.sheet.SheetFixtures.HEAD;
import static cuelead.sheet.SheetFixtures.SECOND_EIGHT;
import static cuelead.sheet.SheetFixtures.SHEET;
import static cuelead.sheet.SheetFixtures.messages;
import static cuelead.sheet.SheetFixtures.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Section;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Counts that do not add up: each mistake at its line, and reading goes on behind it. */
class BrokenCountsTest {
    @Test
    void theRightSheetIsQuiet() {
        assertEquals(List.of(), messages(SHEET));
    }

    @Test
    void missingCounts() {
        String text = SHEET.replace("3-4 Step R to side, touch L beside R\n5", "5");
        assertEquals(
                "sheet.txt:4:1: error: Counts 3 to 4 are missing from S1. Write what is danced there, if only \"hold\".",
                messages(text).stream()
                        .filter(m -> m.contains("missing"))
                        .findFirst()
                        .orElseThrow());
        assertEquals(
                List.of("2:0 count_total", "4:1 missing_counts"),
                places(text).stream().sorted().toList());
    }

    @Test
    void anExtraCount() {
        assertEquals(
                List.of("2:0 count_total", "8:1 extra_count"),
                places(HEAD + FIRST_EIGHT + "9 Hold\n" + SECOND_EIGHT).stream()
                        .sorted()
                        .toList());
    }

    /** A heading without counts that stands twice has no section above it. */
    @Test
    void anEmptySectionTwice() {
        String text = SHEET.replace("[1-8]", "[9-16] Vine\n\n[9-16] Vine\n\n[1-8]");
        assertTrue(places(text).contains("3:1 missing_counts"), places(text).toString());
    }

    /** What was written first stays; the steps stay in the order of their counts. */
    @Test
    void overlappingCounts() {
        String text = SHEET.replace("3-4 Step R to side, touch L", "2-4 Step L behind R, step R to side, touch L");
        assertEquals(List.of("5:1 count_order"), places(text));
        Section section = SheetFixtures.firstSection(text);
        assertEquals(8, section.steps().size());
    }

    @Test
    void theSameCountsTwice() {
        String text = SHEET.replace("7-8 Step L to side, touch R beside L\n[9", "5-6 Step L to side, touch R\n[9");
        assertTrue(places(text).contains("7:1 count_order"), places(text).toString());
        assertTrue(places(text).contains("6:1 missing_counts"), places(text).toString());
    }

    @Test
    void aSectionOfSevenCounts() {
        String text = HEAD.replace("16", "15") + "S1: Vine\n"
                + FIRST_EIGHT
                        .substring(FIRST_EIGHT.indexOf('\n') + 1)
                        .replace("7-8 Step L to side, touch R beside L", "7 Touch L beside R")
                + SECOND_EIGHT.replace("[9-16]", "S2");
        assertTrue(
                messages(text)
                        .contains("sheet.txt:7: warning: S1 has 7 counts, but the dance is counted in eights. "
                                + "Check whether a count is missing, or one too many."),
                messages(text).toString());
    }

    @Test
    void aStatedTotalThatIsNotTheSum() {
        assertEquals(
                List.of("sheet.txt:2: error: The header says 32 counts, but 16 are written. "
                        + "There are 2 sections; check whether one is missing or stands twice, or correct the header."),
                messages(SHEET.replace("Count: 16", "Count: 32")));
    }

    @Test
    void aMissingSection() {
        String text = HEAD.replace("16", "24") + FIRST_EIGHT + SECOND_EIGHT.replace("[9-16]", "[17-24]");
        assertTrue(
                messages(text)
                        .get(0)
                        .startsWith("sheet.txt:8:1: error: Counts 9 to 16 are missing above this section."),
                messages(text).toString());
    }

    @Test
    void aSectionThatStandsTwice() {
        assertTrue(places(SHEET + SECOND_EIGHT).contains("12:1 count_order"));
    }

    @Test
    void aHeadingWithoutCounts() {
        assertEquals(
                List.of("8:1 missing_counts", "2:0 count_total"),
                places(HEAD + FIRST_EIGHT + "[9-16] ROCKING CHAIR\n\nREPEAT\n"));
    }

    @Test
    void moreActionsThanCounts() {
        assertEquals(
                List.of("sheet.txt:4:1: error: \"1-2\" counts 2 actions, but 3 actions are written. "
                        + "Add the counts that are missing (three steps in two counts are 1&2), or a line."),
                messages(SHEET.replace("step L behind R\n3", "step L behind R, hold\n3")));
    }

    @Test
    void countsWithoutAnAction() {
        assertTrue(places(SHEET.replace("1-2 Step R to side, step L behind R", "1-2"))
                .contains("4:1 no_action"));
    }
}
