package cuelead.steer;

import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import cuelead.voice.TakeBuffer;
import java.util.Optional;

/** What words are heard and recorded with; devices that are not open yet are opened when they are asked for. */
public interface WordDevices {
    /** Of both. */
    SampleRate rate();

    /**
     * Where words and clicks are heard.
     *
     * @throws Refused when they cannot be opened
     */
    Speakers speakers() throws Refused;

    /**
     * What hears them.
     *
     * @throws Refused when it cannot be opened
     */
    TakeBuffer microphone() throws Refused;

    /** The microphone, once it is open. */
    Optional<TakeBuffer> listening();

    /** What plays falls silent; opens nothing. */
    void hush();
}
