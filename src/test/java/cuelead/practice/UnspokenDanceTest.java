package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.lesson.Lesson;
import cuelead.lesson.Pass;
import cuelead.lesson.UsualLesson;
import cuelead.plan.Call;
import cuelead.report.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A dance that the voice has never spoken, opened to be played live. */
class UnspokenDanceTest {
    @TempDir
    private Path folder;

    private Wish wish;

    @BeforeEach
    void aSong() throws Exception {
        HumSong.write(folder);
        Path sheet = folder.resolve("dance.txt");
        Files.writeString(
                sheet,
                HumSong.TWO_SECTIONS
                        .replace("8 counts", "24 counts")
                        .replace("Walk forward right, left", "Walk forward right, left \"\u6b65\""));
        wish = Wishes.withSong(sheet, folder.resolve("hum.wav"));
    }

    private Places places() {
        return new Places(folder.resolve("cache"), folder);
    }

    private static List<Call> calls(Heard heard) {
        return heard.calls().stream().map(SpokenCall::call).toList();
    }

    private List<Path> kept() throws Exception {
        Path words = folder.resolve("cache").resolve("words");
        if (!Files.exists(words)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(words)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void isPlayedWithoutItsWordsAndThenWithThem() throws Exception {
        List<Call> played;
        List<Problem> told;
        double guessedDb;
        try (Practice practice = Practice.prepareToPlay(wish, places(), Progress.UNTOLD)) {
            assertEquals(List.of(), kept());
            told = practice.problems();
            assertThrows(IllegalStateException.class, practice::mix);
            practice.await(practice.toFrame());
            FakeSpeakers speakers = new FakeSpeakers(HumSong.RATE);
            LivePractice live = practice.live(speakers);
            assertEquals(List.of(), calls(live.heard()));
            while (live.heard().calls().isEmpty()) {
                live.tick();
                live.check();
                if (practice.spokenCalls().size() > 0) { // all are spoken by now, and ordered with the next look
                    speakers.hear(0.02);
                }
            }
            assertTrue(live.heard().songSeconds() < 1);
            hear(live, speakers);
            played = calls(live.heard());
            assertEquals(played, practice.plan().calls());
            assertEquals(told, practice.problems());
            guessedDb = loudnessDb(speakers);
        }
        assertTrue(kept().stream().noneMatch(file -> file.toString().endsWith(".part")));
        try (Practice again = Practice.prepareToPlay(wish, places(), Progress.UNTOLD);
                Practice track = Practice.prepare(wish, places(), Progress.UNTOLD)) {
            again.await(again.toFrame());
            assertEquals(played, again.plan().calls());
            assertEquals(played, track.plan().calls());
            assertEquals(track.problems(), told);
            assertTrue(told.stream().anyMatch(problem -> problem.kind().equals("word_not_said")), told.toString());
            assertTrue(told.stream().anyMatch(problem -> problem.kind().equals(WordDoubts.HARD_WORD)), told.toString());
            assertEquals(100, again.mix().read(new float[200], 100));
            FakeSpeakers speakers = new FakeSpeakers(HumSong.RATE);
            hear(again.live(speakers), speakers);
            assertEquals(loudnessDb(speakers), guessedDb, 0.5);
        }
    }

    private static void hear(LivePractice live, FakeSpeakers speakers) {
        while (speakers.heardSeconds() < 6) {
            speakers.hear(0.02);
            live.tick();
        }
    }

    /** Of the music, from 3 to 5 s: before the first call. */
    private static double loudnessDb(FakeSpeakers speakers) {
        float[] heard = speakers.heard();
        double sum = 0;
        for (int sample = 2 * HumSong.RATE.framesIn(3); sample < 2 * HumSong.RATE.framesIn(5); sample++) {
            sum += heard[sample] * heard[sample];
        }
        return 10 * Math.log10(sum);
    }

    @Test
    void whoQuitsBeforeItIsSpokenLeavesNothingHalfDone() throws Exception {
        try (Practice practice = Practice.prepareToPlay(wish, places(), Progress.UNTOLD)) {
            practice.awaitPlayable(practice.toFrame());
            LivePractice live = practice.live(new FakeSpeakers(HumSong.RATE));
            live.tick();
        }
        List<Path> left = kept();
        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            if (thread.getName().equals("cuelead-speaking")) {
                thread.join();
            }
        }
        assertEquals(left, kept());
        assertTrue(kept().stream().noneMatch(file -> file.toString().endsWith(".part")));
        assertFalse(kept().stream().anyMatch(file -> file.toString().endsWith(".sheet")));
    }

    @Test
    void aLessonOfItIsCalledAsEver() throws Exception {
        List<List<Call>> rounds;
        Lesson lesson;
        try (Practice practice = Practice.prepareToPlay(wish, places(), Progress.UNTOLD)) {
            lesson = UsualLesson.of(practice.dance(), Pass.Over.MUSIC);
            rounds = firstRounds(practice, lesson);
        }
        try (Practice practice = Practice.prepare(wish, places(), Progress.UNTOLD)) {
            assertEquals(rounds, firstRounds(practice, lesson));
        }
    }

    private static List<List<Call>> firstRounds(Practice practice, Lesson lesson) throws Exception {
        practice.await(practice.toFrame());
        FakeSpeakers speakers = new FakeSpeakers(HumSong.RATE);
        LiveWalkthrough live = practice.walkthrough(lesson).live(speakers, Optional.empty(), Delays.NONE);
        List<Call> first = calls(live.heard());
        for (int look = 0; look < 2_000; look++) {
            speakers.hear(0.02);
            live.tick();
        }
        assertFalse(first.isEmpty());
        return List.of(first, calls(live.heard()));
    }
}
