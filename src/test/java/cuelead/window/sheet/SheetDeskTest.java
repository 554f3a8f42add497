package cuelead.window.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.listing.ListedLine;
import cuelead.sheet.StepPlace;
import cuelead.window.FakeHost;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet that is worked on, with all that is done beside it done when the test says so. */
class SheetDeskTest implements SheetDesk.Shown {
    private static final String SHEET = """
            MOORING LINES
            Count: 8   Wall: 1
            Song: songs/mooring.mp3

            [1-8] VINE RIGHT AND LEFT
            1-2 Step R to side, step L behind R
            3-4 Step R to side, touch L beside R
            5-6 Step L to side, step R behind L
            7-8 Step L to side, touch R beside L
            """;

    @TempDir
    private Path temp;

    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private FakeHost host;
    private SheetDesk desk;
    private String text = "";
    private Understood understood = Understood.NOTHING;
    private Path chosen;

    @BeforeEach
    void open() throws Exception {
        host = new FakeHost(temp);
        desk = new SheetDesk(host, waiting::add, waiting::add, this);
        chosen = Files.writeString(temp.resolve("mooring.txt"), SHEET);
        desk.take(chosen);
        rest();
    }

    /** All that waits is done. */
    private void rest() {
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }
    }

    private void type(String typed) {
        text = typed;
        desk.typed(typed);
        desk.pause();
        rest();
    }

    @Override
    public void opening() {
        text = "";
    }

    @Override
    public void begin(String now) {
        text = now;
    }

    @Override
    public void put(String now) {
        text = now;
    }

    @Override
    public void understood(Understood now) {
        understood = now;
    }

    private Path copy() {
        return host.inHand().sheet().orElseThrow();
    }

    private List<String> calls() {
        return understood.lines().stream()
                .filter(ListedLine.Counted.class::isInstance)
                .map(line -> ((ListedLine.Counted) line).call())
                .toList();
    }

    @Test
    void whatIsOpenedIsUnderstood() {
        assertEquals(SHEET, text);
        assertEquals(List.of("right", "behind", "side", "touch", "left", "behind", "side", "touch"), calls());
        assertEquals("MOORING LINES", host.inHand().title());
        assertTrue(host.inHand().isDance());
        assertEquals(chosen, copy());
    }

    @Test
    void theFirstEditMakesACopyAndSaysSoOnce() throws Exception {
        type(SHEET.replace("MOORING", "HARBOUR"));
        type(SHEET.replace("MOORING", "HARBOR"));
        assertEquals(SHEET, Files.readString(chosen));
        assertEquals(SHEET.replace("MOORING", "HARBOR"), Files.readString(copy()));
        assertEquals("HARBOR LINES", host.inHand().title());
        assertEquals(
                1,
                host.told().stream()
                        .filter(told -> told.contains("edited copy"))
                        .count());
    }

    @Test
    void theCopyKeepsItsSong() throws Exception {
        Files.createDirectory(temp.resolve("songs"));
        Path song = Files.createFile(temp.resolve("songs").resolve("mooring.mp3"));
        Path other = Files.createFile(temp.resolve("songs").resolve("tide.mp3"));
        type(SHEET.replace("MOORING", "HARBOUR"));
        assertEquals(Optional.of(song), host.inHand().song());
        type(SHEET.replace("mooring.mp3", "ti"));
        assertEquals(Optional.of(song), host.inHand().song());
        type(SHEET.replace("mooring.mp3", "tide.mp3"));
        assertEquals(Optional.of(other), host.inHand().song());
    }

    @Test
    void aSongThatTheUserChoseStays() throws Exception {
        Files.createDirectory(temp.resolve("songs"));
        Files.createFile(temp.resolve("songs").resolve("mooring.mp3"));
        host.inHand().takeSong(temp.resolve("chosen.mp3"));
        type(SHEET.replace("MOORING", "HARBOUR"));
        assertEquals(Optional.of(temp.resolve("chosen.mp3")), host.inHand().song());
    }

    @Test
    void aCallIsWrittenIntoTheSheetAndTakenBack() throws Exception {
        desk.call(new StepPlace(0, 3), "tap");
        rest();
        assertEquals(SHEET.replace("touch L beside R", "touch L beside R  \"side, tap\""), text);
        assertEquals("tap", calls().get(3));
        assertEquals(text, Files.readString(copy()));
        desk.undo();
        rest();
        assertEquals(SHEET, text);
        assertEquals("touch", calls().get(3));
        desk.redo();
        rest();
        assertEquals("tap", calls().get(3));
    }

    @Test
    void aCallThatCannotBeWrittenIsToldAndChangesNothing() {
        desk.call(new StepPlace(0, 3), "tap, tap");
        rest();
        assertEquals(SHEET, text);
        assertTrue(
                host.told().stream().anyMatch(told -> told.contains("commas")),
                host.told().toString());
        assertFalse(desk.versions().canUndo());
    }

    @Test
    void whatIsTypedMeanwhileIsNotLost() {
        desk.call(new StepPlace(0, 3), "tap");
        desk.typed(SHEET.replace("MOORING", "HARBOUR"));
        text = SHEET.replace("MOORING", "HARBOUR");
        desk.call(new StepPlace(0, 4), "out");
        rest();
        assertEquals(
                SHEET.replace("MOORING", "HARBOUR")
                        .replace("touch L beside R", "touch L beside R  \"side, tap\"")
                        .replace("step R behind L", "step R behind L  \"out\""),
                text);
        assertEquals("HARBOUR LINES", host.inHand().title());
    }

    @Test
    void leavingKeepsWhatIsNotKeptYet() throws Exception {
        desk.typed(SHEET + "Note: slowly.\n");
        desk.leave();
        assertEquals(SHEET + "Note: slowly.\n", Files.readString(copy()));
        assertEquals(SHEET, Files.readString(chosen));
    }

    @Test
    void findingsAreAtTheirLines() {
        type(SHEET.replace("step R behind L", "step L behind L"));
        assertEquals(
                List.of(8), understood.findings().stream().map(Finding::line).toList());
    }

    @Test
    void whatAnotherProgramWroteIsReadAgain() throws Exception {
        desk.enter();
        rest();
        assertEquals(SHEET, text);
        Files.writeString(chosen, SHEET.replace("MOORING", "OTHER"));
        Files.setLastModifiedTime(chosen, FileTime.fromMillis(1_000_000));
        desk.enter();
        rest();
        assertEquals("OTHER LINES", host.inHand().title());
        desk.typed(SHEET);
        Files.setLastModifiedTime(chosen, FileTime.fromMillis(2_000_000));
        desk.enter();
        rest();
        assertEquals(SHEET, desk.versions().now());
    }

    @Test
    void whatIsWrittenWithoutASheetIsKept() throws Exception {
        desk.take(temp.resolve("none.txt"));
        rest();
        assertTrue(
                host.told().stream().anyMatch(told -> told.contains("none.txt")),
                host.told().toString());
        type(SHEET);
        assertEquals(SHEET, Files.readString(copy()));
        assertEquals("MOORING LINES", host.inHand().title());
    }

    @Test
    void aPastedSheetIsAFileOfItsOwn() throws Exception {
        desk.take("Count: 8\n" + SHEET);
        rest();
        Path pasted = copy();
        type(SHEET);
        assertEquals(pasted, copy());
        assertEquals(SHEET, Files.readString(pasted));
    }

    @Test
    void aCallWaitsForNoSheetThatIsGone() throws Exception {
        Path other = Files.writeString(temp.resolve("other.txt"), SHEET.replace("MOORING", "OTHER"));
        desk.call(new StepPlace(0, 3), "tap");
        desk.take(other);
        rest();
        assertEquals(SHEET.replace("MOORING", "OTHER"), text);
        assertEquals(SHEET, Files.readString(chosen));
    }
}
