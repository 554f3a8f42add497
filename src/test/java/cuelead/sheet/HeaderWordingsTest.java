package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.CountOne;
import cuelead.dance.Header;
import cuelead.dance.Weight;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The facts of one header, told in many wordings (common practice, no source). */
class HeaderWordingsTest {
    private static final List<String> WORDINGS = List.of(
            "Nettle Row\n32 count - 4 wall - beginner line dance\nMusic: Barley (104 bpm)\nChoreographed by: Quill Underhay\nIntro 16 counts, weight on left\n",
            "NETTLE ROW\n\nLevel: Beginner   Wall: 4   Count: 32\nBPM: 104\nStart after 16 counts, weight on L foot\n",
            "Nettle Row (32c/4w Beginner)\nTempo 104 BPM; 16 count intro; weight starts on L\n",
            "Title: Nettle Row\nDescription: 32 counts, four walls, Beginner\nMusic tempo: 104\nLead-in: 16 counts. Weight on left foot\n",
            "Nettle Row\n32/4/Beginner\n104 bpm\nStart on count 17, weight L\n",
            "\"Nettle Row\"\nby Quill Underhay\nthirty-two counts, four walls, beginner\n104 BPM\nWait 16 beats. Start with weight on L\n",
            "Nettle Row - a 4 wall, 32 count beginner dance at 104 bpm\nIntro: 2 x 8 counts. Weight on L\n",
            "Nettle Row\nWalls: 4\nCounts: 32\nDifficulty: Beginner\nSpeed: 104 BPM\nIntroduction: 16 counts\nStarting position: weight on left foot\n",
            "Dance: Nettle Row\nType: 4-wall line dance, 32 counts\nLevel = Beginner\n104 beats per minute\nIntro = 16; weight on L\n",
            "Name of the dance: Nettle Row\nNumber of counts: 32\nNumber of walls: 4\nLevel of difficulty: Beginner\nBeats per minute: 104\nBegin after 16 counts, weight on the left\n",
            "Nettle Row | 32 cts | 4 walls | beginner | 104 bpm | 16 ct intro | weight L\n",
            "Nettle Row\n32 counts, 4 walls, beginner\nanything around 104 BPM * wait 16 * weight starts on L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm\nIntro 16   weight L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm, in on 16, wt L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm\nwait 2 eights, weight on L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm\nIntro: 4 bars. Weight on L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm\nWait 2 sets of 8 counts, weight on L\n",
            "Nettle Row\nIt has 32\ncounts, is done to four walls, and any beginner can do it. We use a tune of about\n104 beats to the minute. Wait for 16 counts; weight on L\n",
            "Nettle Row\n4 walls, beginner, a 32 beat sequence, 104 bpm. Count 16 beats in, then go. Weight on L\n",
            "Nettle Row\n32 counts - 4 walls - beginner - 104 bpm\nHold your horses for 16 counts after the band kicks in. Weight on your left foot\n",
            "Nettle Row\n104 bpm, skip the first 16 counts\n32 counts, 4 walls, beginner. Weight on L\n",
            "Nettle Row   32c / 4w / Beginner\n~104 bpm, 16 in, weight on L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm\nStart on lyrics (16 counts)\nWeight on L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm\nBegin on the vocals, 16 counts in\nWeight on L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm\nIntro: start on vocals (16 counts)\nWeight on L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm\nStart: 16 ct. (on the first word)\nWeight on L\n",
            "Nettle Row\n32 counts, 4 walls, beginner, 104 bpm\nDance starts on the vocals - approx. 16 counts\nWeight on L\n",
            "Nettle Row\nChoreographed by: Quill Underhay, Merrow      Type: 32 beats, 4 wall, beginner, 104 bpm\nIntro 16, weight on L\n",
            "Nettle Row\nChoreo: Quill Underhay, 32 counts, 4 walls, beginner, 104 bpm\nIntro 16, weight on L\n",
            "Nettle Row :: 32 ct / 4 wall / beginner :: bpm 104 :: #16 intro :: no restarts\nWeight on L\n",
            "Nettle Row\n104 bpm. Listen to 16 counts of drums\n32 counts, 4 walls, beginner, weight on L\n");

    static Stream<String> wordings() {
        return WORDINGS.stream();
    }

    @ParameterizedTest
    @MethodSource("wordings")
    void sameFacts(String head) {
        String plain = OneDance.sections(OneDance::numbered, group -> group.counts() + " " + group.steps() + "\n");
        ReadSheet read = SheetReader.read("nettle.txt", plain.replace(OneDance.HEAD, head + "\n"));
        assertEquals(List.of(), Blamed.in(read));
        Header header = read.dance().orElseThrow().header();
        assertEquals("nettle row", header.title().toLowerCase(Locale.ROOT));
        assertEquals(OptionalInt.of(32), header.statedCounts());
        assertEquals(OptionalInt.of(4), header.statedWalls());
        assertEquals("Beginner", header.level());
        assertEquals(OptionalDouble.of(104), header.statedTempo());
        assertEquals(Optional.of(new CountOne.Intro(16)), header.countOne());
        assertEquals(Weight.LEFT, header.startWeight());
    }
}
