package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sheet.SheetFile;
import cuelead.song.BeatFile;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From files to a ready practice, and what is said when it cannot be made. */
class PracticeTest {
    private static final SampleRate RATE = HumSong.RATE;

    @TempDir
    private static Path shared;

    @TempDir
    private Path folder;

    @BeforeAll
    static void aSongOfEvenBeats() throws Exception {
        HumSong.write(shared);
    }

    @Test
    void everyClipIsPlacedSoThatItsCentreSoundsWhenThePlanSays() throws Exception {
        try (Practice practice = prepare(Wishes.withSong(sheet("Intro: 16 counts"), song()))) {
            assertEquals(RATE, practice.rate());
            assertTrue(practice.spokenCalls().size() > 20);
            for (SpokenCall spoken : practice.spokenCalls()) {
                double centre =
                        RATE.secondsAt(spoken.startFrame()) + spoken.clip().centreSeconds();
                assertEquals(spoken.call().centreSeconds(), centre, 0.51 / RATE.hz());
            }
            assertEquals(8.5, practice.timeline().counts().get(0).songSeconds(), 1e-9);
            assertEquals(List.of(), practice.problems());
        }
    }

    @Test
    void theVoiceIsSilentOutsideOfTheCallsAndNeverInsideOne() throws Exception {
        try (Practice practice = prepare(Wishes.atTempo(sheet(""), 104))) {
            float[] voice = samples(practice.voiceStem());
            boolean[] spoken = new boolean[voice.length / 2];
            for (SpokenCall call : practice.spokenCalls()) {
                int start = Math.toIntExact(call.startFrame());
                int length = call.clip().samples().length;
                Arrays.fill(spoken, start, start + length, true);
                assertTrue(energy(voice, start, start + length) > 0, call.call().words());
            }
            for (int frame = 0; frame < spoken.length; frame++) {
                assertTrue(spoken[frame] || voice[2 * frame] == 0, "sound at frame " + frame);
            }
        }
    }

    @Test
    void aPieceIsThatPieceOfTheWhole() throws Exception {
        Path sheet = sheet("");
        float[] whole;
        try (Practice practice = prepare(Wishes.atTempo(sheet, 104))) {
            whole = samples(practice.voiceStem());
        }
        try (Practice practice = prepare(Wishes.pieceAtTempo(sheet, 104, 10, 20))) {
            int from = Math.toIntExact(practice.fromFrame());
            assertEquals(441_000, from);
            float[] piece = samples(practice.voiceStem());
            assertEquals(2 * 441_000, piece.length);
            SpokenCall first = practice.spokenCalls().get(0);
            SpokenCall last = practice.spokenCalls().get(practice.spokenCalls().size() - 1);
            int begin = Math.toIntExact(first.startFrame());
            int end = Math.toIntExact(last.startFrame()) + last.clip().samples().length;
            float loudest = loudest(whole) / loudest(piece);
            float[] expected = Arrays.copyOfRange(whole, 2 * begin, 2 * end);
            float[] scaled = Arrays.copyOfRange(piece, 2 * (begin - from), 2 * (end - from));
            for (int i = 0; i < scaled.length; i++) {
                scaled[i] *= loudest;
            }
            assertArrayEquals(expected, scaled, 1e-5f);
        }
    }

    @Test
    void twoMixesOfOnePracticeAreEqualWhateverTheBlocks() throws Exception {
        try (Practice practice = prepare(Wishes.withSong(sheet("Intro: 16 counts"), song()))) {
            practice.await(practice.toFrame());
            assertArrayEquals(samples(practice.mix(), 4_096), samples(practice.mix(), 1_000), 0f);
        }
    }

    @Test
    void whatWasMeasuredIsRemembered() throws Exception {
        Wish wish = Wishes.withSong(sheet("Intro: 16 counts"), song());
        int[] told = new int[2];
        for (int opening = 0; opening < 2; opening++) {
            int now = opening;
            Places places = new Places(folder.resolve("cache"), folder);
            try (Practice practice = Practice.prepare(wish, places, Progress.UNTOLD)) {
                practice.await(practice.toFrame(), (work, done) -> told[now]++);
            }
        }
        assertTrue(told[0] > 0);
        assertEquals(0, told[1]);
    }

    /** What was set by ear for this song goes before what the sheet says, in its beat file beside it or kept apart. */
    @Test
    void aDanceBeginsWhereItsUserSetIt() throws Exception {
        Path song = Files.copy(shared.resolve("hum.wav"), folder.resolve("hum.wav"));
        String beats = Files.readString(shared.resolve("hum.beats"));
        Path sheet = sheet("Intro: 16 counts");
        String title = SheetFile.read(sheet).dance().orElseThrow().header().title();
        Path beside = Files.writeString(BeatFile.beside(song), "# count 1 at 10.4 of " + title + "\n" + beats);
        Places places = new Places(shared.resolve("cache"), folder, Optional.of(folder));
        try (Practice practice = Practice.prepare(Wishes.withSong(sheet, song), places, Progress.UNTOLD)) {
            assertEquals(10.5, practice.timeline().counts().get(0).songSeconds(), 1e-9);
        }
        Files.delete(beside);
        Files.createDirectories(folder.resolve("beats"));
        Files.writeString(
                BeatFile.apart(song, folder.resolve("beats")), "# count 1 at 12.4 of " + title + "\n" + beats);
        try (Practice practice = Practice.prepare(Wishes.withSong(sheet, song), places, Progress.UNTOLD)) {
            assertEquals(12.5, practice.timeline().counts().get(0).songSeconds(), 1e-9);
        }
    }

