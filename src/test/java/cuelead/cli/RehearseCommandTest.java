package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.cli.Bench.Outcome;
import cuelead.output.RoundTripNote;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans without music: clicks on the beats stand for it. */
class RehearseCommandTest {
    private static final SampleRate RATE = new SampleRate(44_100);
    private static final int LATE_FRAMES = 3_000;
    private static final int MEASURING_CLICKS = 8;

    @TempDir
    private Path temp;

    private Bench bench;
    private Path plan;
    private Path kept;

    @BeforeEach
    void aPlan() throws IOException {
        bench = Bench.withDevice(temp);
        kept = temp.resolve("kept");
        plan = temp.resolve("plan.csv");
        Files.writeString(plan, """
                word,time,beat,lead_beats,wall,section
                together,2,0.8,2,1,S1
                scuff,3.2,3.8,2,1,S1
                coaster,4.4,5,2,1,S2
                """);
    }

    private FakeRoom room() {
        return new FakeRoom(RATE, () -> bench.opened.get(bench.opened.size() - 1), LATE_FRAMES, 0.8);
    }

    private FakeRoom caller() throws Exception {
        return room().say("together", 2.01).say("coaster", 4.6);
    }

    private Outcome rehearse(FakeRoom room, String... more) {
        bench.plugIn(room);
        List<String> arguments =
                new ArrayList<>(List.of("rehearse", "--plan", plan.toString(), "--folder", kept.toString()));
        arguments.addAll(List.of(more));
        return bench.run(arguments.toArray(String[]::new));
    }

