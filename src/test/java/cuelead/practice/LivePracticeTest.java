package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.plan.Call;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.plan.DancedCount;
import cuelead.sound.Levels;
import cuelead.time.Beats;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LivePracticeTest {
    /** A listener notices from about 10 ms on; beats are kept far better. */
    private static final double BEAT_TOLERANCE_SECONDS = 0.002;

    private static final double QUEUE_SECONDS = 0.2;
    private static final double SOON_SECONDS = 0.3;

    @TempDir
    private static Path folder;

    private Practice practice;
    private FakeSpeakers speakers;
    private LivePractice live;
    private final List<Jump> jumps = new ArrayList<>();

    @BeforeAll
    static void aSong() throws Exception {
        HumSong.write(folder);
        Files.writeString(folder.resolve("dance.txt"), HumSong.TWO_SECTIONS);
    }

    @BeforeEach
    void play() throws Exception {
        Wish wish = Wishes.withSong(folder.resolve("dance.txt"), folder.resolve("hum.wav"));
        practice = Practice.prepare(wish, new Places(folder.resolve("cache"), folder), (work, done) -> {});
        practice.await(practice.toFrame());
        speakers = new FakeSpeakers(HumSong.RATE);
        live = practice.live(speakers);
    }

    @AfterEach
    void close() {
        practice.close();
    }

    private void hear(double seconds) {
        for (double passed = 0; passed < seconds; passed += 0.02) {
            speakers.hear(0.02);
            live.tick();
        }
    }

    private double song() {
        return live.heard().songSeconds();
    }

    /** Where in its beat the song is, against where it would be had the first beat gone on evenly. */
    private double outOfBeat() {
        double offset = (song() - speakers.heardSeconds()) / HumSong.BEAT_SECONDS;
        return Math.abs(offset - Math.rint(offset)) * HumSong.BEAT_SECONDS;
    }

    private DancedCount danced() {
        return live.heard().timeline().at(song()).orElseThrow();
    }

    @Test
    void untouchedItIsThePractice() {
        hear(12);
        float[] expected = new float[speakers.heard().length];
        practice.mix().read(expected, expected.length / 2);
        assertArrayEquals(expected, speakers.heard(), 0f);
        assertEquals(speakers.heardSeconds(), song(), 1e-9);
    }

    @Test
    void aJumpComesOnTheNextBeatOrSoonAndKeepsTheBeat() {
        for (double start = 6; start < 7; start += 0.06) {
            speakers = new FakeSpeakers(HumSong.RATE);
            live = practice.live(speakers);
            hear(start);
            double before = song();
            live.jumpWalls(1, jumps::add);
            double pressed = speakers.heardSeconds();
            while (Math.abs(song() - before - (speakers.heardSeconds() - pressed)) < 0.1) {
                hear(0.02);
            }
            double passed = speakers.heardSeconds() - pressed;
            double nextBeat = HumSong.BEAT_SECONDS - (before - HumSong.FIRST_BEAT_SECONDS) % HumSong.BEAT_SECONDS;
            assertTrue(passed < Math.max(SOON_SECONDS, nextBeat) + 0.03, passed + " s after " + start);
            assertTrue(outOfBeat() < BEAT_TOLERANCE_SECONDS, outOfBeat() + " s after " + start);
        }
    }

    @Test
    void aJumpLandsEightCountsBeforeItsSectionAndCountsIn() {
        hear(6);
        live.jumpSections(1, jumps::add);
        hear(1);
        DancedCount start = live.heard().timeline().counts().get(8);
        assertEquals("S2", start.section().name());
        assertTrue(song() > start.songSeconds() - 8 * HumSong.BEAT_SECONDS);
        assertTrue(song() < start.songSeconds() - 6 * HumSong.BEAT_SECONDS);
        List<String> words = words(live.heard().calls());
        assertEquals(List.of("walk", "five", "six"), words.subList(0, 3));
    }

    @Test
    void oneJumpAfterAnotherGoesOnFromWhereTheFirstWasMeantToLand() {
        hear(6);
        live.jumpSections(1, jumps::add);
        live.jumpSections(1, jumps::add);
        hear(3);
        DancedCount start = live.heard().timeline().counts().get(16);
        assertTrue(song() > start.songSeconds() - 8 * HumSong.BEAT_SECONDS, "at " + song());
        assertTrue(song() < start.songSeconds(), "at " + song());
    }

    @Test
    void fromTheTopIsTheFirstWall() {
        hear(20);
        live.fromTheTop(jumps::add);
        hear(5.5);
        assertEquals(1, danced().run().wall());
        assertEquals("S1", danced().section().name());
    }

    @Test
    void fromTheTopIsTheSongsBeginningWhileCountOneHasYetToCome() {
        hear(1.5);
        live.fromTheTop(jumps::add);
        hear(1);
        assertTrue(song() < 1.6, "in the intro at " + song());
        hear(12);
        live.fromTheTop(jumps::add);
        live.fromTheTop(jumps::add);
        hear(2);
        assertEquals(
                List.of(Jump.Way.SONG_BEGINNING, Jump.Way.BACK, Jump.Way.SONG_BEGINNING),
                jumps.stream().map(Jump::way).toList());
        assertTrue(song() < 2.5, "at " + song());
        assertTrue(outOfBeat() < BEAT_TOLERANCE_SECONDS);
        assertEquals(Optional.empty(), live.heard().aim());
    }

    @Test
    void nextSaysWhenItLeadsBackToARunUp() {
        hear(8.1);
        assertEquals("S1", danced().section().name());
        live.jumpSections(1, jumps::add);
        hear(0.7);
        assertTrue(song() < 8, "at " + song());
        assertEquals(List.of(Jump.Way.BACK), jumps.stream().map(Jump::way).toList());
        assertEquals("S2", jumps.get(0).aim().section().name());
    }

    @Test
    void afterTheLastWallThereIsNoNext() {
        hear(37);
        double before = song();
        live.jumpWalls(1, jumps::add);
        live.jumpSections(1, jumps::add);
        hear(1);
        assertEquals(before + 1, song(), 1e-6);
        assertTrue(jumps.stream().allMatch(jump -> jump.way() == Jump.Way.NO_FURTHER), jumps.toString());
        assertEquals(2, jumps.size());
    }

    @Test
    void aSectionIsRepeatedWithItsRunUpUntilTheLoopIsLeft() {
        hear(10);
        String section = danced().section().name();
        live.loopSection();
        hear(1);
        DancedCount start = live.heard().timeline().counts().get(8);
        for (double passed = 0; passed < 20; passed += 0.1) {
            hear(0.1);
            assertTrue(song() >= start.songSeconds() - 8 * HumSong.BEAT_SECONDS - 1e-6, "at " + song());
            assertTrue(song() < start.songSeconds() + 8 * HumSong.BEAT_SECONDS, "at " + song());
            assertTrue(outOfBeat() < BEAT_TOLERANCE_SECONDS);
        }
        assertEquals("S2", section);
        assertEquals(Heard.Repeating.A_SECTION, live.heard().repeating());
        live.leaveLoop();
        hear(9);
        assertEquals(Heard.Repeating.NOTHING, live.heard().repeating());
        assertTrue(song() > start.songSeconds() + 4 * HumSong.BEAT_SECONDS, "at " + song());
    }

    @Test
    void inALongIntroTheNextSectionIsTheFirst() throws Exception {
        Path sheet = folder.resolve("long-intro.txt");
        Files.writeString(sheet, HumSong.TWO_SECTIONS.replace("Intro: 8 counts", "Intro: 32 counts"));
        Wish wish = Wishes.withSong(sheet, folder.resolve("hum.wav"));
        try (Practice late = Practice.prepare(wish, new Places(folder.resolve("cache"), folder), (work, done) -> {})) {
            late.await(late.toFrame());
            speakers = new FakeSpeakers(HumSong.RATE);
            live = late.live(speakers);
            hear(2);
            live.jumpSections(1, jumps::add);
            live.jumpSections(1, jumps::add);
            hear(1);
            assertEquals(
                    List.of("S1", "S2"),
                    jumps.stream().map(jump -> jump.aim().section().name()).toList());
        }
    }

    /** The dancers began with the song's second beat, so the run-up of their first section would begin before it. */
    @Test
    void aSectionAtTheSongsVeryBeginningIsRepeatedWithWhatTheSongHasBeforeIt() {
        hear(1);
        live.countOneIsNow();
        hear(1);
        live.loopSection();
        hear(2);
        double earliest = song();
        for (double passed = 0; passed < 15; passed += 0.02) {
            hear(0.02);
            earliest = Math.min(earliest, song());
        }
        assertEquals(0, earliest, 0.05);
        assertEquals(Heard.Repeating.A_SECTION, live.heard().repeating());
    }

    @Test
    void aPauseLosesNothing() {
        hear(7.3);
        double before = song();
        live.pause();
        speakers.hear(1);
        assertEquals(before, song(), 1e-9);
        live.resume();
        assertEquals(7.0, song(), 1e-4, "the beat that was heard last");
        hear(1);
        assertEquals(8.0, song(), 0.03);
    }

    @Test
    void aJumpWhilePausedIsHeardAfterIt() {
        hear(7);
        live.pause();
        live.jumpWalls(1, jumps::add);
        live.resume();
        hear(0.1);
        assertEquals(live.heard().timeline().counts().get(16).songSeconds() - 8 * HumSong.BEAT_SECONDS, song(), 0.11);
    }

    @Test
    void countOneIsNowMovesTheDanceAndNotTheMusic() {
        hear(11.1);
        live.countOneIsNow();
        hear(1);
        assertEquals(11.0, live.heard().timeline().counts().get(0).songSeconds(), 1e-9);
        assertEquals(speakers.heardSeconds(), song(), 1e-6);
        assertEquals(1, danced().run().wall());
    }

    @Test
    void aMovedDanceIsCalledFromTheNextBeatOrSoon() {
        for (double start = 6; start < 7; start += 0.06) {
            speakers = new FakeSpeakers(HumSong.RATE);
            live = practice.live(speakers);
            hear(start);
            double before = first();
            double nextBeat = HumSong.BEAT_SECONDS - (song() - HumSong.FIRST_BEAT_SECONDS) % HumSong.BEAT_SECONDS;
            live.moveDance(Beats.ONE);
            double pressed = speakers.heardSeconds();
            while (first() == before) {
                hear(0.02);
            }
            double passed = speakers.heardSeconds() - pressed;
            assertTrue(passed < Math.max(SOON_SECONDS, nextBeat) + 0.03, passed + " s after " + start);
        }
    }

    @Test
    void theDanceIsMovedByBeatsAndWalls() {
        hear(20);
        double before = first();
        live.moveDance(Beats.ONE);
        hear(1);
        assertEquals(before + HumSong.BEAT_SECONDS, first(), 1e-9);
        int wall = danced().run().wall();
        live.moveDanceByWall(1, told -> {});
        hear(1);
        assertEquals(wall - 1, danced().run().wall());
        live.moveDanceByWall(-1, told -> {});
        hear(1);
        assertEquals(before + HumSong.BEAT_SECONDS, first(), 1e-9);
        assertEquals(speakers.heardSeconds(), song(), 1e-6);
    }

    @Test
    void realignmentsAreTakenBackOneByOne() {
        hear(11.1);
        List<LivePractice.TakenBack> said = new ArrayList<>();
        double before = first();
        live.countOneIsNow();
        hear(1);
        live.moveDance(Beats.ONE);
        hear(1);
        live.takeRealignmentBack(said::add);
        hear(1);
        assertEquals(11.0, first(), 1e-9);
        live.takeRealignmentBack(said::add);
        live.takeRealignmentBack(said::add);
        hear(1);
        assertEquals(before, first(), 1e-9);
        assertEquals(
                List.of(
                        LivePractice.TakenBack.A_LATER_ONE,
                        LivePractice.TakenBack.THE_FIRST,
                        LivePractice.TakenBack.NOTHING),
                said);
        assertEquals(speakers.heardSeconds(), song(), 1e-6);
    }

    @Test
    void aWallBehindInTheFirstWallIsAWallToo() {
        hear(6);
        double before = first();
        live.moveDanceByWall(1, told -> {});
        hear(1);
        assertEquals(before + 16 * HumSong.BEAT_SECONDS, first(), 1e-9);
    }

    /** What was jumped to lies elsewhere once count 1 is another. */
    @Test
    void aRealignmentEndsTheRunUp() {
        hear(12);
        live.jumpSections(1, jumps::add);
        hear(1);
        assertTrue(live.heard().aim().isPresent());
        live.countOneIsNow();
        hear(1);
        assertEquals(Optional.empty(), live.heard().aim());
    }

    private double first() {
        return live.heard().timeline().counts().get(0).songSeconds();
    }

    /** After a command calls are those of a practice that was wished so from the beginning. */
    @Test
    void callsAfterACommandAreThoseOfAPracticeMadeSo() throws Exception {
        hear(10);
        live.calls(now -> new CallSettings(Beats.of(4), Beats.of(4), CallLevel.WORDS, CallSettings.Fading.STEADY));
        hear(1);
        Wish wish = Wishes.withSong(folder.resolve("dance.txt"), folder.resolve("hum.wav"));
        Wish asked = Wish.of(wish.sheet())
                .song(wish.song())
                .leadBeats(OptionalDouble.of(4))
                .wish();
        try (Practice other =
                Practice.prepare(asked, new Places(folder.resolve("cache"), folder), (work, done) -> {})) {
            assertEquals(after(other.spokenCalls(), 16), after(live.heard().calls(), 16));
        }
    }

    private static List<Call> after(List<SpokenCall> calls, double seconds) {
        return calls.stream()
                .map(SpokenCall::call)
                .filter(call -> call.startsSeconds() > seconds)
                .toList();
    }

    @Test
    void aCallThatHasBegunIsHeardToItsEnd() {
        SpokenCall call = practice.spokenCalls().stream()
                .filter(c -> c.call().startsSeconds() > 10)
                .findFirst()
                .orElseThrow();
        hear(call.call().startsSeconds() - QUEUE_SECONDS - 0.05);
        live.calls(now -> new CallSettings(now.lead(), now.sectionLead(), CallLevel.NONE, now.fading()));
        hear(3);
        float[] expected = new float[speakers.heard().length];
        practice.mix().read(expected, expected.length / 2);
        int from = 2 * HumSong.RATE.framesIn(call.call().startsSeconds());
        int to = 2 * HumSong.RATE.framesIn(call.call().endsSeconds());
        assertArrayEquals(
                Arrays.copyOfRange(expected, from, to), Arrays.copyOfRange(speakers.heard(), from, to), 1e-4f);
        assertTrue(live.heard().calls().isEmpty());
        live.allCallsBack();
        hear(1);
        assertTrue(live.heard().calls().size() > 10);
    }

    @Test
    void levelsAreChangedWhileItPlays() {
        hear(5);
        live.levels(now -> new Levels(now.musicDb() - 60, now.voiceDb() - 60, now.clickDb(), now.dipDb()));
        hear(3);
        float[] last = Arrays.copyOfRange(
                speakers.heard(), speakers.heard().length - 2 * HumSong.RATE.hz(), speakers.heard().length);
        float loudest = 0;
        for (float sample : last) {
            loudest = Math.max(loudest, Math.abs(sample));
        }
        assertTrue(loudest < 0.01, "at " + loudest);
    }

    private final FakeSpeakers music = new FakeSpeakers(HumSong.RATE);
    private final FakeSpeakers calls = new FakeSpeakers(HumSong.RATE);

    private void onTwoDevices(Delays delays) {
        live = practice.live(music, Optional.of(calls), delays);
    }

    /** The second device runs 500 ppm slow, three times more than real ones. */
    private void hearBoth(double seconds) {
        for (double passed = 0; passed < seconds; passed += 0.02) {
            music.hear(0.02);
            calls.hear(0.02 * 0.9995);
            live.tick();
        }
    }

    private void assertCallsLaterBy(double seconds) throws Exception {
        float[] expected = new float[2 * HumSong.RATE.framesIn(40)];
        practice.voiceStem().read(expected, expected.length / 2);
        int leaving = (int) HumSong.RATE.frameAt(song() + live.delays().musicSeconds());
        int behind = bestShift(expected, calls.heard(), leaving);
        assertEquals(-seconds, behind / (double) HumSong.RATE.hz(), 0.005);
    }

    @Test
    void callsOnASecondDeviceStayInStepWithTheMusic() throws Exception {
        onTwoDevices(new Delays(0.1, 0.02));
        music.hear(0.15); // the second one begins late
        hearBoth(28);
        assertCallsLaterBy(0.1 - 0.02);
        assertEquals(music.heardSeconds() - 0.1, song(), 1e-3, "what is shown is what is heard");
    }

    @Test
    void callsForALateDeviceComeAhead() throws Exception {
        onTwoDevices(new Delays(0, 0.6));
        hearBoth(12);
        assertCallsLaterBy(-0.6);
        live.pause();
        hearBoth(1);
        live.resume();
        hearBoth(6);
        assertCallsLaterBy(-0.6);
    }

    @Test
    void delaysAreChangedWhileItPlays() throws Exception {
        onTwoDevices(Delays.NONE);
        hearBoth(6);
        live.delays(new Delays(0, 0.2));
        hearBoth(6);
        assertCallsLaterBy(-0.2);
        live.delays(new Delays(0.1, 0));
        hearBoth(6);
        assertCallsLaterBy(0.1);
        assertEquals(music.heardSeconds() - 0.1, song(), 1e-3);
    }

    @Test
    void musicGoesOnWithoutTheDeviceOfTheCallsAndTheyJoinInAgain() throws Exception {
        onTwoDevices(Delays.NONE);
        hearBoth(8);
        calls.lose();
        hearBoth(5);
        assertEquals(13, song(), 0.06);
        calls.comeBack();
        hearBoth(8);
        assertEquals(music.heardSeconds(), song(), 1e-3);
        assertCallsLaterBy(0);
    }

    @Test
    void callsGoOnWithoutTheDeviceOfTheMusicAndItJoinsThem() throws Exception {
        onTwoDevices(Delays.NONE);
        hearBoth(8);
        music.lose();
        double before = calls.heardSeconds();
        hearBoth(5);
        assertEquals(5, calls.heardSeconds() - before, 0.05);
        assertEquals(13, song(), 0.06, "what is shown is what is heard");
        music.comeBack();
        hearBoth(0.04);
        assertEquals(13, song(), HumSong.BEAT_SECONDS + 0.06);
        hearBoth(8);
        assertEquals(21, song(), HumSong.BEAT_SECONDS + 0.06);
        assertCallsLaterBy(0);
    }

    @Test
    void callsThatGoOnAloneAreSteeredAndPaused() throws Exception {
        onTwoDevices(Delays.NONE);
        hearBoth(8);
        music.lose();
        hearBoth(1);
        int wall = danced().run().wall();
        live.jumpWalls(1, jumps::add);
        hearBoth(4);
        assertEquals(
                wall + 1,
                live.heard()
                        .aim()
                        .map(aim -> aim.run().wall())
                        .orElseGet(() -> danced().run().wall()));
        live.pause();
        double held = song();
        music.comeBack();
        hearBoth(1);
        assertEquals(held, song(), HumSong.BEAT_SECONDS + 0.06, "nobody was lost while it was held");
        live.resume();
        hearBoth(8);
        assertEquals(held + 8, song(), HumSong.BEAT_SECONDS + 0.06);
        assertCallsLaterBy(0);
    }

    @Test
    void callsThatGoOnAloneComeToTheEnd() throws Exception {
        onTwoDevices(Delays.NONE);
        hearBoth(8);
        music.lose();
        for (int i = 0; i < 100 && !live.hasEnded(); i++) {
            hearBoth(1);
        }
        assertTrue(live.hasEnded());
        assertFalse(music.hasEnded());
    }

    @Test
    void bothJumpToTheSamePlace() throws Exception {
        onTwoDevices(new Delays(0, 0.3));
        hearBoth(6);
        live.jumpWalls(1, jumps::add);
        hearBoth(9);
        assertCallsLaterBy(-0.3);
    }

    /** By how many frames the last two seconds of calls are heard before their frames of the music. */
    private static int bestShift(float[] expected, float[] heard, int musicFrame) {
        int length = 2 * HumSong.RATE.hz();
        int best = 0;
        double most = -1;
        for (int shift = -16_000; shift <= 16_000; shift += 5) {
            double sum = 0;
            for (int i = 1; i <= length; i += 3) {
                int at = musicFrame + shift - i;
                sum += at < expected.length / 2 ? expected[2 * at] * heard[heard.length - 2 * i] : 0;
            }
            if (sum > most) {
                most = sum;
                best = shift;
            }
        }
        return best;
    }

    @Test
    void manyCommandsKeepTheBeatAndMakeNoClick() {
        live.calls(now -> new CallSettings(now.lead(), now.sectionLead(), CallLevel.NONE, now.fading()));
        hear(1.5);
        int quiet = speakers.heard().length;
        float step = largestStep(speakers.heard());
        Random random = new Random(5);
        List<Runnable> commands = List.of(
                () -> live.jumpSections(1, jumps::add),
                () -> live.jumpSections(-1, jumps::add),
                () -> live.jumpWalls(1, jumps::add),
                () -> live.jumpWalls(0, jumps::add),
                live::loopSection,
                live::leaveLoop,
                () -> live.fromTheTop(jumps::add),
                live::countOneIsNow,
                () -> live.moveDance(Beats.ONE),
                () -> live.moveDanceByWall(1, told -> {}),
                () -> live.click(Wish.Click.SILENT));
        List<Double> drifts = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            commands.get(random.nextInt(commands.size())).run();
            hear(0.1 + random.nextInt(40) * 0.02);
            if (speakers.hasEnded()) {
                live.fromTheTop(jumps::add);
            }
            drifts.add(outOfBeat());
        }
        float[] heard = Arrays.copyOfRange(speakers.heard(), quiet, speakers.heard().length);
        assertTrue(largestStep(heard) <= step * 1.01, largestStep(heard) + " > " + step);
        assertTrue(drifts.stream().allMatch(drift -> drift < BEAT_TOLERANCE_SECONDS), drifts.toString());
    }

    private static float largestStep(float[] stereo) {
        float largest = 0;
        for (int i = 2; i < stereo.length; i++) {
            largest = Math.max(largest, Math.abs(stereo[i] - stereo[i - 2]));
        }
        return largest;
    }

    private static List<String> words(List<SpokenCall> calls) {
        return calls.stream().map(call -> call.call().words()).toList();
    }
}
