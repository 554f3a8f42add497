package cuelead.compose;

import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Writes the chords of one passage for one player. */
final class Comping {
    /** Where chords lie when the player's octave is 0, MIDI pitches. */
    private static final int LOWEST = 48;

    private static final int HIGHEST = 73;
    private static final int OCTAVE = 12;
    /** Between two strings of a strummed chord, ticks (about 6 ms). */
    private static final int STRING_TICKS = 10;

    private static final int[] PICKED = {0, 2, 1, 3, 2, 1, 3, 1};
    private static final int[] ROLLED = {0, 1, 2, 0, 1, 2, 0, 2, 1, 2, 0, 1, 2, 0, 2, 1};
    /** Velocity of a strum in each half beat of a bar of four; 0 = the hand passes without touching. */
    private static final int[] STRUMMED = {84, 0, 76, 58, 40, 60, 78, 58};

    private final CompStyle style;
    private final Voicing voicing;
    private final int beatsPerBar;
    private final List<Stroke> strokes = new ArrayList<>();

    Comping(CompStyle style, int octaves, int beatsPerBar) {
        this.style = style;
        this.voicing = new Voicing(style.voices(), LOWEST + OCTAVE * octaves, HIGHEST + OCTAVE * octaves);
        this.beatsPerBar = beatsPerBar;
    }

    List<Stroke> write(List<Slot> slots) {
        Chord sounding = null;
        List<Integer> tones = List.of();
        for (Slot slot : slots) {
            if (!slot.chord().equals(sounding)) {
                tones = voicing.lead(slot.chord());
                sounding = slot.chord();
            }
            writeSlot(slot, tones);
        }
        return List.copyOf(strokes);
    }

    private void writeSlot(Slot slot, List<Integer> tones) {
        switch (style) {
            case PAD -> chord(slot, 0, decimal(slot), tones, 66);
            case RING -> strummed(slot, 0, decimal(slot), tones, 84);
            case STRUM -> strum(slot, tones);
            case OFFBEATS -> offbeats(slot, tones);
            case PICK -> pick(slot, tones);
            case ROLL -> roll(slot, tones);
            case STABS -> stabs(slot, tones);
            case CHUG -> chug(slot);
        }
    }

    private void strum(Slot slot, List<Integer> tones) {
        for (int half = 0; half < 2 * decimal(slot); half++) {
            int place = (halfInBar(slot) + half) % (2 * beatsPerBar);
            int velocity = STRUMMED[place];
            boolean up = place % 2 == 1;
            if (velocity > 0) {
                strummed(slot, half / 2.0, up ? 0.45 : 0.85, up ? reversed(tones) : tones, velocity);
            }
        }
    }

    private void offbeats(Slot slot, List<Integer> tones) {
        for (int beat = 0; beat < decimal(slot); beat++) {
            int place = halfInBar(slot) / 2 + beat;
            boolean strong = beatsPerBar == 3 ? place == 0 : place % 2 == 0;
            if (!strong) {
                chord(slot, beat, 0.5, tones, place == 1 ? 76 : 68);
            }
        }
    }

    private void pick(Slot slot, List<Integer> tones) {
        for (int half = 0; half < 2 * decimal(slot); half++) {
            int velocity = half == 0 ? 84 : half % 2 == 0 ? 74 : 64;
            double untilNextChord = decimal(slot) - half / 2.0;
            note(slot, half / 2.0, Math.min(1.4, untilNextChord), tones.get(PICKED[half % PICKED.length]), velocity);
        }
    }

    private void roll(Slot slot, List<Integer> tones) {
        for (int quarter = 0; quarter < 4 * decimal(slot); quarter++) {
            int index = ROLLED[quarter % ROLLED.length];
            note(slot, quarter / 4.0, 0.4, tones.get(index), quarter % 4 == 0 ? 82 : index == 0 ? 76 : 64);
        }
    }

    private void stabs(Slot slot, List<Integer> tones) {
        double length = decimal(slot);
        chord(slot, 0, 0.6, tones, 84);
        chord(slot, 1.5, 0.4, tones, 80);
        if (length >= 4) {
            chord(slot, 2.5, 0.7, tones, 82);
        }
    }

    private void chug(Slot slot) {
        int root = LOWEST - OCTAVE + Math.floorMod(slot.chord().root() - LOWEST, OCTAVE);
        int fifth = root + Math.floorMod(slot.chord().fifth() - root, OCTAVE);
        for (int half = 0; half < 2 * decimal(slot); half++) {
            int velocity = half % 4 == 0 ? 88 : half % 2 == 0 ? 78 : 66;
            chord(slot, half / 2.0, half % 4 == 0 ? 0.48 : 0.3, List.of(root, fifth), velocity);
        }
    }

    private void strummed(Slot slot, double beat, double length, List<Integer> tones, int velocity) {
        for (int i = 0; i < tones.size(); i++) {
            Beats start = slot.start().plus(Beats.ofDecimal(beat)).plus(new Beats((long) i * STRING_TICKS));
            strokes.add(new Stroke(start, Beats.ofDecimal(length), tones.get(i), velocity));
        }
    }

    private void chord(Slot slot, double beat, double length, List<Integer> tones, int velocity) {
        tones.forEach(tone -> note(slot, beat, length, tone, velocity));
    }

    private void note(Slot slot, double beat, double length, int pitch, int velocity) {
        strokes.add(new Stroke(slot.start().plus(Beats.ofDecimal(beat)), Beats.ofDecimal(length), pitch, velocity));
    }

    /** Half beats from the beginning of the bar to the slot. */
    private int halfInBar(Slot slot) {
        return (int) (slot.start().ticks() / Beats.HALF.ticks() % (2L * beatsPerBar));
    }

    private static double decimal(Slot slot) {
        return slot.length().toDecimal();
    }

    private static List<Integer> reversed(List<Integer> tones) {
        List<Integer> reversed = new ArrayList<>(tones);
        Collections.reverse(reversed);
        return reversed;
    }
}
