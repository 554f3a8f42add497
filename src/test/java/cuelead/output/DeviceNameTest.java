package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class DeviceNameTest {
    private static final DeviceName EAR = new DeviceName("Ear piece");
    private static final DeviceName HALL = new DeviceName("Hall");
    private static final DeviceName DESK = new DeviceName("Desk");

    @Test
    void aDeviceThatIsNotThereIsAnsweredWithThoseThatAre() {
        assertEquals(
                "There is no sound device \"Ear piece\"; connect it, or choose from \"Hall\", \"Desk\".",
                EAR.refusal(List.of(HALL, DESK)).getMessage());
    }

    @Test
    void aDeviceThatIsThereAndCannotBeOpenedIsInUse() {
        assertEquals(
                "The sound device \"Hall\" could not be opened; another program may be using it, so close that or"
                        + " choose another device.",
                HALL.refusal(List.of(HALL, DESK)).getMessage());
    }

    @Test
    void withoutAnyDeviceNoneIsOffered() {
        assertEquals(
                "There is no sound device \"Hall\", and no other; connect it, or leave its name out.",
                HALL.refusal(List.of()).getMessage());
    }
}
