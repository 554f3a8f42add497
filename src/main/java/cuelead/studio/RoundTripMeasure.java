package cuelead.studio;

import cuelead.rehearse.ClickTimes;
import cuelead.report.Refused;
import cuelead.sound.ClickAt;
import cuelead.sound.ClickSound;
import cuelead.sound.Levels;
import cuelead.sound.Mix;
import cuelead.sound.MixPlan;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.sound.Staged;
import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Measures how late the microphone is: plays clicks, and finds them in what it hears. Used once. */
final class RoundTripMeasure {
    /** In an earphone a click is loud. */
    private static final Levels LEVELS = new Levels(0, 0, -10, 0);
    /** The clocks may be ahead of the truth by a little, so the recording is begun earlier. */
    private static final double EARLIER_SECONDS = 0.1;

    private final Staged stream;
    private final Speakers speakers;
    private final MicrophoneLine line;
    private final Staged.Stage clicks;
    private final float[] heard;
    private final long firstFrame;
    private int heardFrames;

    /** Begins to play. */
    RoundTripMeasure(Staged stream, Speakers speakers, MicrophoneLine line) {
        this.stream = stream;
        this.speakers = speakers;
        this.line = line;
        SampleRate rate = line.rate();
        firstFrame = line.frames();
        heard = new float[rate.framesIn(3 * ClickTimes.recordingSeconds())];
        clicks = stream.begin(clicks(rate));
    }

    /** Eight clicks, and silence in which the last may come back. */
    static Sound clicks(SampleRate rate) {
        List<ClickAt> clicks = ClickTimes.playedSeconds().stream()
                .map(seconds -> new ClickAt(rate.frameAt(seconds), ClickSound.ACCENTED))
                .toList();
        return new Mix(new MixPlan(
                rate, Optional.empty(), List.of(), clicks, LEVELS, 0, rate.frameAt(ClickTimes.recordingSeconds())));
    }

    /** Listens on, and gives what is new; to be called some times a second, until it {@link #isOver}. */
    float[] tick() throws Refused {
        float[] more = line.listen();
        int count = Math.min(more.length, heard.length - heardFrames);
        System.arraycopy(more, 0, heard, heardFrames, count);
        heardFrames += count;
        return more;
    }

    boolean isOver() {
        return heardFrames == heard.length || speakers.heardFrame() >= clicks.endFrame();
    }

    /** What came of it; empty where the clicks were not heard evenly. */
    Optional<RoundTrip> result() {
        SampleRate rate = line.rate();
        double offset = line.offsetFrames();
        long begin = clicks.firstFrame() + Math.round(offset) - rate.frameAt(EARLIER_SECONDS);
        int from = (int) Math.max(0, Math.min(heardFrames, begin - firstFrame));
        MonoSound recording = new MonoSound(Arrays.copyOfRange(heard, from, heardFrames), rate);
        OptionalDouble late = ClickTimes.roundTripSeconds(recording);
        if (late.isEmpty()) {
            return Optional.empty();
        }
        double exact = from + firstFrame - clicks.firstFrame() + late.getAsDouble() * rate.hz();
        return Optional.of(new RoundTrip((exact - offset) / rate.hz(), OptionalDouble.of(exact)));
    }

    /** Silence from here on. */
    void stop() {
        stream.begin((interleaved, frames) -> 0);
    }
}
