package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.cli.Bench.Outcome;
import cuelead.song.SongFile;
import cuelead.song.WholeSound;
import cuelead.steer.Caution;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands as a user meets them: exit status, output, error sentences, files. */
class CommandsTest {
    /** Shared, so that the demo song is listened to once. */
    @TempDir
    static Path temp;

    private final Bench bench = Bench.withoutDevice(temp);

    @Test
    void whatIsNotThereIsNamed() {
        String sheet = temp.resolve("none.txt").toString();
        for (String command : List.of("play", "plan", "check")) {
            Outcome outcome = bench.run(command, sheet);
            assertEquals(1, outcome.exitCode());
            assertEquals("", outcome.out());
            assertTrue(outcome.err().contains(sheet), outcome.err());
            assertEquals(1, outcome.err().lines().count(), outcome.err());
        }
    }

    @Test
    void thePlanOfTheDemo() {
        Outcome outcome = bench.run("plan", Bench.DEMO_SHEET);
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertTrue(outcome.out().startsWith("LAMP ON THE QUAY"));
        assertTrue(outcome.out().contains("Wall 2, facing 3 o'clock"), outcome.out());
        // line "9.4808" of the demo's beat file, the 17th beat
        assertTrue(outcome.out().contains("Count 1 falls at 0:09.5."), outcome.out());
        assertTrue(outcome.out().contains("Left out"), outcome.out());
        List<String> lines = outcome.out().lines().toList();
        assertTrue(
                lines.stream().anyMatch(line -> line.matches("The song ends .*wall \\d+.*facing \\d+ o'clock\\.")),
                outcome.out());
        assertTrue(
                lines.stream().anyMatch(line -> line.matches("\\d+ walls, [\\d.]+ seconds a wall; .*")), outcome.out());
    }

    @Test
    void thePlanOfAPieceTellsOnlyWhatIsLeftOutInIt() {
        String whole = bench.run("plan", Bench.DEMO_SHEET).out();
        String piece = bench.run("plan", Bench.DEMO_SHEET, "--from", "0:20", "--to", "0:40")
                .out();
        assertTrue(whole.contains("Left out in the whole song"), whole);
        assertTrue(piece.contains("Left out in this piece"), piece);
        assertTrue(leftOut(piece) > 0 && leftOut(piece) < leftOut(whole) / 4, piece);
        assertTrue(piece.contains("! = less than 0.5 s"), piece);
    }

    /** The sum of the lines such as {@code 12 because another call is being said: ...}. */
    private static int leftOut(String listing) {
        return listing.lines()
                .map(String::strip)
                .filter(line -> line.contains(" because "))
                .mapToInt(line -> Integer.parseInt(line.split(" ")[0]))
                .sum();
    }

    @Test
    void withoutASongTheTempoIsSaid() throws Exception {
        Path sheet = Files.writeString(
                temp.resolve("clicks.txt"), "CLICKS\nCount: 4 Wall: 1\n\n[1-4] WALKS\n1-4 Walk fwd R, L, R, L\n");
        String err = bench.run("plan", sheet.toString()).err();
        assertTrue(err.contains("No song: clicks at 104 beats a minute; --tempo changes it."), err);
        err = bench.run("plan", sheet.toString(), "--tempo", "90").err();
        assertFalse(err.contains("No song"), err);
    }

    @Test
    void errorsOfTheSheetAreRememberedAtTheEnd() throws Exception {
        Path sheet = Files.writeString(
                temp.resolve("odd.txt"), "ODD\nCount: 4 Wall: 1\n\n[1-4] WALKS\n1-4 Walk fwd R, L, froobles, L\n");
        String err = bench.run("plan", sheet.toString()).err();
        String last = err.lines().reduce("", (before, line) -> line);
        assertTrue(last.matches("The sheet has \\d+ errors?, so calls may be wrong: cuelead check .*"), err);
    }

