package cuelead.window.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.output.DeviceName;
import cuelead.output.SilentSpeakers;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.sound.Speakers;
import cuelead.steer.SoundDevices;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HeardOrSilentTest {
    private static final SampleRate RATE = new SampleRate(44_100);

    /** Devices that cannot be opened. */
    private record Broken(List<DeviceName> names) implements SoundDevices {
        @Override
        public Optional<DeviceName> usual() {
            return Optional.empty();
        }

        @Override
        public Speakers open(Optional<DeviceName> name, SampleRate rate) throws Refused {
            throw new Refused("It cannot be opened.");
        }

        @Override
        public List<DeviceName> microphones() {
            return List.of();
        }

        @Override
        public Optional<DeviceName> usualMicrophone() {
            return Optional.empty();
        }

        @Override
        public Microphone openMicrophone(Optional<DeviceName> name, SampleRate rate) throws Refused {
            throw new Refused("It cannot be opened.");
        }
    }

    @Test
    void withoutAnyDeviceADanceGoesOnInSilence() throws Refused {
        HeardOrSilent devices = new HeardOrSilent(new Broken(List.of()));
        try (Speakers speakers = devices.open(Optional.empty(), RATE)) {
            assertInstanceOf(SilentSpeakers.class, speakers);
        }
        assertTrue(devices.isSilent());
    }

    @Test
    void aDeviceThatIsThereAndCannotBeOpenedIsTold() {
        HeardOrSilent devices = new HeardOrSilent(new Broken(List.of(new DeviceName("hall"))));
        Refused refused = assertThrows(Refused.class, () -> devices.open(Optional.empty(), RATE));
        assertEquals("It cannot be opened.", refused.getMessage());
    }

    @Test
    void aDeviceThatWasChosenIsNotReplacedBySilence() {
        HeardOrSilent devices = new HeardOrSilent(new Broken(List.of()));
        assertThrows(Refused.class, () -> devices.open(Optional.of(new DeviceName("hall")), RATE));
    }
}
