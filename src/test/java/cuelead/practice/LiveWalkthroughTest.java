package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.lesson.Lesson;
import cuelead.lesson.Pace;
import cuelead.lesson.Pass;
import cuelead.lesson.Piece;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two passes to clicks at 120 and 96 a minute: 4 s or 5 s of run-up and as much dance. */
class LiveWalkthroughTest {
    private static final Pass FIRST = new Pass(new Piece.OneSection(1), Pace.FULL, 2, Pass.Over.CLICKS);
    private static final Pass SECOND = new Pass(new Piece.OneSection(2), Pace.STEADY, 1, Pass.Over.CLICKS);

    @TempDir
    private static Path folder;

    private Practice practice;
    private Walkthrough walkthrough;
    private FakeSpeakers speakers;
    private LiveWalkthrough live;

    @BeforeAll
    static void aDance() throws Exception {
        Files.writeString(folder.resolve("dance.txt"), HumSong.TWO_SECTIONS);
    }

    @BeforeEach
    void play() throws Exception {
        Wish wish = Wishes.atTempo(folder.resolve("dance.txt"), 120);
        practice = Practice.prepare(wish, new Places(folder.resolve("cache"), folder), (work, done) -> {});
        walkthrough = practice.walkthrough(new Lesson(List.of(FIRST, SECOND)));
        speakers = new FakeSpeakers(practice.rate());
        live = walkthrough.live(speakers, Optional.empty(), Delays.NONE);
    }

    @AfterEach
    void close() {
        practice.close();
    }

    private void hear(double seconds) throws Exception {
        for (double passed = 0; passed < seconds && !live.hasEnded(); passed += 0.02) {
            speakers.hear(0.02);
            live.tick();
        }
    }

    /** To music, twice, behind clicks: the music begins softly once. */
    @Test
    void overMusicItIsTheTrackToo() throws Exception {
        practice.close();
        Path song = HumSong.write(folder);
        Wish wish = Wishes.withSong(folder.resolve("dance.txt"), song);
        practice = Practice.prepare(wish, new Places(folder.resolve("cache"), folder), (work, done) -> {});
        practice.await(practice.toFrame());
        Pass music = new Pass(new Piece.OneSection(2), Pace.FULL, 2, Pass.Over.MUSIC);
        walkthrough = practice.walkthrough(new Lesson(List.of(SECOND, music)));
        speakers = new FakeSpeakers(practice.rate());
        live = walkthrough.live(speakers, Optional.empty(), Delays.NONE);
        hear(120);
        int second = practice.rate().hz();
        int begins = practice.rate().framesIn(walkthrough.lengths().get(0).seconds());
        float[] alone = new float[(int) (2 * walkthrough.track().toFrame())];
        walkthrough.track().musicStem().read(alone, alone.length / 2);
        assertEquals(0, level(alone, 0, begins - second / 2));
        double risen = level(alone, begins + 2 * second, begins + 3 * second);
        assertTrue(level(alone, begins + second / 10, begins + second / 4) < risen / 8, "it begins softly");
        Pass once = new Pass(music.piece(), Pace.FULL, 1, Pass.Over.MUSIC);
        int again = (int)
                practice.walkthrough(new Lesson(List.of(SECOND, once))).track().toFrame();
        float[] mix = new float[alone.length];
        walkthrough.track().mix().read(mix, mix.length / 2);
        float[] heard = speakers.heard();
        // going over is a blend when it is live, and a little fade in a file
        int seam = second / 50;
        assertArrayEquals(Arrays.copyOf(mix, 2 * (begins - seam)), Arrays.copyOf(heard, 2 * (begins - seam)), 1e-4f);
        assertArrayEquals(frames(mix, begins + seam, again - seam), frames(heard, begins + seam, again - seam), 1e-4f);
        assertArrayEquals(
                frames(mix, again + seam, mix.length / 2 - second),
                frames(heard, again + seam, mix.length / 2 - second),
                1e-4f);
        for (int at = again - second; at < again + 2 * second; at += second / 4) {
            assertTrue(level(alone, at, at + second / 4) > risen / 4, "it goes on the second time");
        }
    }

    private static float[] frames(float[] stereo, int from, int to) {
        return Arrays.copyOfRange(stereo, 2 * from, 2 * to);
    }

    private static double level(float[] stereo, int from, int to) {
        double energy = 0;
        for (int i = 2 * from; i < 2 * to; i++) {
            energy += stereo[i] * stereo[i];
        }
        return Math.sqrt(energy / (to - from));
    }

    @Test
    void untouchedItIsTheTrack() throws Exception {
        hear(120);
        assertTrue(live.hasEnded());
        Track track = walkthrough.track();
        float[] expected = new float[(int) (2 * track.toFrame())];
        track.mix().read(expected, expected.length / 2);
        float[] heard = speakers.heard();
        assertEquals(expected.length, heard.length, 2 * 200);
        int common = Math.min(expected.length, heard.length);
        assertArrayEquals(Arrays.copyOf(expected, common), Arrays.copyOf(heard, common), 1e-4f);
    }

    @Test
    void itSaysWhichPassAndWhichTime() throws Exception {
        hear(1);
        assertEquals(1, live.now().pass());
        assertEquals(1, live.now().repeat());
        hear(13);
        assertEquals(2, live.now().repeat());
        hear(8);
        assertEquals(2, live.now().pass());
        assertEquals(SECOND, live.now().wanted());
    }

