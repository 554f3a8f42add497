package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.practice.Delays;
import cuelead.practice.LiveBeats;
import cuelead.song.BeatFile;
import cuelead.song.BeatsInHand;
import cuelead.song.Correction;
import cuelead.song.Ear;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A user with keys, on speakers whose time passes when told. */
class TapDeskTest {
    private static final Path FILE = Path.of("demo-songs", "lamp-on-the-quay.mp3");

    private Song song;
    private BeatGrid exact;
    private FakeSpeakers speakers;
    private LiveBeats live;
    private TapDesk desk;
    /** What is to be done in the background, where that takes time. */
    private final Deque<Runnable> waiting = new ArrayDeque<>();

    private boolean waits;

    @BeforeEach
    void play() throws Exception {
        song = SongFile.open(FILE, Optional.empty());
        song.pcm().await(song.pcm().lengthFrames());
        exact = BeatFile.read(BeatFile.beside(FILE)).beats().orElseThrow();
        speakers = new FakeSpeakers(song.pcm().rate());
        live = new LiveBeats(song, speakers, Optional.empty(), Delays.NONE);
        BeatGrid wrong = Correction.HALF_BEAT.apply(exact, Optional.empty());
        desk = new TapDesk(
                FILE, live, new BeatsInHand(wrong, List.of()), Optional.empty(), new Ear(), this::inBackground);
    }

    private void inBackground(Runnable task) {
        if (waits) {
            waiting.add(task);
        } else {
            task.run();
        }
    }

    @AfterEach
    void close() {
        song.close();
    }

    private void hear(double seconds) throws Exception {
        for (double passed = 0; passed < seconds - 1e-9; passed += 0.02) {
            speakers.hear(0.02);
            desk.tick();
        }
    }

    private void tapFrom(int firstBeat, int taps) throws Exception {
        for (int i = firstBeat; i < firstBeat + taps; i++) {
            hear(exact.beatSeconds(i) - live.heardSeconds());
            desk.obey(" ");
        }
    }

    @Test
    void tapsForSomeBarsPutTheWholeSongRight() throws Exception {
        tapFrom(16, 12);
        hear(2);
        BeatGrid beats = desk.hand().beats();
        assertEquals(exact.beatSeconds(200), beats.beatSeconds(beats.nearestBeat(exact.beatSeconds(200))), 0.005);
        assertEquals(1, beats.countInPhrase(beats.nearestBeat(exact.beatSeconds(16))));
        assertTrue(desk.line().contains("found everywhere"), desk.line());
        desk.obey("enter");
        assertTrue(desk.isOver() && desk.isKept());
    }

    /** Enter right after the last tap: the taps are kept, though nothing was heard of them yet. */
    @Test
    void tapsAreKeptThoughTheyAreStillBeingCarried() throws Exception {
        tapFrom(16, 12);
        waits = true;
        desk.obey("enter");
        assertFalse(desk.isOver(), "taps are waited for");
        desk.tick();
        assertFalse(desk.isOver(), "still");
        waiting.remove().run();
        desk.tick();
        assertTrue(desk.isOver() && desk.isKept());
        assertEquals(1, desk.hand().comments().size());
    }

    @Test
    void whoQuitsMeanwhileKeepsNothing() throws Exception {
        tapFrom(16, 12);
        waits = true;
        desk.obey("enter");
        desk.obey("q");
        assertTrue(desk.isOver());
        assertFalse(desk.isKept());
    }

    @Test
    void keysCorrectAndTakeBackAndNothingIsKeptWithoutEnter() throws Exception {
        hear(1);
        desk.obey("h");
        BeatGrid once = desk.hand().beats();
        desk.obey("+");
        assertTrue(desk.hand().beats().size() > 1.9 * once.size());
        desk.obey("u");
        assertEquals(once, desk.hand().beats());
        desk.obey("q");
        assertTrue(desk.isOver());
        assertFalse(desk.isKept());
    }

    @Test
    void theSongCanBeGoneBackInAndPaused() throws Exception {
        hear(9);
        desk.obey("left");
        hear(0.1);
        assertEquals(4.1, live.heardSeconds(), 0.15);
        desk.obey("p");
        assertTrue(desk.line().startsWith("PAUSED"), desk.line());
        hear(1);
        desk.obey("p");
        hear(0.1);
        assertEquals(4.2, live.heardSeconds(), 0.2);
    }
}