    @Test
    void aRenderedPieceIsTheSumOfItsStems() throws Exception {
        Path mix = temp.resolve("piece.wav");
        Path stems = temp.resolve("stems");
        String[] piece = {"--from", "10", "--to", "14"};
        Outcome outcome = bench.run(
                "render",
                Bench.DEMO_SHEET,
                "-o",
                mix.toString(),
                "--stems",
                stems.toString(),
                piece[0],
                piece[1],
                piece[2],
                piece[3]);
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertEquals("", outcome.out());
        assertEquals(List.of("clips", "music.wav", "plan.csv", "segs.csv", "voice.wav"), names(stems));
        WholeSound whole = SongFile.readAll(mix);
        float[] voice = SongFile.readAll(stems.resolve("voice.wav")).monoSamples();
        float[] music = SongFile.readAll(stems.resolve("music.wav")).monoSamples();
        float[] sum = new float[voice.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = voice[i] + music[i];
        }
        assertEquals(4 * whole.rate().hz(), whole.monoSamples().length);
        for (int i = 0; i < sum.length; i++) {
            // the limiter only takes away; the file has 16 bits with dither
            assertTrue(Math.abs(whole.monoSamples()[i]) <= Math.abs(sum[i]) + 2f / 32_768, "sample " + i);
        }
        assertProportional(sum, whole.monoSamples(), 0, 0.01);
        Outcome plan = bench.run("plan", Bench.DEMO_SHEET, "--csv", piece[0], piece[1], piece[2], piece[3]);
        assertEquals(Files.readString(stems.resolve("plan.csv")), plan.out());
    }

    @Test
    void everyClipOfThePlanIsThereAndSoundsWhereItSays() throws Exception {
        Path stems = temp.resolve("clipped");
        Outcome outcome = bench.run(
                "render",
                Bench.DEMO_SHEET,
                "-o",
                temp.resolve("c.wav").toString(),
                "--stems",
                stems.toString(),
                "--from",
                "9.5",
                "--to",
                "12");
        assertEquals(0, outcome.exitCode(), outcome.err());
        WholeSound voice = SongFile.readAll(stems.resolve("voice.wav"));
        List<String> rows = Files.readAllLines(stems.resolve("plan.csv"));
        assertTrue(rows.size() > 2, rows.toString());
        for (String row : rows.subList(1, rows.size())) {
            String[] fields = row.split(",", -1);
            float[] clip =
                    SongFile.readAll(stems.resolve("clips").resolve(fields[4])).monoSamples();
            int start = voice.rate().framesIn(Double.parseDouble(fields[3]));
            assertProportional(clip, voice.monoSamples(), start, 1e-3);
        }
    }

    private static void assertProportional(float[] part, float[] whole, int start, double tolerance) {
        double product = 0;
        double partPower = 0;
        double wholePower = 0;
        for (int i = 0; i < part.length; i++) {
            product += part[i] * whole[start + i];
            partPower += part[i] * part[i];
            wholePower += whole[start + i] * whole[start + i];
        }
        assertEquals(1, product / Math.sqrt(partPower * wholePower), tolerance);
    }

