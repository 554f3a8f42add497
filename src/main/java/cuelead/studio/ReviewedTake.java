package cuelead.studio;

import cuelead.dsp.speech.MelBands;
import cuelead.rehearse.OnlyMusic;
import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Replay;
import cuelead.rehearse.Review;
import cuelead.rehearse.Reviewer;
import cuelead.report.Refused;
import cuelead.steer.Told;
import cuelead.time.SampleRate;
import cuelead.voice.MonoSound;
import cuelead.voice.Pronunciations;
import cuelead.voice.SynthVoice;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * A take that has been listened to.
 *
 * @param replay lets its calls be heard
 */
public record ReviewedTake(Review review, Replay replay) {
    /** A call that could hardly be made before its take ended is not asked for. */
    private static final double REACHED_SECONDS = 0.3;

    /**
     * Listens to the take in a file, and tells what is doubtful about it.
     *
     * @param calls            what was planned
     * @param music            what was heard while calling, where it is known
     * @param roundTripSeconds how much later the take is than the song
     * @param doubts           is told in sentences
     * @throws Refused when nothing can be found in it
     */
    public static ReviewedTake of(
            Path file, List<PlannedCall> calls, Optional<Path> music, double roundTripSeconds, Consumer<String> doubts)
            throws Refused {
        return of(
                new Take(file, MonoFile.read(file, Optional.of(MelBands.RATE)), roundTripSeconds),
                calls,
                music,
                doubts);
    }

    /**
     * The same of a rehearsal that may have been broken off: only of the calls that it reached.
     *
     * @return empty when it was over before the first call
     */
    public static Optional<ReviewedTake> ofRehearsal(
            Path file, List<PlannedCall> calls, Optional<Path> music, double roundTripSeconds, Consumer<String> doubts)
            throws Refused {
        Take take = new Take(file, MonoFile.read(file, Optional.of(MelBands.RATE)), roundTripSeconds);
        double reachedSeconds = take.sound().lengthSeconds() - roundTripSeconds - REACHED_SECONDS;
        List<PlannedCall> reached =
                calls.stream().filter(call -> call.seconds() < reachedSeconds).toList();
        return reached.isEmpty() ? Optional.empty() : Optional.of(of(take, reached, music, doubts));
    }

    /** A recording at the rate that it is listened to. */
    private record Take(Path file, MonoSound sound, double roundTripSeconds) {
        /** What came before it was nothing but music any more. */
        Take until(double seconds) {
            SampleRate rate = sound.rate();
            return new Take(
                    file,
                    new MonoSound(Arrays.copyOf(sound.samples(), rate.framesIn(seconds)), rate),
                    roundTripSeconds);
        }
    }

    private static ReviewedTake of(Take whole, List<PlannedCall> calls, Optional<Path> music, Consumer<String> doubts)
            throws Refused {
        Path file = whole.file();
        TakeCheck.check(file, whole.sound(), calls);
        TakeCheck.doubt(file, whole.sound()).ifPresent(doubts);
        Optional<MonoSound> played = music.isPresent()
                ? Optional.of(MonoFile.read(music.get(), Optional.of(MelBands.RATE)))
                : Optional.empty();
        OptionalDouble musicOnly =
                played.isPresent() ? OnlyMusic.fromSeconds(whole.sound(), played.get()) : OptionalDouble.empty();
        double end = musicOnly.orElse(Double.POSITIVE_INFINITY);
        List<PlannedCall> before = calls.stream()
                .filter(call -> call.seconds() + whole.roundTripSeconds() < end)
                .toList();
        if (before.isEmpty()) {
            throw new Refused(file + " holds nothing but the music: the microphone was the computer's own sound; choose"
                    + " another one (\"cuelead devices\" lists them).");
        }
        if (musicOnly.isPresent()) {
            doubts.accept(file + " holds nothing but the music from " + Told.minutes(end)
                    + " on, so the microphone was unplugged there; only what was called before is reviewed.");
        }
        Take take = musicOnly.isPresent() ? whole.until(end) : whole;
        SynthVoice voice = new SynthVoice(MelBands.RATE, Pronunciations.NONE);
        Review review = new Reviewer(voice).review(take.sound(), played, before, take.roundTripSeconds());
        return new ReviewedTake(review, new Replay(take.sound(), played, take.roundTripSeconds(), voice));
    }
}
