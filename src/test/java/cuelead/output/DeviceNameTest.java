package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.output.DeviceName.Kind;
import cuelead.report.Refused;
import java.util.List;
import org.junit.jupiter.api.Test;

class DeviceNameTest {
    private static final DeviceName EAR = new DeviceName("Ear piece");
    private static final DeviceName HALL = new DeviceName("Hall");
    private static final DeviceName DESK = new DeviceName("Desk");

    private static final DeviceName LONG_HALL = new DeviceName("OpenAL Soft on Hall left");
    private static final List<DeviceName> THERE = List.of(EAR, HALL, LONG_HALL);

    @Test
    void spacesUnderscoresAndHyphensMakeNoDifference() throws Exception {
        DeviceName round = new DeviceName("OpenAL Soft on Round_Speaker-5");
        List<DeviceName> there = List.of(HALL, round);
        assertEquals(round, DeviceName.meantBy("round speaker 5", there, Kind.SOUND_DEVICE));
        assertEquals(round, DeviceName.meantBy("roundspeaker", there, Kind.SOUND_DEVICE));
        assertEquals(round, DeviceName.meantBy("Speaker_5", there, Kind.SOUND_DEVICE));
    }

    @Test
    void aDistinctPartOfANameIsEnough() throws Exception {
        assertEquals(EAR, DeviceName.meantBy("EAR", THERE, Kind.SOUND_DEVICE));
        assertEquals(LONG_HALL, DeviceName.meantBy("left", THERE, Kind.SOUND_DEVICE));
        assertEquals(LONG_HALL, DeviceName.meantBy("OpenAL Soft on hall left", THERE, Kind.SOUND_DEVICE));
        assertEquals(
                HALL, DeviceName.meantBy("hall", THERE, Kind.SOUND_DEVICE), "a whole name before a part of another");
    }

    @Test
    void whatIsNoDistinctPartIsRefusedInASentence() {
        assertEquals(
                "\"al\" may be \"Hall\" or \"Hall left\"; write more of the name.",
                assertThrows(Refused.class, () -> DeviceName.meantBy("al", THERE, Kind.SOUND_DEVICE))
                        .getMessage());
        for (String nothing : List.of("OpenAL", "", " ", "desk")) {
            String sentence = assertThrows(Refused.class, () -> DeviceName.meantBy(nothing, THERE, Kind.SOUND_DEVICE))
                    .getMessage();
            assertEquals(
                    "There is no sound device \"" + nothing
                            + "\"; connect it, or choose from \"Ear piece\", \"Hall\", \"Hall left\".",
                    sentence);
        }
    }

    @Test
    void aDeviceThatIsNotThereIsAnsweredWithThoseThatAre() {
        assertEquals(
                "There is no sound device \"Ear piece\"; connect it, or choose from \"Hall\", \"Desk\".",
                EAR.refusal(List.of(HALL, DESK), Kind.SOUND_DEVICE).getMessage());
    }

    @Test
    void aMicrophoneIsCalledOne() {
        String sentence = assertThrows(
                        Refused.class, () -> DeviceName.meantBy("xyzzy", List.of(EAR, DESK), Kind.MICROPHONE))
                .getMessage();
        assertEquals("There is no microphone \"xyzzy\"; connect it, or choose from \"Ear piece\", \"Desk\".", sentence);
    }

    @Test
    void aDeviceThatIsThereAndCannotBeOpenedIsInUse() {
        assertEquals(
                "The sound device \"Hall\" could not be opened; another program may be using it, so close that or"
                        + " choose another.",
                HALL.refusal(List.of(HALL, DESK), Kind.SOUND_DEVICE).getMessage());
    }

    @Test
    void withoutAnyDeviceNoneIsOffered() {
        assertEquals(
                "There is no sound device \"Hall\", and no other; connect it, or leave its name out.",
                HALL.refusal(List.of(), Kind.SOUND_DEVICE).getMessage());
    }

    @Test
    void whatTheComputerPlaysItselfIsNoMicrophone() {
        assertTrue(new DeviceName("Monitor of Hall").isOwnSound());
        assertFalse(new DeviceName("Stage monitor").isOwnSound());
    }
}
