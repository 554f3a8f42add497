package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.sound.ClickSound;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The song is a hum; clicks alone are loud, so it is heard where they fall while the speed changes. */
class LiveSpeedTest {
    private static final SampleRate RATE = HumSong.RATE;
    private static final double STEP_SECONDS = 0.02;
    private static final double SPEAKERS_HOLD_SECONDS = 0.22;

    @TempDir
    private static Path folder;

    private Practice practice;
    private FakeSpeakers speakers;
    private LivePractice live;

    @BeforeAll
    static void aSong() throws Exception {
        HumSong.write(folder);
        Files.writeString(folder.resolve("dance.txt"), HumSong.TWO_SECTIONS);
    }

    @BeforeEach
    void play() throws Exception {
        practice = practice(1);
        speakers = new FakeSpeakers(RATE);
        live = practice.live(speakers);
        live.levels(now -> now.voiceLouderBy(-60));
    }

    private static Practice practice(double speed) throws Exception {
        Wish wish = Wish.of(folder.resolve("dance.txt"))
                .song(Optional.of(folder.resolve("hum.wav")))
                .calls(CallLevel.NONE, CallSettings.Fading.STEADY)
                .click(Wish.Click.EVERY_BEAT)
                .speed(Speed.of(speed))
                .wish();
        Practice made = Practice.prepare(wish, new Places(folder.resolve("cache"), folder), (work, done) -> {});
        made.await(made.toFrame());
        return made;
    }

    @AfterEach
    void close() {
        practice.close();
    }

    private void hear(double seconds) {
        for (double passed = 0; passed < seconds; passed += STEP_SECONDS) {
            speakers.hear(STEP_SECONDS);
            live.tick();
        }
    }

    /** Frames at which a click begins: it fits best there, and well. */
    private static List<Long> clicksIn(float[] heard) {
        int length = RATE.framesIn(0.01);
        double[] fit = new double[heard.length / 2 - length];
        double most = 0;
        for (ClickSound sound : ClickSound.values()) {
            float[] click = sound.samples(RATE);
            for (int at = 0; at < fit.length; at++) {
                double sum = 0;
                for (int i = 0; i < length; i++) {
                    sum += heard[2 * (at + i)] * click[i];
                }
                fit[at] = Math.max(fit[at], sum);
                most = Math.max(most, sum);
            }
        }
        List<Long> found = new ArrayList<>();
        int apart = RATE.framesIn(0.1);
        for (int at = 0; at < fit.length; at++) {
            boolean isPeak = fit[at] > most / 4;
            for (int i = Math.max(0, at - apart); isPeak && i < Math.min(fit.length, at + apart); i++) {
                isPeak = fit[i] < fit[at] || i == at;
            }
            if (isPeak) {
                found.add((long) at);
            }
        }
        return found;
    }

    /** Between clicks as much of the song passes as between beats: the song's frames by the speed at each moment. */
    @Test
    void clicksStayOnTheBeatsWhileTheSpeedIsSwept() {
        List<Double> beatPlaces = new ArrayList<>();
        double[] speeds = {1, 0.95, 0.9, 0.8, 0.7, 0.6, 0.5, 0.55, 0.7, 0.85, 1, 1.1};
        for (double speed : speeds) {
            live.speed(Speed.of(speed));
            hear(1.3);
            Heard heard = live.heard();
            beatPlaces.add(
                    heard.timeline().grid().positionAt(heard.songSeconds()).ticks() / 960.0);
        }
        List<Long> clicks = clicksIn(speakers.heard());
        assertTrue(clicks.size() > 15, clicks.size() + " clicks");
        double shortest = HumSong.BEAT_SECONDS / 1.1;
        double longest = HumSong.BEAT_SECONDS / 0.5;
        for (int i = 1; i < clicks.size(); i++) {
            double seconds = RATE.secondsAt(clicks.get(i) - clicks.get(i - 1));
            assertTrue(seconds > shortest - 0.002 && seconds < longest + 0.002, "beat of " + seconds + " s");
        }
        // as many beats as the display has counted
        double passed = beatPlaces.get(beatPlaces.size() - 1);
        assertEquals(passed, clicks.size() - 1, 1.01);
    }

    @Test
    void theDisplayIsOnTheBeatOfTheClicks() {
        live.speed(Speed.of(0.62));
        hear(3);
        live.speed(Speed.of(0.87));
        hear(3);
        Heard heard = live.heard();
        double sinceBeat = heard.songSeconds()
                - heard.timeline()
                        .grid()
                        .secondsAt(Landing.beatUntil(heard.timeline().grid(), heard.songSeconds()));
        List<Long> clicks = clicksIn(speakers.heard());
        double since = speakers.heardSeconds() - RATE.secondsAt(clicks.get(clicks.size() - 1));
        assertEquals(since, sinceBeat, 0.002);
        assertEquals(Speed.of(0.87), live.speed());
    }

    /** From the order on: planning, what the stretcher has begun, and what these speakers hold, a block more than 0.2 s. */
    @Test
    void aChangeIsHeardSoon() {
        hear(2);
        double began = speakers.heardSeconds();
        double before = beatsHeard();
        live.speed(Speed.of(0.5));
        hear(2);
        double songSeconds = (beatsHeard() - before) * HumSong.BEAT_SECONDS;
        double atFullSpeed = 2 * songSeconds - (speakers.heardSeconds() - began);
        assertTrue(atFullSpeed < SPEAKERS_HOLD_SECONDS + 0.09, "heard after " + atFullSpeed + " s");
    }

    private double beatsHeard() {
        Heard heard = live.heard();
        return heard.timeline().grid().positionAt(heard.songSeconds()).ticks() / 960.0;
    }

    @Test
    void jumpsAndRepeatsKeepTheSpeed() {
        hear(1);
        live.speed(Speed.of(0.6));
        hear(2);
        live.jumpSections(1, jump -> {});
        hear(4);
        assertEquals(HumSong.BEAT_SECONDS / 0.6, lastBeatSeconds(), 0.002);
        live.loopSection();
        hear(3);
        live.speed(Speed.of(0.8));
        hear(4);
        assertEquals(HumSong.BEAT_SECONDS / 0.8, lastBeatSeconds(), 0.002);
        assertEquals(Heard.Repeating.A_SECTION, live.heard().repeating());
        live.pause();
        live.speed(Speed.ORIGINAL);
        live.resume();
        hear(3);
        assertEquals(HumSong.BEAT_SECONDS, lastBeatSeconds(), 0.002);
    }

    private double lastBeatSeconds() {
        List<Long> clicks = clicksIn(speakers.heard());
        return RATE.secondsAt(clicks.get(clicks.size() - 1) - clicks.get(clicks.size() - 2));
    }

    @Test
    void aPracticeAtASpeedHasItsBeatsThere() throws Exception {
        try (Practice slow = practice(0.5)) {
            assertEquals(
                    2 * practice.timeline().grid().beatSeconds(9),
                    slow.timeline().grid().beatSeconds(9),
                    1e-9);
            assertEquals(2 * RATE.secondsAt(practice.toFrame()), RATE.secondsAt(slow.toFrame()), 2);
        }
    }
}
