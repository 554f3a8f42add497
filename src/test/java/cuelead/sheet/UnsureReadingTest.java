package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.Section;
import cuelead.report.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ways of writing that were once blamed on the author, in the wordings that instructors use (common practice, no source). */
class UnsureReadingTest {
    private static final String BARE_STEPS = """
            1-4 Step R to side, step L behind R, step R to side, touch L beside R
            5-8 Step L to side, step R behind L, step L to side, touch R beside L
            """;

    /** Two counts joined by a word; a shuffle between them has three. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Counts 1 and 2: Step R to side. Touch L beside R.\nCounts 3 and 4: Step L to side. Touch R beside L.\n",
                "Counts one and two: Step R to side, touch L beside R.\nCounts three and four: Step L to side, touch R beside L.\n",
                "Beats 1 and 2 - Step R to side, touch L beside R\nBeats 3 and 4 - Step L to side, touch R beside L\n",
                "On counts 1 and 2, step R to side and touch L beside R.\nOn counts 3 and 4, step L to side and touch R beside L.\n",
                "cts. 1 and 2: step R to side, touch L beside R\ncts. 3 and 4: step L to side, touch R beside L\n",
                "Counts 1, 2, 3 and 4: Step R to side, touch L beside R, step L to side, touch R beside L\n",
                "Step R to side, touch L beside R (counts 1 and 2)\nStep L to side, touch R beside L (counts 3 and 4)\n"
            })
    void twoCountsJoinedByAWord(String first) {
        String sheet = head() + "Section 1\n" + first
                + "Counts 5 and 6: Step R forward, step L beside R, step R forward.\n"
                + "Counts 7 and 8: Step L forward, touch R beside L.\n";
        assertEquals(List.of(), blamed(sheet), sheet);
        assertEquals(9, sections(sheet).get(0).steps().size(), sheet);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[1-8] VINE RIGHT, TOUCH,\nVINE LEFT, TOUCH\n",
                "[1-8]  VINE RIGHT\nVINE LEFT\n",
                "[1-8] Vine right, touch &\nvine left, touch\n",
                "Section 1: Vine right, touch\nand vine left, touch\n",
                "S1 (1-8) VINE RIGHT WITH TOUCH, VINE LEFT WITH\nTOUCH\n",
                "[1-8] VINE RIGHT, TOUCH, VINE LEFT, TO-\nUCH\n",
                "1-8  VINE RIGHT, TOUCH,\nVINE LEFT, TOUCH\n"
            })
    void headingsBrokenAtTheLineEnd(String heading) {
        String sheet = head() + heading + BARE_STEPS;
        assertEquals(List.of(), blamed(sheet), sheet);
        assertEquals(1, sections(sheet).size());
    }

    /** So many lines that do not fit are no mistakes: it is told once. */
    @Test
    void manyLinesOfOneFaultAreToldOnce() {
        String sheet = head() + "Section 1\n"
                + "1-2 Step R to side, step L beside R, touch R to side\n"
                + "3-4 Step R to side, step L beside R, touch R to side\n"
                + "5-6 Step R to side, step L beside R, touch R to side\n"
                + "7-8 Step R to side, step L beside R, touch R to side\n";
        List<String> found = blamed(sheet);
        assertEquals(1, found.size(), found::toString);
        assertTrue(found.get(0).contains("4 lines are like this (6, 7, 8 and 9)"), found::toString);
    }

    /** What is not read is silent in a class, however many lines it is: that is an error, and the lines are named. */
    @ParameterizedTest
    @ValueSource(strings = {"quonk the bucket", "R flurble, L flurble", "hop the wibble"})
    void manyUnreadLinesAreAnError(String unread) {
        String sheet = head()
                + "Section 1\n1-4 Step R to side, touch L beside R, step L to side, touch R beside L\n"
                + "5-6 %1$s\n7-8 %1$s\nSection 2\n1-2 %1$s\n3-4 %1$s\n5-8 Vine R, touch L\n".formatted(unread);
        List<Problem> found = SheetReader.read("nettle.txt", sheet).problems();
        List<Problem> errors = found.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .toList();
        assertEquals(1, errors.size(), found::toString);
        assertTrue(errors.get(0).sentence().contains("4 lines are like this (7, 8, 10 and 11)"), found::toString);
    }

    private static String head() {
        return "Nettle Row\n8 counts, 1 wall, beginner\nIntro: 16 counts, weight on L\n\n";
    }

    private static List<Section> sections(String sheet) {
        Dance dance = SheetReader.read("nettle.txt", sheet).dance().orElseThrow();
        return dance.parts().get(0).sections();
    }

    private static List<String> blamed(String sheet) {
        return Blamed.in(SheetReader.read("nettle.txt", sheet));
    }
}
