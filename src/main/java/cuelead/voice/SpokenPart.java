package cuelead.voice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds the spoken words in a recording: sound over the room's noise, without the tap on the button before it or the
 * breath behind it. Works on blocks of 10 ms.
 */
final class SpokenPart {
    private static final double BLOCK_SECONDS = 0.010;
    /** Quieter recordings hold no voice: 50 dB below full scale. */
    private static final double QUIETEST_RMS = 0.003;
    /** The noise is what all but this part of the recording exceeds. */
    private static final double NOISE_PART = 0.05;

    private static final double ABOVE_NOISE = 2;
    private static final double BELOW_LOUDEST = 0.01;
    private static final double NEVER_CUT_ABOVE = 0.2;
    /** A longer silence parts a word from what is not of it; the stop in the middle of a word is at most 0.15 s. */
    private static final double PARTING_SECONDS = 0.2;
    /** A shorter sound that stands alone is no word. */
    private static final double SHORTEST_SECONDS = 0.06;
    /** A sound that stands alone with less than this part of the strongest one's energy is no word (16 dB). */
    private static final double WEAKEST_PART = 0.025;

    private final double[] powers;
    private final double noiseRms;

    /** From one block to behind another. */
    private record Run(int start, int end, double energy) {}

    private SpokenPart(double[] powers) {
        this.powers = powers;
        this.noiseRms = Math.sqrt(noisePower(powers));
    }

    /** Power of the quietest blocks; 0 where they do not last, as in a word that was already cut out. */
    private static double noisePower(double[] powers) {
        double[] sorted = powers.clone();
        Arrays.sort(sorted);
        double quiet = sorted[(int) (NOISE_PART * sorted.length)];
        int lasting = 0;
        while (lasting < sorted.length && sorted[lasting] <= quiet * ABOVE_NOISE * ABOVE_NOISE) {
            lasting++;
        }
        return lasting * BLOCK_SECONDS < PARTING_SECONDS ? 0 : quiet;
    }

    /** Where words are heard, edges exact to the frame; empty when none are. */
    static Optional<AudibleSpan> of(MonoSound sound) {
        int block = sound.rate().framesIn(BLOCK_SECONDS);
        double[] powers = new double[sound.frames() / block];
        double loudest = 0;
        for (int i = 0; i < powers.length; i++) {
            for (int frame = i * block; frame < (i + 1) * block; frame++) {
                powers[i] += (double) sound.samples()[frame] * sound.samples()[frame] / block;
            }
            loudest = Math.max(loudest, powers[i]);
        }
        if (Math.sqrt(loudest) < QUIETEST_RMS) {
            return Optional.empty();
        }
        return new SpokenPart(powers).words(Math.sqrt(loudest), sound, block);
    }

    private Optional<AudibleSpan> words(double loudestRms, MonoSound sound, int block) {
        double threshold =
                Math.max(loudestRms * BELOW_LOUDEST, Math.min(noiseRms * ABOVE_NOISE, loudestRms * NEVER_CUT_ABOVE));
        List<Run> runs = runs(threshold * threshold);
        double strongest = runs.stream().mapToDouble(Run::energy).max().orElse(0);
        runs.removeIf(run ->
                (run.end - run.start) * BLOCK_SECONDS < SHORTEST_SECONDS || run.energy < WEAKEST_PART * strongest);
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        int start = Math.max(0, (runs.get(0).start - 1) * block);
        int end = Math.min(sound.frames(), (runs.get(runs.size() - 1).end + 1) * block);
        float[] words = Arrays.copyOfRange(sound.samples(), start, end);
        return AudibleSpan.of(new MonoSound(words, sound.rate()), noiseRms)
                .map(span -> new AudibleSpan(start + span.startFrame(), start + span.endFrame()));
    }

    /** Blocks above a power, those with a shorter pause than the parting one taken together. */
    private List<Run> runs(double threshold) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < powers.length; i++) {
            if (powers[i] <= threshold) {
                continue;
            }
            Run last = runs.isEmpty() ? new Run(i, i, 0) : runs.get(runs.size() - 1);
            boolean goesOn = !runs.isEmpty() && (i - last.end) * BLOCK_SECONDS <= PARTING_SECONDS;
            if (goesOn) {
                runs.set(runs.size() - 1, new Run(last.start, i + 1, last.energy + powers[i]));
            } else {
                runs.add(new Run(i, i + 1, powers[i]));
            }
        }
        return runs;
    }
}
