package cuelead.compose;

import java.util.ArrayList;
import java.util.List;

/**
 * Chooses the tones of chords so that each moves as little as it can (voice leading by least total movement, as
 * harmony teaching has it). Close position; the third is kept when tones must be left out.
 */
final class Voicing {
    private static final int OCTAVE = 12;
    /** Movement in semitones that is worth bearing to keep the third, or the tone that makes a seventh chord. */
    private static final int WORTH_OF_THIRD = 9;

    private static final int WORTH_OF_LAST = 3;

    private final int voices;
    private final int lowest;
    private final int highest;
    private List<Integer> held = List.of();

    /** Tones stay within {@code lowest} and {@code highest}, MIDI pitches at least two octaves apart. */
    Voicing(int voices, int lowest, int highest) {
        this.voices = voices;
        this.lowest = lowest;
        this.highest = highest;
    }

    /** The tones for the next chord, lowest first. */
    List<Integer> lead(Chord chord) {
        List<Integer> best = List.of();
        int least = Integer.MAX_VALUE;
        for (int bottom = lowest; bottom <= highest - OCTAVE; bottom++) {
            if (!isTone(chord, bottom)) {
                continue;
            }
            List<Integer> tones = stack(chord, bottom);
            int cost = movement(tones) + omissions(chord, tones);
            if (cost < least) {
                least = cost;
                best = tones;
            }
        }
        held = best;
        return best;
    }

    private List<Integer> stack(Chord chord, int bottom) {
        List<Integer> tones = new ArrayList<>();
        for (int pitch = bottom; tones.size() < voices; pitch++) {
            if (isTone(chord, pitch)) {
                tones.add(pitch);
            }
        }
        return tones;
    }

    private int movement(List<Integer> tones) {
        int middle = (lowest + highest) / 2;
        int sum = Math.abs(tones.get(tones.size() / 2) - middle) / 2;
        for (int i = 0; i < held.size(); i++) {
            sum += Math.abs(tones.get(i) - held.get(i));
        }
        return sum;
    }

    private static int omissions(Chord chord, List<Integer> tones) {
        int cost = 0;
        if (tones.stream().noneMatch(tone -> Math.floorMod(tone, OCTAVE) == chord.third())) {
            cost += WORTH_OF_THIRD;
        }
        int last = chord.intervals().get(chord.intervals().size() - 1);
        if (tones.stream().noneMatch(tone -> Math.floorMod(tone - chord.root(), OCTAVE) == last)) {
            cost += WORTH_OF_LAST;
        }
        return cost;
    }

    private static boolean isTone(Chord chord, int pitch) {
        return chord.intervals().contains(Math.floorMod(pitch - chord.root(), OCTAVE));
    }
}
