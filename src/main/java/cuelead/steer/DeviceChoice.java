package cuelead.steer;

import cuelead.output.DeviceName;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.Optional;

/**
 * The devices to play on.
 *
 * @param main for everything or for the music alone; empty = the usual one
 * @param ear  for calls and clicks; empty = they go with the music
 */
public record DeviceChoice(Optional<DeviceName> main, Optional<DeviceName> ear) {
    public static final DeviceChoice USUAL = new DeviceChoice(Optional.empty(), Optional.empty());

    /**
     * Finds the devices that a user means.
     *
     * @throws Refused when one is not there, or both are the same
     */
    public static DeviceChoice of(Optional<String> main, Optional<String> ear, SoundDevices devices) throws Refused {
        Optional<DeviceName> mainName = named(main, devices);
        Optional<DeviceName> earName = named(ear, devices);
        if (earName.isEmpty()) {
            return new DeviceChoice(mainName, earName);
        }
        // a usual device that changes while it plays must not bring the music into the ear
        DeviceChoice choice = new DeviceChoice(mainName.or(devices::usual), earName);
        if (choice.main().equals(choice.ear())) {
            throw new Refused("The music goes to \"" + earName.get().told() + "\" as well;"
                    + " name another device for it with --device, or put the calls on one side with --side.");
        }
        return choice;
    }

    private static Optional<DeviceName> named(Optional<String> part, SoundDevices devices) throws Refused {
        return part.isPresent()
                ? Optional.of(DeviceName.meantBy(part.get(), devices.names(), DeviceName.Kind.SOUND_DEVICE))
                : Optional.empty();
    }

    /** Opens all or none. */
    public SpeakerPair open(SpeakerSource devices, SampleRate rate) throws Refused {
        Speakers first = devices.open(main, rate);
        try {
            return new SpeakerPair(first, ear.isPresent() ? Optional.of(devices.open(ear, rate)) : Optional.empty());
        } catch (Refused | RuntimeException | Error notBoth) {
            first.close();
            throw notBoth;
        }
    }
}
