package cuelead.sheet;

import static cuelead.sheet.SheetFixtures.SHEET;
import static cuelead.sheet.SheetFixtures.messages;
import static cuelead.sheet.SheetFixtures.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words that are not known: where, and which known word is nearest. */
class BrokenWordsTest {
    @ParameterizedTest
    @CsvSource({
        "tuch, touch",
        "stepp, step",
        "behid, behind",
        "recovr, recover",
        "shufle, shuffle",
        "grapvine, grapevine",
        "sialor, sailor",
        "croos, cross",
        "forwrd, forward"
    })
    void theNearestKnownWordIsSuggested(String typo, String meant) {
        assertEquals(meant, Vocabulary.STANDARD.nearest(typo).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"zorg", "banana", "elephant", "q"})
    void aWordThatIsFarFromAllIsNotGuessed(String word) {
        assertTrue(
                Vocabulary.STANDARD.nearest(word).isEmpty(),
                () -> Vocabulary.STANDARD.nearest(word).get());
    }

    /** Words of the trade with a slip of the pen, as they are typed (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "tuch, touch",
        "stepp, step",
        "recovr, recover",
        "shufle, shuffle",
        "sialor, sailor",
        "croos, cross",
        "forwrd, forward",
        "foward, forward",
        "bakc, back",
        "togeather, together",
        "behidn, behind",
        "coastre, coaster",
        "rigth, right"
    })
    void aSlipOfThePenIsReadAsTheWordThatItMustBe(String typo, String meant) {
        assertEquals(meant, Vocabulary.STANDARD.meant(typo).orElseThrow());
    }

    /** "Stp" is an abbreviation; the others are near to two words, to none, or are words of the language. */
    @ParameterizedTest
    @CsvSource({"bock", "zorg", "banana", "quirk", "home", "this", "tome", "happy", "hell"})
    void aWordThatMayBeAnotherIsNotCorrected(String word) {
        assertEquals(Optional.empty(), Vocabulary.STANDARD.meant(word));
    }

    @Test
    void aSlipOfThePenIsOnlyNoted() {
        assertEquals(
                List.of("sheet.txt:5:21: note: \"tuch\" is read as \"touch\". Check the spelling."),
                messages(SHEET.replace("3-4 Step R to side, touch L beside R", "3-4 Step R to side, tuch L")));
    }

    @Test
    void aMistypedActionPointsAtItsWord() {
        assertEquals(
                List.of("sheet.txt:5:21: error: This action is not understood at \"tosck\". Did you mean \"touch\"?"),
                messages(SHEET.replace("3-4 Step R to side, touch L beside R", "3-4 Step R to side, tosck L")));
    }

    /** Each line is read for itself, and what follows from a mistake is not told again. */
    @Test
    void everyLineWithAMistakeIsTold() {
        String text = SHEET.replace("1-2 Step R", "1-2 Zorg R").replace("5-6 Step L", "5-6 Quonk L");
        assertEquals(List.of("4:5 unread", "6:5 unread"), places(text));
        String actions = SHEET.replace("Step R to side, step L behind R", "zorg, step L behind R")
                .replace("7-8 Step L to side,", "7-8 Quonk,");
        assertEquals(
                List.of("4:5 unread", "7:5 unread", "11:5 unread"),
                places(actions).stream().distinct().toList());
    }

    @Test
    void aFractionThatNobodyTurns() {
        assertTrue(places(SHEET.replace("1-2 Step R to side", "1-2 Turn 1/99 R")).stream()
                .anyMatch(place -> place.startsWith("4:") && place.contains("unread")));
    }

    /** Behind a turn that was read, and beside words that name one. */
    @ParameterizedTest
    @CsvSource({"Turn 1/4 R 2/9 step R fwd", "3/2 1/4 R", "Monterey 2/9 R", "Turn 2/9"})
    void aFractionThatNobodyTurnsBesideATurn(String words) {
        assertTrue(places(SHEET.replace("1-2 Step R to side", "1-2 " + words)).stream()
                .anyMatch(place -> place.startsWith("4:")));
    }

    @Test
    void aTurnWithoutASide() {
        assertTrue(places(SHEET.replace("1-2 Step R to side", "1-2 Turn 1/4 stepping R to side"))
                .contains("4:5 turn_side"));
    }

    @Test
    void aLineThatIsNoStep() {
        assertEquals(
                List.of("sheet.txt:8:1: note: This line is not read, since it has no counts and no step."),
                messages(SHEET.replace("[9-16]", "mind the step by the door\n[9-16]")));
    }
}
