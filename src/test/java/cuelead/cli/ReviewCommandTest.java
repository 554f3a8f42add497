package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.cli.Bench.Outcome;
import cuelead.output.GrowingTake;
import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.rehearse.SpokenTake;
import cuelead.song.SongFile;
import cuelead.voice.MonoSound;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewCommandTest {
    @TempDir
    private Path temp;

    private Bench bench;
    private Path plan;
    private Path take;

    @BeforeEach
    void writeATake() throws Exception {
        bench = Bench.withoutDevice(temp);
        plan = temp.resolve("plan.csv");
        Files.writeString(plan, """
                word,time,beat,lead_beats,wall,section
                together,1,2,2,1,S1
                scuff,2.2,3.2,2,1,S1
                coaster,3.4,4.4,2,1,S2
                """);
        take = temp.resolve("take.wav");
        write(new SpokenTake(5).say("together", 1.01).say("coaster", 3.6).sound(), take);
    }

    private static void write(MonoSound sound, Path file) throws Exception {
        new WavFile().writeMono(sound.samples(), sound.rate(), WavFormat.PCM_16, file);
    }

    private Outcome review(String... more) {
        List<String> arguments =
                new java.util.ArrayList<>(List.of("review", take.toString(), "--plan", plan.toString()));
        arguments.addAll(List.of(more));
        return bench.run(arguments.toArray(String[]::new));
    }

    private void refused(String begin, Outcome outcome) {
        assertEquals(1, outcome.exitCode());
        String last = outcome.err().lines().reduce((a, b) -> b).orElse("");
        assertTrue(last.contains(begin), outcome.err());
    }

    @Test
    void theTableHasALineACall() {
        Outcome outcome = review("--csv");
        assertEquals(0, outcome.exitCode(), outcome.err());
        List<String> lines = outcome.out().lines().toList();
        assertEquals("kind,word,planned,heard,error_ms,heard_word", lines.get(0));
        assertEquals(4, lines.size());
        assertTrue(lines.get(1).matches("ok,together,1\\.000000,[01]\\.\\d{6},-?\\d+\\.\\d,together"), lines.get(1));
        assertEquals("missed,scuff,2.200000,,,", lines.get(2));
        assertTrue(lines.get(3).startsWith("late,coaster,3.400000,3."), lines.get(3));
    }

    @Test
    void theReportIsInWords() {
        Outcome outcome = review();
        assertTrue(outcome.out().startsWith("3 planned calls: 1 on time, 0 early, 1 late, 1 missed"), outcome.out());
        assertTrue(outcome.out().contains("of a beat)"), outcome.out());
        assertTrue(outcome.err().contains("Without --calibration"), outcome.err());
    }

    @Test
    void aRehearsalThatWasBrokenOffIsReviewedAsFarAsItWent() throws Exception {
        MonoSound said = new SpokenTake(1.8).say("together", 1.01).sound();
        Path other = temp.resolve("other.wav");
        write(said, other);
        take = temp.resolve("broken-off.wav");
        try (GrowingTake growing = GrowingTake.begin(take, said.rate(), 0)) {
            growing.write(said.samples(), 0, said.samples().length);
        }
        Outcome outcome = review();
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertTrue(outcome.out().startsWith("1 planned call: 1 on time"), outcome.out());
        take = other;
        refused("ends at", review());
    }

    @Test
    void howCallsLandedStandsInAColumn() throws Exception {
        Files.writeString(plan, """
                word,time,beat,lead_beats,wall,section
                together,1,2,2,1,S1
                jazz box quarter right,2.2,3.2,2,1,S1
                coaster,3.4,4.4,2,1,S2
                """);
        List<String> off = review().out()
                .lines()
                .filter(line -> line.matches(" +\\d .*(jazz|coaster).*"))
                .toList();
        int column = off.get(0).indexOf("missed");
        assertTrue(off.get(1).substring(column).matches("\\d+ ms late .*"), off::toString);
    }

    @Test
    void aCallIsWrittenBesideThePlannedOne() throws Exception {
        Path out = temp.resolve("both.wav");
        Outcome outcome = review("--hear", "3", "-o", out.toString());
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertEquals(6.5, SongFile.readAll(out).monoSamples().length / 16_000.0, 0.01);
        refused("There is no call 9 in this take; choose 1 to 3.", review("--hear", "9", "-o", out.toString()));
    }

    @Test
    void thePictureIsWritten() throws Exception {
        Path picture = temp.resolve("calls.png");
        assertEquals(0, review("--csv", "--picture", picture.toString()).exitCode());
        assertTrue(Files.size(picture) > 1_000);
        refused(
                "written as a PNG file only",
                review("--picture", temp.resolve("calls.gif").toString()));
    }

    @Test
    void aSilentTakeIsRefused() throws Exception {
        write(new MonoSound(new float[80_000], SpokenTake.RATE), take);
        refused("is silent", review());
    }

    @Test
    void aTakeOfAnotherPlanIsRefused() throws Exception {
        Files.writeString(plan, "word,time\ntogether,101\nscuff,102.2\n");
        refused("but the plan goes on to 1:42.2:", review());
    }

    @Test
    void aClippedTakeIsReviewedWithAWarning() throws Exception {
        MonoSound sound =
                new SpokenTake(5).say("together", 1.01).say("coaster", 3.6).sound();
        for (int i = 0; i < sound.frames(); i++) {
            sound.samples()[i] = Math.max(-1, Math.min(1, 12 * sound.samples()[i]));
        }
        write(sound, take);
        Outcome outcome = review("--csv");
        assertEquals(0, outcome.exitCode());
        assertTrue(outcome.err().contains("is clipped in "), outcome.err());
    }

    @Test
    void whatIsNoSoundAndWhatIsMissingIsRefused() throws Exception {
        Files.writeString(take, "no sound at all");
        assertEquals(1, review().exitCode());
        Files.delete(take);
        refused("take.wav", review());
        refused(
                "no column \"time\"",
                bench.run("review", take.toString(), "--plan", badPlan().toString()));
    }

    private Path badPlan() throws Exception {
        Path bad = temp.resolve("bad.csv");
        Files.writeString(bad, "word,when\nstep,1\n");
        return bad;
    }

    @Test
    void planAndSheetExcludeEachOther() {
        assertEquals(2, review("--output", "x.wav").exitCode());
        assertEquals(2, bench.run("review", take.toString()).exitCode());
        assertEquals(
                2,
                bench.run("review", take.toString(), "sheet.txt", "--plan", plan.toString())
                        .exitCode());
    }
}
