package cuelead.steer;

import cuelead.output.DeviceName;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Optional;

/** The sound devices of this computer. */
public interface SoundDevices extends SpeakerSource {
    List<DeviceName> names();

    /** The one that is taken where none is named, where that is known. */
    Optional<DeviceName> usual();

    List<DeviceName> microphones();

    /** The microphone that is taken where none is named, where that is known. */
    Optional<DeviceName> usualMicrophone();

    /**
     * Opens a microphone, which listens from then on.
     *
     * @param name empty = the usual one
     * @throws Refused when it is not there
     */
    Microphone openMicrophone(Optional<DeviceName> name, SampleRate rate) throws Refused;
}
