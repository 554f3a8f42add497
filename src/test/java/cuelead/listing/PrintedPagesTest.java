package cuelead.listing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever is laid on pages of whatever height. */
class PrintedPagesTest {
    private static final double PAGE = 300;
    private static final double ROUNDING = 1e-9;

    private static PrintedRow row(double height, boolean keepsNext) {
        return new PrintedRow(List.of(), height, keepsNext);
    }

    /** Each block has a head, and rows of all heights that a page can hold with it. */
    private static List<List<PrintedRow>> blocks(Random dice) {
        List<List<PrintedRow>> blocks = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            List<PrintedRow> block = new ArrayList<>(List.of(row(20, true)));
            for (int j = dice.nextInt(14); j >= 0; j--) {
                block.add(row(10 + dice.nextInt(90), false));
            }
            blocks.add(block);
        }
        return blocks;
    }

    @Test
    void nothingIsLostAndAllKeepsItsOrder() {
        for (int seed = 0; seed < 50; seed++) {
            List<List<PrintedRow>> blocks = blocks(new Random(seed));
            List<PrintedRow> all = blocks.stream().flatMap(List::stream).toList();
            List<PrintedRow> placed = PrintedPages.of(blocks, PAGE).stream()
                    .flatMap(List::stream)
                    .map(PrintedPages.Placed::row)
                    .toList();
            assertEquals(all.size(), placed.size());
            for (int i = 0; i < all.size(); i++) {
                assertSame(all.get(i), placed.get(i));
            }
        }
    }

    @Test
    void noRowIsCutOrStandsOnAnother() {
        for (int seed = 0; seed < 50; seed++) {
            for (List<PrintedPages.Placed> page : PrintedPages.of(blocks(new Random(seed)), PAGE)) {
                double free = 0;
                for (PrintedPages.Placed placed : page) {
                    assertTrue(placed.topPoints() >= free - ROUNDING, page.toString());
                    free = placed.topPoints() + placed.row().heightPoints();
                }
                assertTrue(free <= PAGE + ROUNDING, page.toString());
            }
        }
    }

    @Test
    void aHeadIsNeverTheLastOfAPage() {
        for (int seed = 0; seed < 50; seed++) {
            for (List<PrintedPages.Placed> page : PrintedPages.of(blocks(new Random(seed)), PAGE)) {
                assertTrue(!page.get(page.size() - 1).row().keepsNext(), page.toString());
            }
        }
    }

    @Test
    void aBlockThatFitsAPageIsNotParted() {
        List<PrintedRow> half = List.of(row(20, true), row(100, false), row(80, false));
        assertEquals(
                List.of(3, 3, 3),
                PrintedPages.of(List.of(half, half, half), PAGE).stream()
                        .map(List::size)
                        .toList());
    }

    @Test
    void evenNothingIsAPage() {
        assertEquals(1, PrintedPages.of(List.of(), PAGE).size());
    }
}