    private Path take() throws IOException {
        try (Stream<Path> files = Files.list(kept.resolve("plan"))) {
            return files.filter(file -> file.toString().endsWith("-1.wav"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void theRoundTripIsMeasuredAndTheCallsAreReviewed() throws Exception {
        Outcome outcome = rehearse(caller().afterClicks(MEASURING_CLICKS), "--csv");
        assertEquals(0, outcome.exitCode(), outcome.err());
        List<String> lines = outcome.out().lines().toList();
        assertEquals(4, lines.size(), outcome.out());
        assertTrue(lines.get(1).startsWith("ok,together,2.000000,"), lines.get(1));
        assertTrue(lines.get(2).startsWith("missed,scuff,"), lines.get(2));
        assertTrue(lines.get(3).startsWith("late,coaster,4.400000,"), lines.get(3));
        double lateMs = Double.parseDouble(lines.get(3).split(",")[4]);
        assertEquals(200, lateMs, 25);
        assertEquals(
                1_000.0 * LATE_FRAMES / RATE.hz(),
                1_000 * RoundTripNote.seconds(take()).getAsDouble(),
                1);
        assertTrue(outcome.err().contains("stays on this computer"), outcome.err());
    }

    @Test
    void theKeptTakeIsReviewedToTheSameTable() throws Exception {
        Outcome live = rehearse(caller().afterClicks(MEASURING_CLICKS), "--csv");
        Outcome again = bench.run("review", take().toString(), "--plan", plan.toString(), "--csv");
        assertEquals(live.out(), again.out());
        assertFalse(again.err().contains("--calibration"), again.err());
    }

    @Test
    void theLastRoundTripIsTakenTheNextTimeAndProgressGrows() throws Exception {
        rehearse(caller().afterClicks(MEASURING_CLICKS));
        Outcome second = rehearse(caller());
        assertEquals(0, second.exitCode(), second.err());
        assertTrue(second.err().contains("ms late, as on "), second.err());
        assertTrue(second.out().contains("Your rehearsals of this dance"), second.out());
        assertEquals(
                2,
                second.out()
                        .lines()
                        .filter(line -> line.contains("1 of 3 calls on time"))
                        .count(),
                second.out());
        List<String> progress = Files.readAllLines(kept.resolve("plan").resolve("progress.txt"));
        assertEquals(4, progress.size());
        assertTrue(progress.get(3).endsWith("\tS1 scuff; S2 coaster"), progress.get(3));
    }

    @Test
    void onlyWhatWentWrongIsPrompted() throws Exception {
        Outcome first = rehearse(caller().afterClicks(MEASURING_CLICKS), "--prompts", "wrong");
        assertTrue(first.err().lines().anyMatch(line -> line.endsWith("  together")), first.err());
        Outcome second = rehearse(caller(), "--prompts", "wrong");
        assertTrue(second.err().lines().noneMatch(line -> line.endsWith("  together")), second.err());
        assertTrue(second.err().lines().anyMatch(line -> line.matches("0:02\\.\\d  scuff")), second.err());
    }

    @Test
    void brokenProgressIsToldAndLeftAsItIs() throws Exception {
        Files.createDirectories(kept.resolve("plan"));
        Path progress = kept.resolve("plan").resolve("progress.txt");
        Files.writeString(progress, "what I wrote myself\n");
        Outcome outcome = rehearse(caller().afterClicks(MEASURING_CLICKS));
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertTrue(outcome.err().contains("progress.txt:1:1: this line is no rehearsal"), outcome.err());
        assertEquals("what I wrote myself\n", Files.readString(progress));
    }

    @Test
    void aMicrophoneThatGoesKeepsTheTake() throws Exception {
        Outcome outcome = rehearse(caller().afterClicks(MEASURING_CLICKS).goneAt(3.9), "--csv");
        assertEquals(0, outcome.exitCode(), outcome.err());
        assertTrue(outcome.err().contains("The microphone is gone"), outcome.err());
        assertEquals(3, outcome.out().lines().count(), outcome.out());
        assertTrue(outcome.out().contains("ok,together"), outcome.out());
    }

    @Test
    void clicksThatAreNotHeardAreToldInASentence() {
        Outcome outcome = rehearse(room().louder(0.001f));
        assertEquals(1, outcome.exitCode());
        assertTrue(
                outcome.err().lines().anyMatch(line -> line.startsWith("The eight clicks were not heard evenly:")),
                outcome.err());
    }

    @Test
    void whatIsSilentIsKeptAndTold() throws Exception {
        rehearse(caller().afterClicks(MEASURING_CLICKS));
        Outcome outcome = rehearse(room().louder(0.01f));
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("-2.wav is silent: see whether the microphone"), outcome.err());
        assertTrue(
                Files.size(take().resolveSibling(take().getFileName().toString().replace("-1.wav", "-2.wav")))
                        > 100_000);
    }

    @Test
    void whatIsClippedIsTold() throws Exception {
        rehearse(caller().afterClicks(MEASURING_CLICKS));
        Outcome outcome = rehearse(caller().louder(40));
        assertTrue(outcome.err().contains("The microphone is too loud"), outcome.err());
    }

    @Test
    void noMicrophoneAndAWrongNameAreToldInASentence() {
        Outcome none = bench.run("rehearse", "--plan", plan.toString(), "--folder", kept.toString());
        assertEquals(1, none.exitCode());
        assertTrue(none.err().contains("No microphone."), none.err());
        Outcome wrong =
                bench.run("rehearse", "--plan", plan.toString(), "--folder", kept.toString(), "--microphone", "xyzzy");
        assertEquals(1, wrong.exitCode());
        assertTrue(wrong.err().contains("There is no microphone \"xyzzy\""), wrong.err());
        assertFalse(Files.exists(kept), "nothing was recorded, and a folder was made");
    }

    @Test
    void aPlaceWhereNoFolderCanBeMadeIsToldBeforeAnythingIsPlayed() throws Exception {
        Files.writeString(kept, "a file");
        Outcome outcome = rehearse(caller());
        assertEquals(1, outcome.exitCode());
        assertTrue(outcome.err().contains("choose another place"), outcome.err());
        assertTrue(bench.opened.isEmpty());
    }

    @Test
    void whatIsToBeCalledMustBeSaid() {
        assertEquals(2, bench.run("rehearse").exitCode());
        assertEquals(
                2, bench.run("rehearse", "sheet.txt", "--plan", plan.toString()).exitCode());
        assertEquals(2, rehearse(room(), "--prompts", "some").exitCode());
    }
}
