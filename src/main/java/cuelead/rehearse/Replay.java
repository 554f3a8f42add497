package cuelead.rehearse;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import cuelead.voice.MonoSound;
import cuelead.voice.Voice;
import java.util.Optional;

/**
 * A passage to be heard twice: first with the call as it was planned, then as it was said, both at the same place of the
 * music; or, where that is not known, of a click on the beat.
 */
public final class Replay {
    private static final double BEFORE_SECONDS = 1.5;
    private static final double AFTER_SECONDS = 1.5;
    private static final double PAUSE_SECONDS = 0.5;
    private static final double CLICK_SECONDS = 0.03;
    private static final double CLICK_HZ = 1_500;
    /** Peaks: the call's, and that of what it is heard against. */
    private static final double CALL_PEAK = 0.6;

    private static final double GROUND_PEAK = 0.2;

    private final MonoSound take;
    private final Optional<MonoSound> music;
    private final double roundTripSeconds;
    private final Voice voice;

    /**
     * @param take  the recording, and {@code music} what was heard meanwhile, both at the voice's rate
     * @param voice speaks what was planned
     */
    public Replay(MonoSound take, Optional<MonoSound> music, double roundTripSeconds, Voice voice) {
        this.take = take;
        this.music = music;
        this.roundTripSeconds = roundTripSeconds;
        this.voice = voice;
    }

    /** Both passages one after the other; what was not planned is heard once only. */
    public MonoSound of(ReviewedCall call) throws Refused {
        SampleRate rate = take.rate();
        double from = call.seconds() - BEFORE_SECONDS;
        int frames = rate.framesIn(BEFORE_SECONDS + AFTER_SECONDS);
        float[] ground = ground(call, from, frames);
        float[] planned = call.planned().isPresent() ? ground.clone() : new float[0];
        if (call.planned().isPresent()) {
            Optional<Clip> clip = voice.say(call.planned().get().word());
            clip.ifPresent(spoken ->
                    add(spoken.samples(), planned, rate.framesIn(BEFORE_SECONDS - spoken.centreSeconds()), CALL_PEAK));
        }
        int pause = planned.length > 0 ? rate.framesIn(PAUSE_SECONDS) : 0;
        float[] both = new float[planned.length + pause + frames];
        System.arraycopy(planned, 0, both, 0, planned.length);
        System.arraycopy(ground, 0, both, planned.length + pause, frames);
        float[] said = passage(take.samples(), from + roundTripSeconds, frames);
        add(said, both, planned.length + pause, CALL_PEAK);
        return new MonoSound(both, rate);
    }

    private float[] ground(ReviewedCall call, double from, int frames) {
        float[] ground = new float[frames];
        if (music.isPresent()) {
            add(passage(music.get().samples(), from, frames), ground, 0, GROUND_PEAK);
            return ground;
        }
        double beat = call.planned()
                .flatMap(planned -> planned.beatSeconds().isPresent()
                        ? Optional.of(planned.beatSeconds().getAsDouble())
                        : Optional.empty())
                .orElse(call.seconds());
        add(click(), ground, take.rate().framesIn(Math.max(0, beat - from)), GROUND_PEAK);
        return ground;
    }

    private float[] click() {
        float[] click = new float[take.rate().framesIn(CLICK_SECONDS)];
        for (int i = 0; i < click.length; i++) {
            double fading = 1 - (double) i / click.length;
            click[i] = (float)
                    (fading * Math.sin(2 * Math.PI * CLICK_HZ * i / take.rate().hz()));
        }
        return click;
    }

    /** A piece of a sound, silent outside of it. */
    private float[] passage(float[] samples, double fromSeconds, int frames) {
        float[] passage = new float[frames];
        int first = (int) Math.round(fromSeconds * take.rate().hz());
        for (int i = 0; i < frames; i++) {
            int at = first + i;
            passage[i] = at >= 0 && at < samples.length ? samples[at] : 0;
        }
        return passage;
    }

    private static void add(float[] what, float[] to, int at, double peak) {
        float highest = 0;
        for (float sample : what) {
            highest = Math.max(highest, Math.abs(sample));
        }
        float gain = highest > 0 ? (float) (peak / highest) : 0;
        for (int i = Math.max(0, -at); i < what.length && at + i < to.length; i++) {
            to[at + i] += gain * what[i];
        }
    }
}