    @Test
    void aSongIsFoundInTheSheetsParentFolder() throws Exception {
        Files.createDirectories(folder.resolve("sheets"));
        Files.createDirectories(folder.resolve("music"));
        Files.copy(shared.resolve("hum.wav"), folder.resolve("music/hum.wav"));
        Files.copy(shared.resolve("hum.beats"), folder.resolve("music/hum.beats"));
        Path sheet = folder.resolve("sheets/dance.txt");
        Files.writeString(sheet, HumSong.ONE_SECTION.formatted("Intro: 16 counts\nSong: music/hum.wav"));
        try (Practice practice = prepare(Wishes.of(sheet))) {
            assertTrue(practice.song().isPresent());
        }
    }

    @Test
    void withoutSongAndTempoAnEasyTempoIsClicked() throws Exception {
        try (Practice practice = prepare(Wishes.of(sheet("")))) {
            assertTrue(practice.song().isEmpty());
            assertEquals(60 / 104.0, beatSeconds(practice), 1e-9);
            assertTrue(loudest(samples(practice.mix())) > loudest(samples(practice.musicStem())));
        }
    }

    @Test
    void theTempoOfTheSheetIsTakenWithoutASong() throws Exception {
        try (Practice practice = prepare(Wishes.of(sheet("Music: our own tune, 96 BPM")))) {
            assertEquals(60 / 96.0, beatSeconds(practice), 1e-9);
        }
    }

    private static double beatSeconds(Practice practice) {
        return practice.timeline().grid().beatSeconds(1)
                - practice.timeline().grid().beatSeconds(0);
    }

    @Test
    void aSheetThatDoesNotSayWhereItBeginsIsTold() throws Exception {
        try (Practice practice = prepare(Wishes.withSong(sheet(""), song()))) {
            assertEquals(
                    List.of("no_count_one"),
                    practice.problems().stream().map(Problem::kind).toList());
            assertEquals(8.5, practice.timeline().counts().get(0).songSeconds(), 1e-9);
        }
    }

    @Test
    void aTempoAndASongExcludeEachOther() throws Exception {
        assertRefused(Wishes.songAndTempo(sheet(""), song(), 104), "A tempo is for practice without music");
    }

    @Test
    void aMissingSongIsNamedWithTheFoldersThatWereSearched() throws Exception {
        Path sheet = sheet("Song: lost.mp3");
        assertRefused(Wishes.of(sheet), "\"lost.mp3\"", folder.toString(), "--tempo");
    }

    @Test
    void aSongInWhichNoBeatIsHeardIsRefused() throws Exception {
        Path song = Files.copy(shared.resolve("hum.wav"), folder.resolve("alone.wav"));
        assertRefused(Wishes.withSong(sheet("Intro: 16 counts"), song), "No steady beat", "alone.wav", "--tempo");
    }

    @Test
    void countsThatDoNotAddUpAreRefused() throws Exception {
        Path sheet = folder.resolve("short.txt");
        Files.writeString(sheet, HumSong.ONE_SECTION.formatted("").replaceAll("(?m)^7-8.*$", ""));
        assertRefused(Wishes.of(sheet), "short.txt:");
    }

    @Test
    void aRefusedPracticeLeavesNothingBehind() throws Exception {
        Path song = Files.copy(shared.resolve("hum.wav"), folder.resolve("broken.wav"));
        Files.writeString(folder.resolve("broken.beats"), "0.5\t1\n0.4\t2\n");
        Path sheet = sheet("Intro: 16 counts");
        assertRefused(Wishes.withSong(sheet, song), "broken.beats:2");
        try (var files = Files.list(folder)) {
            assertEquals(
                    List.of("broken.beats", "broken.wav", "dance.txt"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    private static void assertRefused(Wish wish, String... parts) {
        String message =
                assertThrows(Refused.class, () -> prepare(wish).close()).getMessage();
        for (String part : parts) {
            assertTrue(message.contains(part), message);
        }
        assertFalse(message.contains("\n"), "one sentence");
    }

    private static Practice prepare(Wish wish) throws Refused {
        return Practice.prepare(wish, new Places(shared.resolve("cache"), Path.of("")), (work, done) -> {});
    }

    private Path sheet(String headerLine) throws Exception {
        return Files.writeString(folder.resolve("dance.txt"), HumSong.ONE_SECTION.formatted(headerLine));
    }

    private static Path song() {
        return shared.resolve("hum.wav");
    }

    private static float[] samples(Sound sound) {
        return samples(sound, 4_096);
    }

    private static float[] samples(Sound sound, int blockFrames) {
        float[] all = new float[0];
        float[] block = new float[2 * blockFrames];
        int length = 0;
        for (int got = sound.read(block, blockFrames); got > 0; got = sound.read(block, blockFrames)) {
            if (length + 2 * got > all.length) {
                all = Arrays.copyOf(all, 2 * all.length + 2 * got);
            }
            System.arraycopy(block, 0, all, length, 2 * got);
            length += 2 * got;
        }
        return Arrays.copyOf(all, length);
    }

    private static float loudest(float[] samples) {
        float loudest = 0;
        for (float sample : samples) {
            loudest = Math.max(loudest, Math.abs(sample));
        }
        return loudest;
    }

    private static double energy(float[] stereo, int fromFrame, int toFrame) {
        double sum = 0;
        for (int i = 2 * fromFrame; i < 2 * toFrame; i++) {
            sum += (double) stereo[i] * stereo[i];
        }
        return sum;
    }
}
