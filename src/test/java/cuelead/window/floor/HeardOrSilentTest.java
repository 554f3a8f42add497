package cuelead.window.floor;

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
    private record Broken() implements SoundDevices {
        @Override
        public List<DeviceName> names() {
            return List.of(new DeviceName("listed, but not there"));
        }

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
    void withoutADeviceADanceGoesOnInSilence() throws Refused {
        HeardOrSilent devices = new HeardOrSilent(new Broken());
        try (Speakers speakers = devices.open(Optional.empty(), RATE)) {
            assertInstanceOf(SilentSpeakers.class, speakers);
        }
        assertTrue(devices.isSilent());
    }

    @Test
    void aDeviceThatWasChosenIsNotReplacedBySilence() {
        HeardOrSilent devices = new HeardOrSilent(new Broken());
        assertThrows(Refused.class, () -> devices.open(Optional.of(new DeviceName("hall")), RATE));
    }
}
