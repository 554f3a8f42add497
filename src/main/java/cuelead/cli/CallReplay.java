package cuelead.cli;

import cuelead.dsp.Resampler;
import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.rehearse.Replay;
import cuelead.rehearse.Review;
import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;
import java.nio.file.Path;
import java.util.Optional;

/** Lets one call of a review be heard, or writes it into a file. */
final class CallReplay {
    /** What every device can play. */
    private static final SampleRate DEVICE_RATE = new SampleRate(48_000);

    private static final long MOST_MILLIS = 30_000;

    private final Surroundings surroundings;
    private final Review review;
    private final Replay replay;

    CallReplay(Surroundings surroundings, Review review, Replay replay) {
        this.surroundings = surroundings;
        this.review = review;
        this.replay = replay;
    }

    /**
     * Plays it, or writes it.
     *
     * @param number as in the report, from 1
     * @param output empty = it is played
     * @throws Refused when there is no such call, no device, or no room
     */
    void hear(int number, Optional<Path> output) throws Refused, InterruptedException {
        if (number < 1 || number > review.calls().size()) {
            throw new Refused("There is no call " + number + " in this take; choose 1 to "
                    + review.calls().size() + ".");
        }
        MonoSound sound = replay.of(review.calls().get(number - 1));
        if (output.isPresent()) {
            new WavFile().writeMono(sound.samples(), sound.rate(), WavFormat.PCM_16, output.get());
            surroundings.err().println("Wrote " + output.get() + ": as planned, then as you said it.");
            return;
        }
        try (Speakers speakers = surroundings.devices().open(Optional.empty(), DEVICE_RATE)) {
            float[] samples = Resampler.convert(sound.samples(), sound.rate(), DEVICE_RATE);
            surroundings.err().println("As planned, then as you said it.");
            speakers.play(stereo(samples), 0);
            speakers.awaitEnd(MOST_MILLIS);
        }
    }

    private static Sound stereo(float[] mono) {
        return new Sound() {
            private int at;

            @Override
            public int read(float[] interleaved, int frames) {
                int count = Math.min(frames, mono.length - at);
                for (int i = 0; i < count; i++) {
                    interleaved[2 * i] = mono[at + i];
                    interleaved[2 * i + 1] = mono[at + i];
                }
                at += count;
                return count;
            }
        };
    }
}
