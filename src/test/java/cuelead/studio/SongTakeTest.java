package cuelead.studio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.output.GrowingTake;
import cuelead.report.Refused;
import cuelead.song.SongFile;
import cuelead.sound.Microphone;
import cuelead.sound.Staged;
import cuelead.time.SampleRate;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SongTakeTest {
    private static final SampleRate RATE = new SampleRate(8_000);
    private static final double LOOK_SECONDS = 0.02;

    @TempDir
    private Path folder;

    private long nanos;
    private final FakeSpeakers speakers = new FakeSpeakers(RATE);
    private final Clocked microphone = new Clocked();
    private final MicrophoneLine line = new MicrophoneLine(microphone, speakers, () -> nanos);

    /** Gives frames as time passes, whatever the speakers do; each is louder the later it comes. */
    private static final class Clocked implements Microphone {
        private int frame;
        private int waiting;
        private boolean isLost;

        void hear(double seconds) {
            waiting += RATE.framesIn(seconds);
        }

        @Override
        public SampleRate rate() {
            return RATE;
        }

        @Override
        public float[] read() {
            float[] heard = new float[waiting];
            for (int i = 0; i < heard.length; i++) {
                heard[i] = frame / 200_000f;
                frame++;
            }
            waiting = 0;
            return heard;
        }

        @Override
        public boolean isLost() {
            return isLost;
        }

        @Override
        public void close() {}
    }

    @BeforeEach
    void play() {
        speakers.play(new Staged(), 0);
    }

    private void pass(double seconds) {
        speakers.hear(seconds);
        microphone.hear(seconds);
        nanos += (long) (seconds * TimeUnit.SECONDS.toNanos(1));
    }

    private void record(SongTake take, double seconds) throws Refused {
        for (double left = seconds; left > LOOK_SECONDS / 2; left -= LOOK_SECONDS) {
            pass(LOOK_SECONDS);
            if (speakers.isDeviceLost()) {
                take.broken();
            }
            take.add(line.listen());
        }
    }

    private SongTake begin(Path file) throws Refused {
        microphone.hear(0.5); // it was opened before the speakers
        for (int i = 0; i < 50; i++) {
            pass(LOOK_SECONDS);
            line.listen();
        }
        double offset = line.offsetFrames();
        assertEquals(4_000, offset, 1e-9);
        RoundTrip roundTrip = new RoundTrip(0.1, OptionalDouble.of(offset + 800));
        return new SongTake(GrowingTake.begin(file, RATE, 0.1), line, roundTrip, 8_000, offset);
    }

    private static float[] samples(Path file) throws Exception {
        return SongFile.readAll(file).monoSamples();
    }

    private static void assertFrame(float[] samples, int songFrame, int microphoneFrame) {
        assertEquals(microphoneFrame / 200_000f, samples[songFrame], 1e-4f, "frame " + songFrame);
    }

    @Test
    void everyFrameLiesWhereItsSongFrameDoes() throws Exception {
        Path file = folder.resolve("take.wav");
        try (SongTake take = begin(file)) {
            record(take, 3);
            assertEquals(3, take.seconds(), 0.001);
            assertEquals(0.1, take.roundTripSeconds(), 1e-9);
        }
        float[] samples = samples(file);
        assertFrame(samples, 0, 12_000);
        assertFrame(samples, 20_000, 32_000);
    }

    @Test
    void whatIsHeardWhileTheSongStandsStillIsLeftOut() throws Exception {
        Path file = folder.resolve("take.wav");
        try (SongTake take = begin(file)) {
            record(take, 2);
            speakers.lose();
            record(take, 1);
            speakers.comeBack();
            record(take, 4);
            assertEquals(6, take.seconds(), 0.03);
            assertEquals(0.1, take.roundTripSeconds(), 1e-9);
        }
        float[] samples = samples(file);
        assertFrame(samples, 10_000, 22_000);
        assertFrame(samples, 20_000, 40_000);
        assertFrame(samples, 45_000, 65_000);
    }

    @Test
    void theRoundTripOfAnotherDayFollowsTheClocks() {
        RoundTrip kept = RoundTrip.of(0.1);
        assertEquals(0.1, kept.of(4_000, 4_000, RATE), 1e-9);
        assertEquals(0.11, kept.of(4_000, 4_080, RATE), 1e-9);
    }

    @Test
    void aMicrophoneThatGivesNothingOrIsGoneIsToldInASentence() throws Exception {
        nanos += TimeUnit.SECONDS.toNanos(7);
        assertTrue(assertThrows(Refused.class, line::listen).getMessage().startsWith("The microphone gives no sound"));
        microphone.isLost = true;
        assertTrue(assertThrows(Refused.class, line::listen).getMessage().startsWith("The microphone is gone"));
    }
}
