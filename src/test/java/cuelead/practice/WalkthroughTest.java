package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.lesson.Lesson;
import cuelead.lesson.Pace;
import cuelead.lesson.Pass;
import cuelead.lesson.Piece;
import cuelead.lesson.UsualLesson;
import cuelead.plan.Call;
import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.time.Tempo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lessons as tracks, with the real voice. */
class WalkthroughTest {
    @TempDir
    private static Path folder;

    @BeforeAll
    static void aSong() throws Exception {
        HumSong.write(folder);
        Files.writeString(folder.resolve("dance.txt"), HumSong.TWO_SECTIONS);
    }

    private static Practice practice(Wish wish) throws Exception {
        Practice practice = Practice.prepare(wish, new Places(folder.resolve("cache"), folder), (work, done) -> {});
        practice.await(practice.toFrame());
        return practice;
    }

    private static Practice hum() throws Exception {
        return practice(Wishes.withSong(folder.resolve("dance.txt"), folder.resolve("hum.wav")));
    }

    private static Track track(Practice practice, Pass... passes) throws Refused {
        return practice.walkthrough(new Lesson(List.of(passes))).track();
    }

    private static List<String> words(Track track) {
        return track.spokenCalls().stream().map(call -> call.call().words()).toList();
    }

    private static Pass clicks(Piece piece, Pace pace, int times) {
        return new Pass(piece, pace, times, Pass.Over.CLICKS);
    }

    /** The bars of a practice hold in every pass: no call ends after its beat, and none runs into the next. */
    @ParameterizedTest
    @ValueSource(strings = {"lamp-on-the-quay", "rope-walk-ramble", "slack-water-waltz"})
    void callsAreInTimeInEveryPassOfTheUsualLesson(String dance) throws Exception {
        try (Practice practice = practice(Wishes.atTempo(Path.of("cues", dance + ".txt"), 112))) {
            Lesson lesson = UsualLesson.of(practice.dance(), Pass.Over.CLICKS);
            List<Call> calls = practice.walkthrough(lesson).track().spokenCalls().stream()
                    .map(SpokenCall::call)
                    .toList();
            assertTrue(calls.size() > 500);
            for (int i = 0; i + 1 < calls.size(); i++) {
                Call call = calls.get(i);
                assertTrue(call.endsSeconds() <= calls.get(i + 1).startsSeconds(), call.toString());
                assertTrue(call.roomSeconds().orElse(1) > 0, call.toString());
            }
        }
    }

    @Test
    void eachPassSaysWhatComesAndCountsIn() throws Exception {
        try (Practice practice = hum()) {
            Track track = track(practice, clicks(new Piece.OneSection(2), Pace.WALK, 3));
            List<String> words = words(track);
            assertEquals("section two", words.get(0));
            assertTrue(words.contains("again"), words.toString());
            assertTrue(words.contains("last time"), words.toString());
            assertTrue(words.subList(0, 6).containsAll(List.of("walk", "five", "six")), words.toString());
        }
    }

    /** Eight counts and a run-up of eight at 60 a minute are 16 s; 1.5 s of rest follow the last time. */
    @Test
    void aPassLastsAsLongAsItsCounts() throws Exception {
        try (Practice practice = hum()) {
            Pass pass = clicks(new Piece.OneSection(1), new Pace.Beats(new Tempo(60)), 2);
            assertEquals(2 * 16 + 1.5, secondsOf(track(practice, pass)), 0.05);
            Pass faster = clicks(new Piece.OneSection(1), new Pace.Beats(new Tempo(120)), 1);
            assertEquals(8 + 4 + 1.5, secondsOf(track(practice, faster)), 0.05, "the first time two eights before it");
            double told = practice.walkthrough(new Lesson(List.of(pass)))
                    .lengths()
                    .get(0)
                    .seconds();
            assertEquals(secondsOf(track(practice, pass)), told, 1e-6);
        }
    }

    private static double secondsOf(Track track) {
        return track.rate().secondsAt(track.toFrame());
    }

    /**
     * With a lead of two beats at 120 a minute the walk at 78 leads by 1.3 beats, in half beats 1.5, and never by less
     * than one: a word is heard about as many seconds ahead as at full speed.
     */
    @Test
    void theLeadKeepsItsSeconds() throws Exception {
        try (Practice practice = hum()) {
            assertEquals(2, leadOf(track(practice, clicks(new Piece.OneSection(1), Pace.FULL, 1))));
            assertEquals(1.5, leadOf(track(practice, clicks(new Piece.OneSection(1), Pace.WALK, 1))));
            assertEquals(1, leadOf(track(practice, clicks(new Piece.OneSection(1), new Pace.Share(0.4), 1))));
        }
    }

