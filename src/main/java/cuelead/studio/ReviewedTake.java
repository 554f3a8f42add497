package cuelead.cli;

import cuelead.dsp.speech.MelBands;
import cuelead.rehearse.OnlyMusic;
import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Replay;
import cuelead.rehearse.Review;
import cuelead.rehearse.Reviewer;
import cuelead.report.Refused;
import cuelead.steer.Told;
import cuelead.voice.MonoSound;
import cuelead.voice.Pronunciations;
import cuelead.voice.SynthVoice;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A take that has been listened to.
 *
 * @param replay lets its calls be heard
 */
record ReviewedTake(Review review, Replay replay) {
    /**
     * Listens to the take in a file, and tells what is doubtful about it.
     *
     * @param calls            what was planned
     * @param music            what was heard while calling, where it is known
     * @param roundTripSeconds how much later the take is than the song
     * @throws Refused when nothing can be found in it
     */
    static ReviewedTake of(
            Path file,
            List<PlannedCall> calls,
            Optional<Path> music,
            double roundTripSeconds,
            Surroundings surroundings)
            throws Refused {
        MonoSound heard = MonoFile.read(file, Optional.of(MelBands.RATE));
        TakeCheck.check(file, heard, calls);
        TakeCheck.doubt(file, heard).ifPresent(surroundings.err()::println);
        SynthVoice voice = new SynthVoice(MelBands.RATE, Pronunciations.NONE);
        Optional<MonoSound> played = music.isPresent()
                ? Optional.of(MonoFile.read(music.get(), Optional.of(MelBands.RATE)))
                : Optional.empty();
        OptionalDouble musicOnly =
                played.isPresent() ? OnlyMusic.fromSeconds(heard, played.get()) : OptionalDouble.empty();
        double end = musicOnly.orElse(Double.POSITIVE_INFINITY);
        List<PlannedCall> before = calls.stream()
                .filter(call -> call.seconds() + roundTripSeconds < end)
                .toList();
        if (before.isEmpty()) {
            throw new Refused(file + " holds nothing but the music: the microphone was the computer's own sound; choose"
                    + " another one (\"cuelead devices\" lists them).");
        }
        if (musicOnly.isPresent()) {
            surroundings
                    .err()
                    .println(file + " holds nothing but the music from " + Told.minutes(end)
                            + " on, so the microphone was unplugged there; only what was called before is reviewed.");
            heard = new MonoSound(Arrays.copyOf(heard.samples(), heard.rate().framesIn(end)), heard.rate());
        }
        Review review = new Reviewer(voice).review(heard, played, before, roundTripSeconds);
        return new ReviewedTake(review, new Replay(heard, played, roundTripSeconds, voice));
    }
}
