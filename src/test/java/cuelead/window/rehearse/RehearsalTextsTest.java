package cuelead.window.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import cuelead.rehearse.CallKind;
import cuelead.rehearse.HeardWord;
import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Review;
import cuelead.rehearse.ReviewedCall;
import cuelead.studio.RehearsalScene;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

class RehearsalTextsTest {
    private static final PlannedCall ROCK = PlannedCall.of("rock", 5, OptionalDouble.of(6), 2, 1, "S1");
    private static final PlannedCall TOUCH = PlannedCall.of("touch", 65, OptionalDouble.of(66), 2, 1, "S1");
    private static final Review REVIEW = new Review(List.of(
            new ReviewedCall(CallKind.OK, Optional.of(ROCK), heard("rock", 5.02), OptionalDouble.of(5.02)),
            new ReviewedCall(CallKind.MISSED, Optional.of(TOUCH), Optional.empty(), OptionalDouble.empty()),
            new ReviewedCall(CallKind.EXTRA, Optional.empty(), heard("okay", 70), OptionalDouble.of(70))));

    private static Optional<HeardWord> heard(String word, double seconds) {
        return Optional.of(new HeardWord(word, seconds - 0.1, seconds, seconds + 0.2));
    }

    @Test
    void theListHasAllCallsOrThoseThatWereNotOnTime() {
        CallsTable table = new CallsTable();
        table.show(REVIEW, CallsTable.Rows.ALL);
        assertEquals(3, table.getRowCount());
        table.choose(CallsTable.Rows.NOT_ON_TIME);
        assertEquals(List.of("1:05.0", "1", "S1", "touch", "missed"), row(table, 0));
        assertEquals(List.of("1:10.0", "", "", "okay", "said besides"), row(table, 1));
        assertEquals(2, table.getRowCount());
    }

    private static List<Object> row(CallsTable table, int row) {
        return IntStream.range(0, table.getColumnCount())
                .mapToObj(column -> table.getValueAt(row, column))
                .toList();
    }

    @Test
    void theWholeIsToldInASentence() {
        assertTrue(AfterPanel.words(REVIEW)
                .startsWith(
                        "1 of 2 calls were on time, 0 early, 0 late, 1 missed; 0 other words, and 1 said besides."));
        Review one = new Review(
                List.of(new ReviewedCall(CallKind.WRONG, Optional.of(ROCK), heard("touch", 5), OptionalDouble.of(5))));
        assertTrue(AfterPanel.words(one).contains("; 1 other word, and 0 said besides."));
    }

    @Test
    void takesAreNamedByDayAndNumberAndOthersByTheirFile() {
        assertEquals("27 November 2026, take 2", TakeNames.told(Path.of("2026-11-27-2.wav")));
        assertEquals("mine.wav", TakeNames.told(Path.of("mine.wav")));
    }

    @Test
    void thePlaceIsToldWithWallAndSectionWhereThereIsOne() {
        assertEquals(
                "Wall 1   S1   0:02",
                PromptPainter.place(new RehearsalScene(2, ROCK, Optional.empty(), Optional.empty())));
        PlannedCall countIn = PlannedCall.of("five", 5, OptionalDouble.empty(), 0, 0, "");
        assertEquals("0:02", PromptPainter.place(new RehearsalScene(2, countIn, Optional.empty(), Optional.empty())));
    }

    @Test
    void enterLetsTheChosenCallBeHeardAndNoKeyOfTheWindowIsLostInTheList() {
        List<ReviewedCall> heard = new ArrayList<>();
        AfterPanel panel = new AfterPanel(new AfterPanel.Deeds() {
            @Override
            public void hear(ReviewedCall call) {
                heard.add(call);
            }

            @Override
            public void again() {
                fail();
            }

            @Override
            public void back() {
                fail();
            }
        });
        panel.show(REVIEW);
        JTable table = table(panel).orElseThrow();
        InputMap keys = table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        assertNull(table.getActionMap().get(keys.get(KeyStroke.getKeyStroke("F8"))));
        table.getActionMap()
                .get(keys.get(KeyStroke.getKeyStroke("ENTER")))
                .actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, ""));
        assertEquals(List.of(REVIEW.calls().get(1)), heard);
    }

    private static Optional<JTable> table(Container in) {
        for (Component part : in.getComponents()) {
            if (part instanceof JTable table) {
                return Optional.of(table);
            }
            Optional<JTable> within = part instanceof Container inner ? table(inner) : Optional.empty();
            if (within.isPresent()) {
                return within;
            }
        }
        return Optional.empty();
    }
}