    /** What is left is what has not been heard of the track; slower passes take longer. */
    @Test
    void itSaysHowLongItStillGoes() throws Exception {
        double whole = walkthrough.lengths().stream()
                .mapToDouble(Walkthrough.PassLength::seconds)
                .sum();
        hear(5);
        assertEquals(whole - 5, live.now().secondsLeft(), 0.1);
        hear(20);
        assertEquals(whole - 25, live.now().secondsLeft(), 0.1);
        live.again(-1);
        hear(2);
        assertEquals(2, live.now().pass());
        double slower = walkthrough.lengths().get(1).seconds() / 0.75 * 0.8;
        assertEquals(slower, live.now().secondsLeft(), 3.5);
        hear(60);
        assertEquals(0, live.now().secondsLeft(), 0.1);
    }

    @Test
    void passesThatAreNotWantedAreLeftOut() throws Exception {
        speakers = new FakeSpeakers(practice.rate());
        Lesson all = new Lesson(List.of(FIRST, SECOND, FIRST, SECOND));
        live = practice.walkthrough(all.only(List.of(2, 4))).live(speakers, Optional.empty(), Delays.NONE);
        hear(2);
        assertEquals(2, live.now().pass());
        assertEquals(4, live.now().passes());
        assertEquals(Optional.of(SECOND), live.now().next());
        assertFalse(live.skip(-1));
        assertTrue(live.skip(1));
        hear(2);
        assertEquals(4, live.now().pass());
        assertEquals(Optional.empty(), live.now().next());
        assertFalse(live.skip(1));
    }

    @Test
    void anOrderIsObeyedOnTheBeat() throws Exception {
        hear(6.3);
        double oldBeat = heardBeat();
        live.skip(1);
        double ordered = speakers.heardSeconds();
        while (live.now().pass() == 1) {
            hear(0.02);
        }
        assertTrue(speakers.heardSeconds() - ordered < 0.8, speakers.heardSeconds() + " s");
        double beatsBetween = (heardBeat() - oldBeat) / 0.5;
        assertEquals(Math.rint(beatsBetween), beatsBetween, 1e-3);
    }

    /** When the beat that comes next, or has just been heard, leaves the speakers, seconds of theirs. */
    private double heardBeat() {
        double song = live.heard().songSeconds();
        BeatGrid grid = live.heard().timeline().grid();
        double beat = grid.secondsAt(Landing.beatFrom(grid, song - 0.03));
        return speakers.heardSeconds() + beat - song;
    }

    @Test
    void aPassAgainBeginsWithItsFirstTime() throws Exception {
        hear(14);
        assertEquals(2, live.now().repeat());
        live.again();
        hear(1);
        assertEquals(1, live.now().repeat());
        assertEquals(1, live.now().pass());
    }

    @Test
    void slowerStaysSoAndIsHeldInItsRange() throws Exception {
        hear(2);
        assertEquals(Optional.of(new Pace.Share(0.95)), live.again(-1));
        hear(1);
        assertEquals(Optional.of(new Pace.Share(0.9)), live.again(-1));
        assertEquals(Optional.of(new Pace.Share(0.4)), live.again(-99));
        assertEquals(Optional.empty(), live.again(-1));
        hear(1);
        assertEquals(new Pace.Share(0.4), live.lesson().passes().get(0).pace());
        assertEquals(SECOND, live.lesson().passes().get(1));
        assertEquals(48, live.heard().timeline().grid().medianTempo().beatsPerMinute(), 1e-6);
        assertEquals(new Tempo(120), walkthrough.full());
    }

    @Test
    void laterPassesThatWereAsFastBecomeSlowerToo() throws Exception {
        live = live(FIRST, SECOND, FIRST);
        hear(2);
        live.again(-1);
        List<Pass> passes = live.lesson().passes();
        assertEquals(
                List.of(0.95, 0.8, 0.95),
                passes.stream().map(LiveWalkthroughTest::ofFull).toList());
    }

    private static double ofFull(Pass pass) {
        return ((Pace.Share) pass.pace()).ofFull();
    }

    private LiveWalkthrough live(Pass... passes) throws Exception {
        speakers = new FakeSpeakers(practice.rate());
        return practice.walkthrough(new Lesson(List.of(passes))).live(speakers, Optional.empty(), Delays.NONE);
    }

    /** Whether the first skip waits, has been given to the speakers, or is heard. */
    @Test
    void everySkipCounts() throws Exception {
        for (double between = 0; between < 0.9; between += 0.1) {
            live = live(FIRST, SECOND, SECOND);
            hear(3);
            live.skip(1);
            hear(between);
            live.skip(1);
            hear(2);
            assertEquals(3, live.now().pass(), between + " s between");
        }
    }

    @Test
    void beyondTheEndsThereIsNothing() throws Exception {
        hear(2);
        assertFalse(live.skip(-1));
        assertTrue(live.skip(1));
        hear(2);
        assertFalse(live.skip(1));
        assertEquals(2, live.now().pass());
        assertTrue(live.skip(-1));
        hear(2);
        assertEquals(1, live.now().pass());
    }

    @Test
    void afterAPauseTheRunUpIsHeardAnew() throws Exception {
        hear(10);
        live.pause();
        assertTrue(live.isPaused());
        live.resume();
        hear(0.5);
        assertFalse(live.isPaused());
        double first = live.heard().timeline().counts().get(0).songSeconds();
        assertTrue(live.heard().songSeconds() < first - 2);
    }

    @Test
    void ordersWhilePausedAreObeyedAtOnce() throws Exception {
        hear(3);
        live.pause();
        live.skip(1);
        live.resume();
        hear(0.5);
        assertEquals(2, live.now().pass());
    }
}
