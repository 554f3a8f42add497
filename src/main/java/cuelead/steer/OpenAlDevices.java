package cuelead.steer;

import cuelead.output.DeviceName;
import cuelead.output.OpenAlMicrophone;
import cuelead.output.OpenAlOutput;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Optional;

/** The devices that are really there. */
public final class OpenAlDevices implements SoundDevices {
    @Override
    public List<DeviceName> names() {
        return DeviceName.all();
    }

    @Override
    public Optional<DeviceName> usual() {
        return DeviceName.usual();
    }

    @Override
    public Speakers open(Optional<DeviceName> name, SampleRate rate) throws Refused {
        return name.isPresent() ? OpenAlOutput.open(rate, name.get()) : OpenAlOutput.open(rate);
    }

    @Override
    public List<DeviceName> microphones() {
        return DeviceName.microphones();
    }

    @Override
    public Optional<DeviceName> usualMicrophone() {
        return DeviceName.usualMicrophone();
    }

    @Override
    public Microphone openMicrophone(Optional<DeviceName> name, SampleRate rate) throws Refused {
        return name.isPresent() ? OpenAlMicrophone.open(rate, name.get()) : OpenAlMicrophone.open(rate);
    }
}
