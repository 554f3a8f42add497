package cuelead.window.floor;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.output.DeviceName;
import cuelead.output.SilentSpeakers;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HeardOrSilentTest {
    private static final SampleRate RATE = new SampleRate(44_100);

    private final HeardOrSilent devices = new HeardOrSilent((name, rate) -> {
        throw new Refused("It cannot be opened.");
    });

    @Test
    void withoutADeviceADanceGoesOnInSilence() throws Refused {
        try (Speakers speakers = devices.open(Optional.empty(), RATE)) {
            assertInstanceOf(SilentSpeakers.class, speakers);
        }
        assertTrue(devices.isSilent());
    }

    @Test
    void aDeviceThatWasChosenIsNotReplacedBySilence() {
        assertThrows(Refused.class, () -> devices.open(Optional.of(new DeviceName("hall")), RATE));
    }
}
