package cuelead.voice;

import java.util.Optional;

/**
 * Whether a take can be used, and what to do better.
 *
 * @param mark  where the word is felt; empty when none is heard
 * @param fault what is wrong with it
 */
public record TakeVerdict(Optional<Mark> mark, Fault fault) {
    /** Quieter than 50 dB below full scale, nothing is understood as a voice. */
    private static final double SILENT_RMS = 0.003;

    private static final double QUIET_RMS = 0.01;
    private static final double FULL_SCALE = 0.999;
    /** So many samples in a row at full scale are flat, not a peak. */
    private static final int CLIPPED_RUN = 3;
    /** 12 dB: below it consonants drown. */
    private static final double NOISY_RATIO = 4;

    private static final double EDGE_SECONDS = 0.03;

    /** What can be wrong, worst first. */
    public enum Fault {
        DEAD(Use.NONE, "The microphone gives nothing at all: it may be muted, or the system may not allow its use."),
        SILENT(Use.NONE, "No word is heard. Speak after the last click, closer to the microphone."),
        CUT_OFF(Use.NONE, "The word is cut off. Wait for the last click, then say it at once."),
        CLIPPED(Use.DOUBTFUL, "Too loud, so it crackles. Turn the microphone down, or step back a little."),
        TOO_QUIET(Use.DOUBTFUL, "Very quiet. Go closer, or turn the microphone up."),
        NOISY(Use.DOUBTFUL, "The room is nearly as loud as the word. Close the window, or go closer."),
        NONE(Use.GOOD, "Good.");

        private final Use use;
        private final String sentence;

        Fault(Use use, String sentence) {
            this.use = use;
            this.sentence = sentence;
        }

        public Use use() {
            return use;
        }

        /** In words that help. */
        public String sentence() {
            return sentence;
        }
    }

    /** How far a take can be used. */
    public enum Use {
        GOOD,
        /** It can be heard, but another would be better. */
        DOUBTFUL,
        NONE
    }

    /** Judges a take of some words. */
    public static TakeVerdict of(MonoSound take, String text) {
        MonoSound clean = Rumble.removed(take);
        double loudest = AudibleSpan.loudestRms(clean);
        if (peak(take) == 0) {
            return new TakeVerdict(Optional.empty(), Fault.DEAD);
        }
        Optional<WordInTake> word = loudest < SILENT_RMS ? Optional.empty() : WordInTake.of(clean, text);
        if (word.isEmpty() || word.get().syllable().isEmpty()) {
            return new TakeVerdict(Optional.empty(), Fault.SILENT);
        }
        Mark mark = new Mark(word.get().centreSeconds(clean), take.lengthSeconds(), Mark.By.HEARING);
        return new TakeVerdict(Optional.of(mark), fault(take, clean, word.get(), loudest));
    }

    private static Fault fault(MonoSound take, MonoSound clean, WordInTake word, double loudest) {
        int edge = take.rate().framesIn(EDGE_SECONDS);
        if (word.span().startFrame() < edge || word.span().endFrame() > take.frames() - edge) {
            return Fault.CUT_OFF;
        }
        if (isClipped(take, word.span())) {
            return Fault.CLIPPED;
        }
        if (loudest < QUIET_RMS) {
            return Fault.TOO_QUIET;
        }
        return loudest < NOISY_RATIO * noiseRms(clean, word.span()) ? Fault.NOISY : Fault.NONE;
    }

    private static boolean isClipped(MonoSound take, AudibleSpan span) {
        int run = 0;
        for (int i = span.startFrame(); i < span.endFrame(); i++) {
            run = Math.abs(take.samples()[i]) >= FULL_SCALE ? run + 1 : 0;
            if (run >= CLIPPED_RUN) {
                return true;
            }
        }
        return false;
    }

    /** What is heard outside of the word. */
    private static double noiseRms(MonoSound clean, AudibleSpan span) {
        double sum = 0;
        int frames = 0;
        for (int i = 0; i < clean.frames(); i++) {
            if (i < span.startFrame() || i >= span.endFrame()) {
                sum += (double) clean.samples()[i] * clean.samples()[i];
                frames++;
            }
        }
        return frames == 0 ? 0 : Math.sqrt(sum / frames);
    }

    private static double peak(MonoSound take) {
        double peak = 0;
        for (float sample : take.samples()) {
            peak = Math.max(peak, Math.abs(sample));
        }
        return peak;
    }
}
