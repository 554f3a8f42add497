package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.steer.Calls;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against the examples of RFC 4180, section 2 (from memory), and the tables that are made with it. */
class CsvTest {
    @Test
    void plainFieldsStandAsTheyAre() {
        assertEquals("aaa,bbb,ccc\r\n", Csv.line(List.of("aaa", "bbb", "ccc")));
    }

    @Test
    void lineBreaksAndCommasAreQuoted() {
        assertEquals("aaa,\"b\r\nbb\",\"c,cc\"\r\n", Csv.line(List.of("aaa", "b\r\nbb", "c,cc")));
    }

    @Test
    void aQuoteIsDoubled() {
        assertEquals("\"b\"\"bb\",ccc\r\n", Csv.line(List.of("b\"bb", "ccc")));
    }

    @Test
    void aPlanHasALineACallAndTimesFromItsTrack() {
        var calls = List.of(
                Calls.spoken(Calls.countIn("five", 6, 5)), Calls.spoken(Calls.word("side, and \"close\"", 7.25, 1)));
        String text = new PlanCsv(new ClipNames(calls), Calls.RATE, Calls.RATE.frameAt(2)).print(calls);
        assertEquals(
                "word,time,beat,start,clip,end,kind,lead_beats,wall,section,count,facing,level\r\n"
                        + "five,4.000000000,,3.850000000,five.wav,4.200000000,count-in,0,0,,5,12:00,words\r\n"
                        + "\"side, and \"\"close\"\"\",5.250000000,6.250000000,5.100000000,side_and_close.wav,"
                        + "5.450000000,word,2,1,S1,1,12:00,words\r\n",
                text);
    }

    @Test
    void theSoundsOfAWordStandOnItsOwnTimeLine() {
        var clip = Calls.spoken(Calls.word("rock", 7, 1)).clip();
        String expected = """
                word,phone,start,end
                rock,r,0.050000000,0.100000000
                rock,aa,0.100000000,0.300000000
                rock,pau,0.300000000,0.500000000
                """;
        assertEquals(expected.replace("\n", "\r\n"), SegsCsv.print(List.of(clip)));
    }
}
