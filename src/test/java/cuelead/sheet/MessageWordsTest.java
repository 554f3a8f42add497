package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of a mistake is said as in a hall. */
class MessageWordsTest {
    /** The left foot bears the weight behind count 2 and is to act on count 3. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "touch L heel forward | touches its heel",
                "touch L toe back     | touches its toe",
                "step L beside R      | steps together",
                "step L behind R      | steps behind",
                "kick L forward       | kicks",
                "touch L beside R     | touches",
                "cross L over R       | crosses",
                "brush L forward      | brushes"
            })
    void aFootThatBearsTheWeight(String action, String words) {
        List<String> messages =
                SheetFixtures.messages("TIDE MARK\n\n[1-8] DRIFT\n1-2 Step R to side, step L to side\n3-4 " + action
                        + ", hold\n5-8 Hold, hold, hold, hold\n");
        assertTrue(
                messages.stream()
                        .anyMatch(message ->
                                message.contains("On count 3 the left foot " + words + ", but it bears the weight.")),
                messages.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "STEP, PIVOT 1/2 R, STEP, 1/4 L | names a half turn to the right, then a quarter turn to the left, but its steps do not turn so.",
                "STEP, PIVOT 1/4 L              | names a quarter turn to the left, but its steps do not have it."
            })
    void aHeadingWithOtherTurns(String heading, String words) {
        List<String> messages = SheetFixtures.messages("TIDE MARK\n\n[1-8] " + heading
                + "\n1-2 Step R forward, pivot 1/2 L\n3-4 Step R forward, pivot 1/2 L\n"
                + "5-6 Step R to side, touch L beside R\n7-8 Step L to side, touch R beside L\n");
        assertTrue(messages.stream().anyMatch(message -> message.contains(words)), messages.toString());
    }
}
