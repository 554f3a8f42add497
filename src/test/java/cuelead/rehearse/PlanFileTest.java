package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanFileTest {
    @TempDir
    private Path temp;

    private List<PlannedCall> read(String text) throws Exception {
        Path file = temp.resolve("plan.csv");
        Files.writeString(file, text);
        return PlanFile.read(file);
    }

    private String refusal(String text) {
        return assertThrows(Refused.class, () -> read(text)).getMessage();
    }

    @Test
    void wordTimeAndBeatAreEnough() throws Exception {
        List<PlannedCall> calls = read("idx,word,time,beat\r\n0,step,5.038462,5.615385\r\n1,Kick  Ball,6.5,\r\n");
        assertEquals(2, calls.size());
        assertEquals(5.038462, calls.get(0).seconds());
        assertEquals(5.615385, calls.get(0).beatSeconds().orElseThrow());
        assertEquals("kick ball", calls.get(1).word());
        assertTrue(calls.get(1).beatSeconds().isEmpty());
        assertTrue(calls.get(0).beatLength().isEmpty());
    }

    @Test
    void wallsSectionsAndTheLengthOfBeatsAreRead() throws Exception {
        PlannedCall call = read("word,time,beat,lead_beats,wall,section\n\"rock, recover\",4,5,2,3,S2\n")
                .get(0);
        assertEquals("rock, recover", call.word());
        assertEquals(3, call.wall());
        assertEquals("S2", call.section());
        assertEquals(0.5, call.beatLength().orElseThrow(), 1e-9);
    }

    @Test
    void callsAreSortedByTime() throws Exception {
        assertEquals("a", read("word,time\nb,2\na,1\n").get(0).word());
    }

    @Test
    void missingColumnsAreNamed() {
        assertTrue(refusal("word,beat\nstep,1\n").contains("no column \"time\""));
        assertTrue(refusal("").contains("no column \"word\""));
    }

    @Test
    void badValuesAreToldWithTheirLine() {
        String told = refusal("word,time\nstep,1\ntouch,soon\n");
        assertTrue(told.contains("plan.csv:3:2: \"soon\" is no time"), told);
        assertTrue(refusal("word,time\n,1\n").contains("plan.csv:2:1"));
        assertTrue(refusal("word,time\nstep,-1\n").contains("\"-1\""));
        assertTrue(refusal("word,time,wall\nstep,1,two\n").contains("a number, such as 2."));
    }

    @Test
    void aPlanWithoutCallsIsRefused() {
        assertTrue(refusal("word,time\n\n").contains("has no calls"));
    }

    @Test
    void quotesAreTakenOff() {
        assertEquals(List.of("a", "b, c", "d \"e\"", ""), CsvRow.values("a,\"b, c\",\"d \"\"e\"\"\","));
    }
}
