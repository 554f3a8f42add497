package cuelead.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.time.Beats;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each slip in a score is told with its line and column. */
class ScoreReaderTest {
    private static final String GOOD = """
            title: Test
            metre: 4/4
            tempo: 100
            key: G major
            [band]
            fiddle: fiddle volume=100
            kit: kit
            [drums beat]
            kick: x...x...
            [passage verse]
            chords: G | C D
            tune: 1 2_ 3_ 5- | 6--- # a comment
            [form]
            verse: level=60>80 drums=beat tune=fiddle
            """;

    private static List<String> problems(String text) {
        return ScoreReader.read("t.score", "t", text).problems().stream()
                .map(Problem::message)
                .toList();
    }

    @Test
    void aGoodScoreIsReadWhole() {
        Score score = Scores.score("t", GOOD);
        assertEquals(
                List.of("fiddle", "kit"),
                score.band().stream().map(Player::name).toList());
        FormLine line = score.form().get(0);
        assertEquals(8, line.passage().beats());
        assertEquals(60, line.levelFrom());
        assertEquals(80, line.levelTo());
        List<TuneNote> tune = line.passage().voices().get("tune");
        // G major from the G below middle C up: 1 = 67 is the first G above the lowest tonic, A = 57.
        assertEquals(
                List.of(67, 69, 71, 74, 76), tune.stream().map(TuneNote::pitch).toList());
        assertEquals(
                List.of(Beats.of(1), Beats.HALF, Beats.HALF, Beats.of(2), Beats.of(4)),
                tune.stream().map(TuneNote::length).toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '^',
            value = {
                "metre: 4/4        ; metre: 5/4            ; t.score:2:8: error: The metre must be 4/4 or 3/4. Write \"metre: 4/4\".",
                "tempo: 100        ; tempo: 400            ; t.score:3:8: error: \"400\" is no tempo from 40 to 240.",
                "key: G major      ; key: H major          ; t.score:4:6: error: \"H major\" is not a key. Write for example \"key: G major\".",
                "title: Test       ; titel: Test           ; t.score:1:1: error: There is no head line \"titel\". Did you mean title?",
                "fiddle: fiddle    ; fiddle: fidle         ; t.score:6:9: error: There is no instrument \"fidle\". Did you mean fiddle?",
                "volume=100        ; volume=300            ; t.score:6:23: error: \"300\" is not a whole number from 0 to 127.",
                "x...x...          ; x..qx...              ; t.score:9:10: error: \"q\" is not a stroke. Strokes are X (accent), x, o (soft), g (ghost) and . (none).",
                "x...x...          ; x...x.                ; t.score:9:7: error: A bar of 6 steps does not divide into 4 beats. Write 1, 2, 3 or 4 steps a beat.",
                "G / C D           ; G / Q D               ; t.score:11:13: error: \"Q\" is not a chord here. Write for example G, Am7, D7sus4 or C/E.",
                "1 2_ 3_ 5-        ; 1 2_ 9_ 5-            ; t.score:12:12: error: \"9_\" is not a note. Write a degree 1 to 7 or a rest 0, then #b ', _ t * - ! in this order.",
                "1 2_ 3_ 5-        ; 1 2_ 3_ 5             ; t.score:12:17: error: The bar that ends here has 3.0 beats, not 4.0. Lengthen or shorten a note of it.",
                "drums=beat        ; drums=beet            ; t.score:14:26: error: There is no pattern \"beet\". Did you mean beat?",
                "verse: level      ; verze: level          ; t.score:14:1: error: There is no passage \"verze\". Did you mean verse?",
                "tune=fiddle       ; tune=fiddel           ; t.score:14:36: error: There is no player \"fiddel\". Did you mean fiddle?",
                "[band]            ; [bend]                ; t.score:5:2: error: There is no block \"bend\". Did you mean band?",
                "kit: kit          ; kit kit               ; t.score:7:1: error: This line is neither \"[block]\" nor \"key: value\". Put a colon after its first word."
            })
    void aSlipIsToldWithItsPlace(String row) {
        String[] cells = row.replace(" / ", " | ").split(" *; ");
        assertTrue(GOOD.contains(cells[0]), cells[0]);
        List<String> problems = problems(GOOD.replace(cells[0], cells[1]));
        assertTrue(problems.contains(cells[2].strip()), problems + "");
    }

    @Test
    void allSlipsAreToldAtOnce() {
        String bad = GOOD.replace("tempo: 100", "tempo: fast").replace("drums=beat", "drums=none");
        assertEquals(2, problems(bad).size());
    }

    @Test
    void anEmptyScoreSaysWhatIsMissing() {
        assertEquals(
                List.of(
                        "t.score: error: The score does not say its title. Add a line \"title: ...\" at its head.",
                        "t.score: error: The score does not say its metre. Add a line \"metre: ...\" at its head.",
                        "t.score: error: The score does not say its tempo. Add a line \"tempo: ...\" at its head.",
                        "t.score: error: The score does not say its key. Add a line \"key: ...\" at its head.",
                        "t.score: error: The score plays nothing. Add a [form] with a line a passage."),
                problems(""));
    }

    @Test
    void aTuneThatIsShorterThanItsPassageIsTold() {
        assertEquals(
                List.of("t.score:10:2: error: The tune \"tune\" lasts 8.0 beats, its passage \"verse\" 12. "
                        + "Write as many bars of tune as of chords."),
                problems(GOOD.replace("chords: G | C D", "chords: G | C D | G")));
    }
}