    private static double leadOf(Track track) {
        return track.spokenCalls().stream()
                .map(SpokenCall::call)
                .filter(call -> call.kind() == Call.Kind.WORD)
                .mapToDouble(call -> call.lead().toDecimal())
                .min()
                .orElseThrow();
    }

    @Test
    void aPassIsTheSameAloneAsInTheWholeLesson() throws Exception {
        try (Practice practice = hum()) {
            Pass first = clicks(new Piece.OneSection(1), Pace.WALK, 1);
            Pass second = clicks(new Piece.Wall(2), Pace.STEADY, 1);
            Lesson both = new Lesson(List.of(first, second));
            float[] whole = samples(practice.walkthrough(both).track().mix());
            float[] one =
                    samples(practice.walkthrough(both.only(List.of(1))).track().mix());
            float[] two =
                    samples(practice.walkthrough(both.only(List.of(2))).track().mix());
            assertEquals(whole.length, one.length + two.length);
            assertArrayEquals(one, java.util.Arrays.copyOf(whole, one.length));
            assertArrayEquals(two, java.util.Arrays.copyOfRange(whole, one.length, whole.length));
        }
    }

    private static float[] samples(Sound sound) {
        List<Float> all = new ArrayList<>();
        float[] block = new float[2 * 1000];
        for (int got = sound.read(block, 1000); got > 0; got = sound.read(block, 1000)) {
            for (int i = 0; i < 2 * got; i++) {
                all.add(block[i]);
            }
        }
        float[] samples = new float[all.size()];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = all.get(i);
        }
        return samples;
    }

    @Test
    void musicIsCutToTheSectionAtItsRealBeats() throws Exception {
        try (Practice practice = hum()) {
            Pass pass = new Pass(new Piece.OneSection(2), Pace.FULL, 1, Pass.Over.MUSIC);
            Track track = track(practice, pass);
            assertTrue(track.hasMusic());
            assertEquals(16 * HumSong.BEAT_SECONDS + 8 * HumSong.BEAT_SECONDS, secondsOf(track), 0.1);
            float[] music = samples(track.musicStem());
            double power = 0;
            for (float sample : music) {
                power += sample * sample;
            }
            assertTrue(power / music.length > 1e-3);
        }
    }

    /** Slowed music takes as much longer, and calls stay before its beats. */
    @Test
    void musicGoesAtThePaceOfItsPass() throws Exception {
        try (Practice practice = hum()) {
            Track slow = track(practice, new Pass(new Piece.OneSection(2), Pace.STEADY, 1, Pass.Over.MUSIC));
            double eight = 8 * HumSong.BEAT_SECONDS / Pace.STEADY.ofFull();
            assertEquals(0, secondsOf(slow) % eight, 0.1);
            slow.spokenCalls()
                    .forEach(call -> assertTrue(call.call().roomSeconds().orElse(1) > 0));
            assertEquals(HumSong.BEAT_SECONDS / Pace.STEADY.ofFull(), beatsApart(slow), 1e-3);
        }
    }

    /** Between the beats that the last two words are for. */
    private static double beatsApart(Track track) {
        double[] beats = track.spokenCalls().stream()
                .map(SpokenCall::call)
                .filter(call -> call.kind() == Call.Kind.WORD)
                .mapToDouble(call -> call.beatSeconds().orElseThrow())
                .toArray();
        double between = beats[beats.length - 1] - beats[0];
        double beat = HumSong.BEAT_SECONDS / Pace.STEADY.ofFull();
        return between / Math.rint(between / beat);
    }

    @Test
    void whatCannotBeDancedIsRefusedWithItsPass() throws Exception {
        try (Practice practice = practice(Wishes.atTempo(folder.resolve("dance.txt"), 120))) {
            Pass music = new Pass(new Piece.WholeDance(), Pace.FULL, 1, Pass.Over.MUSIC);
            Pass click = clicks(new Piece.WholeDance(), Pace.FULL, 1);
            String message = assertThrows(Refused.class, () -> track(practice, click, music))
                    .getMessage();
            assertTrue(message.startsWith("Pass 2 ") && message.contains("song"), message);
        }
        try (Practice practice = hum()) {
            Pass late = new Pass(new Piece.Wall(40), Pace.FULL, 1, Pass.Over.MUSIC);
            String message =
                    assertThrows(Refused.class, () -> track(practice, late)).getMessage();
            assertTrue(message.contains("wall 40") && message.contains("music ends"), message);
        }
    }
}
