package cuelead.cli;

import cuelead.FakeSpeakers;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.Pronunciations;
import cuelead.voice.SynthVoice;
import java.util.Random;
import java.util.function.Supplier;

/**
 * A microphone that hears fake speakers, so many frames late, and somebody who calls: she begins when the first click of the
 * song is heard, behind as many clicks as were asked for.
 */
final class FakeRoom implements Microphone {
    private static final float LOUD = 0.01f;
    private static final double APART_SECONDS = 0.2;
    private static final int NOT_YET = -1;

    private final SampleRate rate;
    private final Supplier<FakeSpeakers> speakers;
    private final int lateFrames;
    private final float[] voice;
    private final double firstClickSeconds;
    private final Random random = new Random(1);
    private int clicksBefore;
    private int given;
    private int lastLoud = -1_000_000;
    private int songFrame = NOT_YET;
    private int goneAt = Integer.MAX_VALUE;
    private float gain = 1;

    /** @param firstClickSeconds where in the song its first click is */
    FakeRoom(SampleRate rate, Supplier<FakeSpeakers> speakers, int lateFrames, double firstClickSeconds) {
        this.rate = rate;
        this.speakers = speakers;
        this.lateFrames = lateFrames;
        this.firstClickSeconds = firstClickSeconds;
        voice = new float[rate.framesIn(20)];
    }

    /** So many clicks are heard before the song. */
    FakeRoom afterClicks(int clicks) {
        clicksBefore = clicks;
        return this;
    }

    /** She says a word so that its centre is heard then, in seconds of the song. */
    FakeRoom say(String word, double centreSeconds) throws Refused {
        Clip clip = new SynthVoice(rate, Pronunciations.NONE).say(word).orElseThrow();
        int first = rate.framesIn(centreSeconds - clip.centreSeconds());
        for (int i = 0; i < clip.samples().length; i++) {
            voice[first + i] += 0.5f * clip.samples()[i];
        }
        return this;
    }

    /** It is unplugged so long after the song began. */
    FakeRoom goneAt(double songSeconds) {
        goneAt = rate.framesIn(songSeconds);
        return this;
    }

    /** It is so much louder. */
    FakeRoom louder(float factor) {
        gain = factor;
        return this;
    }

    @Override
    public SampleRate rate() {
        return rate;
    }

    @Override
    public float[] read() {
        if (isLost()) {
            return new float[0];
        }
        int heard = speakers.get().heardFrames();
        float[] samples = new float[heard - given];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = gain * sample(given + i);
        }
        given = heard;
        return samples;
    }

    private float sample(int frame) {
        float click = speakers.get().heardLeft(frame - lateFrames);
        if (songFrame == NOT_YET && Math.abs(click) > LOUD) {
            if (frame - lastLoud > rate.framesIn(APART_SECONDS)) {
                clicksBefore--;
            }
            lastLoud = frame;
            songFrame = clicksBefore < 0 ? frame - rate.framesIn(firstClickSeconds) : NOT_YET;
        }
        int said = frame - songFrame;
        boolean speaks = songFrame != NOT_YET && said >= 0 && said < voice.length;
        boolean isBeforeSong = songFrame == NOT_YET;
        return (float) (0.0007 * random.nextGaussian())
                + (isBeforeSong ? 0.5f * click : 0)
                + (speaks ? voice[said] : 0);
    }

    @Override
    public boolean isLost() {
        return songFrame != NOT_YET && given - songFrame > goneAt;
    }

    @Override
    public void close() {}
}
