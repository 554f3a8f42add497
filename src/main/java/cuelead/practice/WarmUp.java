package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.plan.CallSettings;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import cuelead.sheet.SheetReader;
import cuelead.sound.Balance;
import cuelead.sound.Levels;
import cuelead.sound.MusicPowers;
import cuelead.time.SampleRate;
import cuelead.time.Tempo;
import cuelead.voice.Clip;
import cuelead.voice.SpeakableText;
import java.util.List;
import java.util.Optional;

/**
 * Makes a small practice that nobody hears, beside what else a start must do. A program in Java is slow where it goes for
 * the first time: most of what a start takes is loading and linking the code that reads a sheet and plans its calls. Here
 * it is met on a thread of its own while the arguments are read and the devices are opened.
 */
public final class WarmUp {
    private static final SampleRate RATE = new SampleRate(8_000);
    private static final Tempo TEMPO = new Tempo(104);
    private static final int CLIP_FRAMES = 2_000;

    /** What most sheets have: a header, sections with figures, steps with turns and feet, a tag and a restart. */
    private static final String SHEET = """
            WARM-UP
            Count: 16     Wall: 4     Level: Beginner
            Intro: 16 counts. Start with weight on left.
            Restart: on wall 3 after count 8

            [1-8] VINE RIGHT, SHUFFLE BACK, ROCK STEP
            1-2   Step right to right side, step left behind right
            3-4   Step right to right side, touch left beside right
            5&6   Shuffle back left, right, left
            7-8   Rock right back, recover onto left

            [9-16] JAZZ BOX 1/4 TURN RIGHT, WALKS, KICK
            1-2   Cross right over left, turn 1/4 right stepping left back (3:00)
            3-4   Step right to right side, step left beside right
            5-6   Walk forward right, left
            7-8   Kick right forward, step right beside left and touch left beside right

            TAG: 4 counts after wall 2
            1-4   Sway right, left, right, left

            REPEAT
            """;

    private WarmUp() {}

    /** Begins, and does not wait for it. */
    public static void begin() {
        Thread thread = new Thread(WarmUp::practise, "cuelead-warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    /** The practice that nobody hears; empty where its sheet cannot be read. */
    static Optional<Take> practise() {
        Optional<Dance> read = SheetReader.read("warm-up", SHEET).dance();
        read.ifPresent(dance -> DanceCheck.check(dance, "warm-up"));
        return read.map(WarmUp::take);
    }

    private static Take take(Dance dance) {
        CallSettings settings = CallSettings.withLead(CallSettings.DEFAULT_LEAD);
        Ground ground = Ground.overClicks(dance, TEMPO, settings);
        Timeline timeline = ground.timeline();
        TakeMaker takes = new TakeMaker(VoiceTimes.spoken(WarmUp::hummed), new MixMaker(RATE, Optional.empty()));
        Manner manner = new Manner(ground, settings, Wish.Click.SILENT, Levels.EVEN);
        Take take = takes.make(timeline, Extent.whole(timeline), manner);
        return take.with(Balance.of(take.mix(), MusicPowers.UNKNOWN));
    }

    private static Optional<Clip> hummed(String words) {
        return SpeakableText.of(words).map(text -> {
            float[] samples = new float[CLIP_FRAMES];
            for (int frame = 0; frame < samples.length; frame++) {
                samples[frame] = (float) Math.sin(frame) / 10;
            }
            return new Clip(words, RATE, samples, 0, 0.05, RATE.secondsAt(samples.length), List.of());
        });
    }
}
