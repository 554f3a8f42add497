package cuelead.compose;

import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;

/** Writes the bass of one passage; remembers where the hand is, so that the line moves by small steps. */
final class BassLine {
    private static final int LOWEST = 28;
    private static final int HIGHEST = 45;
    private static final int HOME = 36;
    private static final int OCTAVE = 12;
    private static final int STRONG = 98;
    private static final int PLAIN = 88;
    private static final int LIGHT = 76;

    private final Key key;
    private final List<Stroke> strokes = new ArrayList<>();
    private int hand = HOME;
    private boolean onFifth;

    BassLine(Key key) {
        this.key = key;
    }

    List<Stroke> write(BassStyle style, List<Slot> slots) {
        for (Slot slot : slots) {
            switch (style) {
                case HOLD -> play(slot, 0, decimal(slot), root(slot), STRONG);
                case TWO -> two(slot);
                case WALK -> walk(slot);
                case WALTZ -> waltz(slot);
                case PUSHED -> pushed(slot);
                case DRIVE -> drive(slot);
            }
        }
        return List.copyOf(strokes);
    }

    private void two(Slot slot) {
        double length = decimal(slot);
        int root = root(slot);
        for (double beat = 0; beat < length; beat += 2) {
            boolean last = beat + 2 >= length;
            boolean leads = last && slot.changes() && length > 2;
            int pitch = beat == 0 ? root : below(root, slot.chord().fifth());
            play(slot, beat, leads ? 0.95 : Math.min(1.6, length - beat), pitch, beat == 0 ? STRONG : PLAIN);
            if (leads) {
                play(slot, beat + 1, 0.95, approach(pitch, slot.next()), LIGHT);
            }
        }
    }

    private void walk(Slot slot) {
        double length = decimal(slot);
        int root = root(slot);
        int[] tones = {
            root, above(root, slot.chord().third()), above(root, slot.chord().fifth()), root + OCTAVE
        };
        for (int beat = 0; beat < length; beat++) {
            boolean leads = beat > 0 && beat + 1 >= length;
            int pitch = leads ? approach(hand, slot.next()) : tones[beat % tones.length];
            play(slot, beat, 0.92, pitch, beat % 2 == 0 ? STRONG : PLAIN);
        }
    }

    private void waltz(Slot slot) {
        double length = decimal(slot);
        int root = root(slot);
        int pitch = onFifth ? below(root, slot.chord().fifth()) : root;
        boolean leads = slot.changes() && length >= 3;
        play(slot, 0, leads ? 1.9 : Math.min(2.4, length), pitch, STRONG);
        if (leads) {
            play(slot, 2, 0.9, approach(pitch, slot.next()), LIGHT);
        }
        onFifth = !slot.changes() && !onFifth;
    }

    private void pushed(Slot slot) {
        double length = decimal(slot);
        int root = root(slot);
        int fifth = below(root, slot.chord().fifth());
        for (double beat = 0; beat < length; beat += 2) {
            int pitch = beat == 0 ? root : fifth;
            play(slot, beat, 1.2, pitch, beat == 0 ? STRONG : PLAIN);
            boolean leads = beat + 2 >= length && slot.changes();
            play(slot, beat + 1.5, 0.45, leads ? approach(pitch, slot.next()) : pitch, LIGHT);
        }
    }

    private void drive(Slot slot) {
        double length = decimal(slot);
        int root = root(slot);
        for (double beat = 0; beat < length; beat += 0.5) {
            boolean leads = beat + 0.5 >= length && slot.changes();
            boolean lifted = beat % 4 == 1.5 || beat % 4 == 3.5;
            int pitch = leads ? approach(root, slot.next()) : lifted ? root + OCTAVE : root;
            play(slot, beat, 0.42, pitch, beat % 2 == 0 ? STRONG : LIGHT);
        }
    }

    private void play(Slot slot, double beat, double length, int pitch, int velocity) {
        hand = pitch;
        strokes.add(new Stroke(slot.start().plus(Beats.ofDecimal(beat)), Beats.ofDecimal(length), pitch, velocity));
    }

    private static double decimal(Slot slot) {
        return slot.length().toDecimal();
    }

    /** The chord's bass where it is nearest to the hand. */
    private int root(Slot slot) {
        return nearest(slot.chord().bass(), (hand + HOME) / 2);
    }

    private static int nearest(int pitchClass, int to) {
        int best = LOWEST + Math.floorMod(pitchClass - LOWEST, OCTAVE);
        for (int pitch = best; pitch <= HIGHEST; pitch += OCTAVE) {
            if (Math.abs(pitch - to) < Math.abs(best - to)) {
                best = pitch;
            }
        }
        return best;
    }

    private static int above(int pitch, int pitchClass) {
        return pitch + Math.floorMod(pitchClass - pitch, OCTAVE);
    }

    /** The tone below, or above where the instrument has no such low note. */
    private static int below(int pitch, int pitchClass) {
        int found = pitch - Math.floorMod(pitch - pitchClass, OCTAVE);
        return found >= LOWEST ? found : found + OCTAVE;
    }

    /** The note of the scale next to the coming root, on the side from which the line comes. */
    private int approach(int from, Chord next) {
        int target = nearest(next.bass(), (from + HOME) / 2);
        int direction = from <= target ? -1 : 1;
        int step = key.neighbour(target, direction);
        return step >= LOWEST ? step : key.neighbour(target, 1);
    }
}
