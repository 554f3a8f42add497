package cuelead;

import cuelead.sound.Microphone;
import cuelead.time.SampleRate;

/** Hears a buzz, where somebody speaks, or next to nothing; a look after the other. */
public final class FakeMicrophone implements Microphone {
    /** What it hears at each look. */
    public static final double LOOK_SECONDS = 0.02;

    private final SampleRate rate;
    private int frame;
    private int speaksFrom = Integer.MAX_VALUE;
    private double loudness = 1;
    private boolean isLost;
    private boolean isDeaf;
    private boolean isClosed;

    public FakeMicrophone(SampleRate rate) {
        this.rate = rate;
    }

    /** Half a second from now, for 0.3 s. */
    public void speak() {
        speaksFrom = frame + rate.framesIn(0.5);
    }

    /** From now on so many times as loud, and flat where that is too much. */
    public void louder(double times) {
        loudness *= times;
    }

    /** Is taken away. */
    public void lose() {
        isLost = true;
    }

    /** Gives no sound at all. */
    public void deafen() {
        isDeaf = true;
    }

    /** Gives silence. */
    public void mute() {
        loudness = 0;
    }

    public boolean isClosed() {
        return isClosed;
    }

    @Override
    public SampleRate rate() {
        return rate;
    }

    @Override
    public float[] read() {
        float[] heard = new float[isLost || isDeaf ? 0 : rate.framesIn(LOOK_SECONDS)];
        for (int i = 0; i < heard.length; i++, frame++) {
            int spoken = frame - speaksFrom;
            boolean speaks = spoken >= 0 && spoken < rate.framesIn(0.3);
            // every fourth harmonic of 125 Hz counts twice: formants of a kind
            double buzz = 0;
            for (int harmonic = 1; speaks && harmonic < 20; harmonic++) {
                buzz += (harmonic % 4 == 0 ? 0.04 : 0.02) * Math.sin(2 * Math.PI * 125 * harmonic * spoken / rate.hz());
            }
            double sample = loudness * (buzz + (frame % 2 == 0 ? 1e-4 : -1e-4));
            heard[i] = (float) Math.max(-1, Math.min(1, sample));
        }
        return heard;
    }

    @Override
    public boolean isLost() {
        return isLost;
    }

    @Override
    public void close() {
        isClosed = true;
    }
}
