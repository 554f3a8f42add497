package cuelead.practice;

import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.IntStream;

/** A quiet tone as a song of 40 seconds, with an even beat at 120 a minute from 0.5 s on, and dances for it. */
final class HumSong {
    static final SampleRate RATE = new SampleRate(22_050);
    static final double FIRST_BEAT_SECONDS = 0.5;
    static final double BEAT_SECONDS = 0.5;
    private static final double SECONDS = 40;
    private static final int BEATS = 78;

    /** Eight counts on one wall. */
    static final String ONE_SECTION = """
            HARBOUR STEPS
            Count: 8   Wall: 1   Level: Beginner
            %s
            [1-8] SIDE TOGETHER, SIDE TOUCH
            1-2   Step right to right side, step left beside right
            3-4   Step right to right side, touch left beside right
            5-6   Step left to left side, step right beside left
            7-8   Step left to left side, touch right beside left
            """;

    /** Sixteen counts on two walls. */
    static final String TWO_SECTIONS = """
            HARBOUR WALK
            Count: 16   Wall: 2   Level: Beginner
            Intro: 8 counts
            [1-8] SIDE TOGETHER, SIDE TOUCH
            1-2   Step right to right side, step left beside right
            3-4   Step right to right side, touch left beside right
            5-6   Step left to left side, step right beside left
            7-8   Step left to left side, touch right beside left
            [9-16] WALK, KICK, BACK, HALF
            1-2   Walk forward right, left
            3-4   Walk forward right, kick left forward
            5-6   Step left back, step right back
            7-8   Turn 1/2 left stepping left forward, touch right beside left (6:00)
            """;

    private HumSong() {}

    /** Writes song and beats. */
    static Path write(Path folder) throws Exception {
        Path song = folder.resolve("hum.wav");
        new WavFile().write(new Hum(), RATE, WavFormat.PCM_16, song);
        String beats = IntStream.range(0, BEATS)
                .mapToObj(beat -> String.format(
                        Locale.ROOT, "%.3f\t%d%n", FIRST_BEAT_SECONDS + beat * BEAT_SECONDS, 1 + beat % 4))
                .reduce("", String::concat);
        Files.writeString(folder.resolve("hum.beats"), beats);
        return song;
    }

    private static final class Hum implements Sound {
        private final long length = RATE.framesIn(SECONDS);
        private long frame;

        @Override
        public int read(float[] interleaved, int frames) {
            int got = (int) Math.min(frames, length - frame);
            for (int i = 0; i < got; i++, frame++) {
                float sample = (float) (0.2 * Math.sin(2 * Math.PI * 220 * frame / RATE.hz()));
                interleaved[2 * i] = sample;
                interleaved[2 * i + 1] = sample;
            }
            return Math.max(0, got);
        }
    }
}
