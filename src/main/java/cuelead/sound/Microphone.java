package cuelead.sound;

import cuelead.time.SampleRate;

/** Something that hears, from the moment it is opened. For one thread. */
public interface Microphone extends AutoCloseable {
    SampleRate rate();

    /** What was heard since the last time, mono, full scale = 1; empty when nothing new. Does not wait. */
    float[] read();

    /** Whether it was unplugged or taken away; then nothing more is heard. */
    boolean isLost();

    /** The device is given back. */
    @Override
    void close();
}
