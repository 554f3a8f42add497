package cuelead.dance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class FiguresTest {
    private static final String HEAD = "id\tname\tsynonyms\tabbrevs\tkind\tlead\toffsets\tactions\tturns\ttransfer"
            + "\tnet_turn\ttravel\tcall_head\tcall_words\tvariants\tsources\tstatus\n";
    private static final String ROW =
            "tap_tap\ttap tap\t\t\tfigure\tR\t0|1\tR:tap:fwd|R:tap:fwd\t0|0\tN|N\t0\tnone\ttap\ttap|tap\t\tCP\tcp\n";

    static List<FigureRow> rows() {
        return Figures.standard().rows();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyRowIsWhole(FigureRow row) {
        Figure figure = row.figure();
        assertFalse(figure.name().isBlank() || figure.callHead().isBlank(), figure.id());
        assertFalse(figure.pattern().isEmpty(), figure.id());
        assertFalse(row.sources().isBlank(), figure.id() + " has no source");
        for (int i = 1; i < figure.pattern().size(); i++) {
            Counts before = figure.pattern().get(i - 1).offset();
            assertTrue(before.compareTo(figure.pattern().get(i).offset()) < 0, figure.id() + " goes back in time");
        }
    }

    /** A foot that bears the weight cannot step; the first foot is free by the row's own start. */
    @ParameterizedTest
    @MethodSource("rows")
    void weightGoesFromFootToFoot(FigureRow row) {
        Weight weight = Weight.UNKNOWN;
        for (Figure.Beat beat : row.figure().pattern()) {
            if (beat.transfer() == Transfer.SPLIT) {
                weight = Weight.BOTH;
            } else if (beat.foot().isPresent() && beat.transfer().takesWeight()) {
                boolean stays = Set.of(Action.DROP, Action.BUMP, Action.STOMP, Action.SWAY, Action.GRIND, Action.UNWIND)
                        .contains(beat.action());
                assertTrue(
                        stays || !weight.isOn(beat.foot().get()), row.figure().id());
                weight = Weight.on(beat.foot().get());
            }
        }
    }

    /** Nearly every call can be said in two beats (European square-dance callers' article, 1999): three short words. */
    @ParameterizedTest
    @MethodSource("rows")
    void callsAreShort(FigureRow row) {
        assertTrue(row.figure().callHead().split(" ").length <= 4, row.figure().callHead());
        for (String choices : row.figure().callWords()) {
            for (String word : choices.split("/")) {
                assertTrue(
                        word.matches("\\(?[A-Za-z][A-Za-z ]*\\)?"), row.figure().id() + ": " + word);
                assertTrue(
                        word.length() <= 12 && word.split(" ").length <= 2,
                        row.figure().id() + ": " + word);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theMirrorOfAMirrorIsTheFigure(FigureRow row) {
        Figure figure = row.figure();
        Figure mirror = figure.mirrored();
        assertEquals(figure, mirror.mirrored());
        assertEquals(figure.lead().other(), mirror.lead());
        for (int i = 0; i < figure.pattern().size(); i++) {
            assertEquals(
                    figure.pattern().get(i).foot().map(Foot::other),
                    mirror.pattern().get(i).foot());
            assertEquals(
                    -figure.pattern().get(i).turn().degrees(),
                    mirror.pattern().get(i).turn().degrees());
            assertEquals(
                    figure.pattern().get(i).offset(), mirror.pattern().get(i).offset());
        }
    }

    @Test
    void identifiersAreUnique() {
        Set<String> ids = new HashSet<>();
        rows().forEach(row ->
                assertTrue(ids.add(row.figure().id()), row.figure().id()));
        assertTrue(ids.size() > 100);
    }

    /**
     * Feet and counts of a dozen figures, right foot first. Sources are the published lists that each row cites: coaster
     * (seven club glossaries: back, together, forward), sailor, kick ball change and Monterey (The Rays), jazz box (The
     * Rays; Evolution), vine (Boots 'n' Spurs), lock step (Passion), heel switches (Stompers), Charleston (The Rays and
     * three more), pivot (Boots 'n' Spurs: step R forward turns left). The other two are common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({
        "coaster step, R step back 1|L close together 1&|R step fwd 2",
        "sailor step, R behind behind 1|L step side 1&|R step side 2",
        "kick ball change, R kick fwd 1|R ball place 1&|L change place 2",
        "jazz box, R cross over 1|L step back 2|R step side 3|L close together 4",
        "vine, R step side 1|L behind behind 2|R step side 3|L touch together 4",
        "lock step forward, R step fwd 1|L lock behind 2|R step fwd 3",
        "heel switches, R heel fwd 1|R close together 1&|L heel fwd 2|L close together 2&",
        "monterey, R point side 1|R close together 2|L point side 3|L close together 4",
        "charleston step, R step fwd 1|L kick fwd 2|L step back 3|R touch back 4",
        "rocking chair, R rock fwd 1|L recover place 2|R rock back 3|L recover place 4",
        "cross shuffle, R cross over 1|L step side 1&|R cross over 2",
        "weave, R cross over 1|L step side 2|R behind behind 3|L step side 4"
    })
    void figuresOfTheTrade(String name, String expected) {
        Figure figure = Figures.standard().named(name).orElseThrow();
        List<String> danced = new ArrayList<>();
        for (Figure.Beat beat : figure.pattern()) {
            double offset = beat.offset().toDecimal();
            danced.add(beat.foot().orElseThrow().letter() + " " + beat.action().word() + " "
                    + beat.direction().word() + " " + ((int) offset + 1) + (offset % 1 == 0 ? "" : "&"));
        }
        assertEquals(expected, String.join("|", danced));
    }

    /** Turns of figures. The Rays: Monterey turns half toward the pointing foot; the others: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"Monterey 1/2 turn, 180", "jazz box 1/4 turn, 90", "rolling vine, 360", "pivot 1/2 turn, -180"})
    void turningFigures(String name, int degrees) {
        Figure figure = Figures.standard().named(name).orElseThrow();
        int net = figure.pattern().stream()
                .mapToInt(beat -> beat.turn().degrees())
                .sum();
        assertEquals(degrees, net);
    }

    /** Case, hyphens and spaces vary from writer to writer. Common practice, no source. */
    @Test
    void namesAreFoundHoweverTheyAreSpelt() {
        Optional<Figure> figure = Figures.standard().named("kick ball change");
        assertTrue(figure.isPresent());
        assertEquals(figure, Figures.standard().named("Kick-Ball-Change"));
        assertEquals(figure, Figures.standard().named("KBC"));
        assertTrue(Figures.standard().named("no such thing").isEmpty());
    }

    @Test
    void singleActionsHaveAWord() {
        assertEquals("cross", Figures.standard().callWord(Action.CROSS, Direction.OVER));
        assertEquals("touch", Figures.standard().callWord(Action.TOUCH, Direction.TOGETHER));
        for (Action action : Action.values()) {
            assertFalse(Figures.standard().callWord(action, Direction.NONE).isBlank());
        }
    }

    @Test
    void aTableOfOneRowIsRead() {
        assertEquals(
                "tap_tap",
                Figures.read("t.tsv", HEAD + "# a comment\n" + ROW)
                        .rows()
                        .get(0)
                        .figure()
                        .id());
    }

    /** The table is part of the program: a broken row names its line and column. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "R:tap:fwd|R:tap:fwd;R:tap:fwd|R:fly:fwd;t.tsv:2: column actions: unknown action fly",
                "R:tap:fwd|R:tap:fwd;R:tap:fwd|R:tap:moon;t.tsv:2: column actions: unknown direction moon",
                "R:tap:fwd|R:tap:fwd;R:tap:fwd|Q:tap:fwd;t.tsv:2: column actions: unknown foot Q",
                "tap|tap;tap;t.tsv:2: column call_words: 1 words for 2 actions",
                "0|0;0|30;t.tsv:2: column turns: not a multiple of 45: 30",
                "0|0;0|45;t.tsv:2: column net_turn: turns add up to 45",
                "N|N;N|Z;t.tsv:2: column transfer: unknown transfer Z",
                "0|1;0|x;t.tsv:2: column offsets: not a number: x",
                "figure;dance;t.tsv:2: column kind: unknown kind dance",
                "CP\tcp;CP\tmaybe;t.tsv:2: column status: unknown status",
                "CP\tcp;CP;t.tsv:2: 16 columns, expected 17"
            })
    void aBrokenRowIsNamed(String right, String wrong, String message) {
        String table = HEAD + ROW.replace(right.replace("\\t", "\t"), wrong.replace("\\t", "\t"));
        IllegalStateException broken = assertThrows(IllegalStateException.class, () -> Figures.read("t.tsv", table));
        assertEquals(message, broken.getMessage());
    }
}
