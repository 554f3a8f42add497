package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.dsp.IntegratedLoudness;
import cuelead.report.Refused;
import cuelead.sound.Levels;
import cuelead.sound.MusicPowers;
import cuelead.sound.Sound;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A song that has never been opened before is heard before it is known how loud it is. */
class FirstListeningTest {
    private static final double STEP_DB = 0.5;

    @TempDir
    private Path folder;

    private Wish wish;

    @BeforeEach
    void aSong() throws Exception {
        HumSong.write(folder);
        Files.writeString(folder.resolve("dance.txt"), HumSong.TWO_SECTIONS);
        wish = Wishes.withSong(folder.resolve("dance.txt"), folder.resolve("hum.wav"));
    }

    private Practice prepared() throws Refused {
        return Practice.prepare(wish, new Places(folder.resolve("cache"), folder), Progress.UNTOLD);
    }

    @Test
    void itPlaysBeforeThatAndComesToTheSameLevels() throws Exception {
        float[] first;
        float[] second;
        try (Practice practice = prepared()) {
            practice.awaitPlayable(practice.toFrame());
            FakeSpeakers speakers = new FakeSpeakers(HumSong.RATE);
            LivePractice live = practice.live(speakers);
            practice.await(practice.toFrame());
            first = heard(live, speakers);
        }
        try (Practice again = prepared()) {
            again.await(again.toFrame());
            FakeSpeakers speakers = new FakeSpeakers(HumSong.RATE);
            second = heard(again.live(speakers), speakers);
        }
        assertEquals(loudness(second, 12, 16), loudness(first, 12, 16), 0.15);
        int soon = HumSong.RATE.framesIn(0.1) * Sound.CHANNELS;
        assertFalse(Arrays.equals(first, 0, soon, second, 0, soon), "nothing had to settle");
    }

    private static float[] heard(LivePractice live, FakeSpeakers speakers) throws Refused {
        for (int look = 0; look < 16 * 50; look++) {
            speakers.hear(0.02);
            live.tick();
            live.check();
        }
        return speakers.heard();
    }

    private static double loudness(float[] heard, int fromSecond, int toSecond) {
        int from = fromSecond * HumSong.RATE.hz() * Sound.CHANNELS;
        int length = (toSecond - fromSecond) * HumSong.RATE.hz();
        float[] piece = new float[length * Sound.CHANNELS];
        System.arraycopy(heard, from, piece, 0, piece.length);
        MusicPowers.Meter meter = new MusicPowers.Meter(HumSong.RATE);
        meter.add(piece, length);
        return IntegratedLoudness.lufs(meter.powers().whole()).orElseThrow();
    }

    @Test
    void stepsAreSmallAndKeepWhatTheUserHasChanged() throws Exception {
        Levels aim = new Levels(-4, 3, 1, 10);
        Settling settling = new Settling(() -> Optional.of(aim), new Levels(0, 2, 1, 10));
        Levels playing = new Levels(0, 2, 1, 10).voiceLouderBy(2);
        List<Levels> passed = new ArrayList<>();
        for (Optional<UnaryOperator<Levels>> step = settling.next(); step.isPresent(); step = settling.next()) {
            Levels next = step.get().apply(playing);
            assertTrue(Math.abs(next.musicDb() - playing.musicDb()) <= STEP_DB);
            assertTrue(Math.abs(next.voiceDb() - playing.voiceDb()) <= STEP_DB);
            playing = next;
            passed.add(next);
        }
        assertEquals(8, passed.size());
        assertEquals(aim.voiceLouderBy(2), playing);
    }

    @Test
    void nothingIsDoneWhileItListens() throws Exception {
        Settling settling = new Settling(Optional::empty, new Levels(0, 2, 1, 10));
        assertEquals(Optional.empty(), settling.next());
    }

    @Test
    void aSongThatCannotBeListenedToIsToldOnce() throws Exception {
        Settling settling = new Settling(
                () -> {
                    throw new Refused("silent");
                },
                new Levels(0, 2, 1, 10));
        assertEquals("silent", assertThrows(Refused.class, settling::next).getMessage());
        assertFalse(settling.next().isPresent());
    }
}