    @Test
    void nothingThatIsReadIsWrittenOver() throws Exception {
        Path sheet = Files.copy(Path.of(Bench.DEMO_SHEET), temp.resolve("mine.txt"));
        Outcome outcome = bench.run("render", sheet.toString(), "-o", sheet.toString());
        assertEquals(1, outcome.exitCode());
        assertTrue(Files.readString(sheet).startsWith("LAMP"));
        outcome = bench.run("render", sheet.toString(), "-o", temp.toString());
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("is a folder"), outcome.err());
        outcome = bench.run(
                "render", sheet.toString(), "-o", temp.resolve("no/x.wav").toString());
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("there is no folder"), outcome.err());
        outcome = bench.run("render", sheet.toString(), "-o", "-");
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("standard output"), outcome.err());
    }

    @Test
    void aTrackWithMusicIsAnMp3WithTitleAndTempoAndAReminder() throws Exception {
        Path track = temp.resolve("home.mp3");
        Outcome outcome = bench.run("render", Bench.DEMO_SHEET, "-o", track.toString(), "--from", "10", "--to", "13");
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertEquals(1, outcome.err().split(Caution.OF_LICENCES, -1).length - 1, outcome.err());
        WholeSound sound = SongFile.readAll(track);
        assertEquals(3 * sound.rate().hz(), sound.monoSamples().length);
        String head = new String(Files.readAllBytes(track), 0, 100, StandardCharsets.ISO_8859_1);
        assertTrue(head.startsWith("ID3") && head.contains("LAMP ON THE QUAY") && head.contains("TBPM"), head);
    }

    @Test
    void aPassOfTheWalkthroughIsNamedAndWithoutMusicNobodyIsReminded() throws Exception {
        Path track = temp.resolve("pass.flac");
        Outcome outcome = bench.run("walkthrough", Bench.DEMO_SHEET, "--pass", "1", "-o", track.toString());
        assertEquals(0, outcome.exitCode(), outcome.err());
        String head = new String(Files.readAllBytes(track), 0, 200, StandardCharsets.ISO_8859_1);
        assertTrue(head.startsWith("fLaC") && head.contains("TITLE=LAMP ON THE QUAY, section 1"), head);
        assertTrue(head.contains("BPM="), head);
        boolean isReminded = outcome.err().contains(Caution.OF_LICENCES);
        assertFalse(isReminded, outcome.err());
    }

    @Test
    void tracksOfOtherEndingsAreRefusedAndTheSongIsNotWrittenOver() throws Exception {
        for (String command : List.of("render", "walkthrough")) {
            Path ogg = temp.resolve("home.ogg");
            Outcome outcome = bench.run(command, Bench.DEMO_SHEET, "-o", ogg.toString());
            assertEquals(1, outcome.exitCode());
            assertTrue(outcome.err().contains(".wav, .flac or .mp3"), outcome.err());
            Path song = Files.writeString(temp.resolve("song.mp3"), "a song");
            outcome = bench.run(command, Bench.DEMO_SHEET, song.toString(), "-o", song.toString());
            assertEquals(1, outcome.exitCode());
            assertTrue(outcome.err().contains("is read for this"), outcome.err());
            assertEquals("a song", Files.readString(song));
        }
    }

    @Test
    void aBadSheetIsCheckedWithLineAndCaret() throws Exception {
        Path sheet = Files.writeString(
                temp.resolve("bad.txt"), "BAD\nCount: 8 Wall: 1\n\n[1-8] WALKS\n1-4 Walk fwd R, L, froobles, L\n");
        Outcome outcome = bench.run("check", sheet.toString());
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.out().contains(sheet + ":5:"), outcome.out());
        assertTrue(outcome.err().endsWith(" errors." + System.lineSeparator()), outcome.err());
        assertTrue(outcome.out().contains("    1-4 Walk fwd R, L, froobles, L"), outcome.out());
        assertTrue(outcome.out().lines().anyMatch(line -> line.strip().equals("^")), outcome.out());
        assertEquals(0, bench.run("check", Bench.DEMO_SHEET).exitCode());
    }

    @Test
    void wordsAreSpokenIntoAFile() throws Exception {
        Path file = temp.resolve("said.wav");
        Outcome outcome = bench.run("say", "rock,", "recover,", "!!!", "-o", file.toString());
        assertEquals(0, outcome.exitCode());
        assertTrue(outcome.err().contains("cannot say \"!!!\""), outcome.err());
        assertTrue(SongFile.readAll(file).monoSamples().length > 44_100 / 2);
        Path nothing = temp.resolve("nothing.wav");
        assertEquals(1, bench.run("say", "!!!", "-o", nothing.toString()).exitCode());
        String read =
                bench.run("say", "1/4 turn R, rock", "-o", file.toString()).err();
        assertTrue(read.contains("\"1/4 turn R\" is read as \"quarter turn right\"."), read);
        assertFalse(read.contains("\"rock\""), read);
        assertFalse(Files.exists(nothing));
    }

    @Test
    void playWithoutADeviceNamesRender() {
        Outcome outcome = bench.run("play", Bench.DEMO_SHEET);
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("render"), outcome.err());
    }

    @Test
    void playTellsEachCallAndDropOutsAndReadsNoInput() {
        Bench withDevice = Bench.withDevice(temp);
        Outcome outcome = withDevice.run("play", Bench.DEMO_SHEET, "--from", "9.5", "--to", "12", "--rate", "22050");
        assertEquals(0, outcome.exitCode(), outcome.err());
        Outcome plan = bench.run("plan", Bench.DEMO_SHEET, "--csv", "--from", "9.5", "--to", "12");
        assertEquals(plan.out().lines().count() - 1, outcome.out().lines().count(), outcome.out());
        assertTrue(outcome.err().contains("broke off 2 times"), outcome.err());
        assertTrue(withDevice.opened.stream().allMatch(FakeSpeakers::isClosed));
    }

    @Test
    void theDemoWithoutADeviceWritesAFileAndTellsItsCalls() throws Exception {
        Outcome outcome = bench.run();
        assertEquals(0, outcome.exitCode(), outcome.err());
        Path file = temp.resolve("cuelead-demo.wav");
        assertTrue(Files.size(file) > 10_000_000);
        assertTrue(outcome.err().contains("no sound device") && outcome.err().contains(file.toString()));
        assertTrue(outcome.out().lines().count() > 100);
        String last = outcome.err().lines().reduce("", (before, line) -> line);
        assertTrue(last.contains(file.toString()), last);
    }

    @Test
    void aDemoThatIsNotThereIsSaid() throws Exception {
        Path elsewhere = Files.createDirectories(temp.resolve("elsewhere"));
        Outcome outcome = Bench.workingIn(elsewhere).run();
        assertEquals(1, outcome.exitCode());
        assertEquals(1, outcome.err().lines().count(), outcome.err());
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
