package cuelead.compose;

import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a tune in scale degrees: {@code 1} to {@code 7}, or {@code 0} for a rest, a beat each; {@code #}, {@code b}
 * behind the figure for a semitone up or down, {@code '} and {@code ,} for an octave; then {@code _} for half a
 * beat, {@code __} for a quarter, {@code t} for a third, {@code *} for half as much again; then a {@code -} for
 * each further beat, {@code !} for an accent. A {@code -} that stands alone holds the note before. Each bar must be
 * full.
 */
final class TuneReader {
    private static final Pattern NOTE = Pattern.compile("([0-7])([#b]?)('*|,*)(_{0,2}|t)(\\*?)(-*)(!?)");
    private static final Pattern HOLD = Pattern.compile("-(_{0,2}|t)(\\*?)(-*)");

    private final Complaints complaints;
    private final Key key;
    private final Beats barLength;
    private final List<TuneNote> notes = new ArrayList<>();
    private Beats now = Beats.ZERO;
    private Beats barStart = Beats.ZERO;
    private boolean sounding;

    TuneReader(Complaints complaints, Key key, int beatsPerBar) {
        this.complaints = complaints;
        this.key = key;
        this.barLength = Beats.of(beatsPerBar);
    }

    /** Reads on, one line of the tune. Bars must not go across lines. */
    void readLine(ScoreReader.Entry entry) {
        for (Word word : entry.value()) {
            if (word.isBarLine()) {
                endBar(word);
            } else {
                readNote(word);
            }
        }
        endBar(
                entry.value().isEmpty()
                        ? entry.key()
                        : entry.value().get(entry.value().size() - 1));
    }

    List<TuneNote> notes() {
        return List.copyOf(notes);
    }

    /** How much was read, rests too. */
    Beats length() {
        return now;
    }

    private void readNote(Word word) {
        Matcher note = NOTE.matcher(word.text());
        Matcher hold = HOLD.matcher(word.text());
        if (note.matches()) {
            Beats length = length(note.group(4), note.group(5), note.group(6));
            pitch(note)
                    .ifPresent(pitch -> notes.add(
                            new TuneNote(now, length, pitch, !note.group(7).isEmpty())));
            sounding = !note.group(1).equals("0");
            now = now.plus(length);
        } else if (hold.matches()) {
            hold(length(hold.group(1), hold.group(2), hold.group(3)));
        } else {
            complaints.at(
                    word,
                    "bad_note",
                    Complaints.quoted(word) + " is not a note.",
                    "Write a degree 1 to 7 or a rest 0, then #b ', _ t * - ! in this order.");
        }
    }

    private Optional<Integer> pitch(Matcher note) {
        int degree = Integer.parseInt(note.group(1));
        if (degree == 0) {
            return Optional.empty();
        }
        int semitones = note.group(2).equals("#") ? 1 : note.group(2).equals("b") ? -1 : 0;
        String marks = note.group(3);
        int octaves = marks.startsWith(",") ? -marks.length() : marks.length();
        return Optional.of(key.pitch(degree, semitones, octaves));
    }

    private static Beats length(String shorter, String dot, String dashes) {
        long ticks =
                switch (shorter) {
                    case "_" -> Beats.TICKS_PER_BEAT / 2;
                    case "__" -> Beats.TICKS_PER_BEAT / 4;
                    case "t" -> Beats.TICKS_PER_BEAT / 3;
                    default -> Beats.TICKS_PER_BEAT;
                };
        long dotted = dot.isEmpty() ? ticks : ticks + ticks / 2;
        return new Beats(dotted).plus(Beats.of(dashes.length()));
    }

    private void hold(Beats length) {
        if (sounding && !notes.isEmpty()) {
            int last = notes.size() - 1;
            notes.set(last, notes.get(last).heldFor(length));
        }
        now = now.plus(length);
    }

    private void endBar(Word place) {
        Beats filled = now.minus(barStart);
        if (!filled.equals(Beats.ZERO) && !filled.equals(barLength)) {
            complaints.at(
                    place,
                    "uneven_bar",
                    "The bar that ends here has " + filled.toDecimal() + " beats, not " + barLength.toDecimal() + ".",
                    "Lengthen or shorten a note of it.");
            now = barStart.plus(barLength);
        }
        barStart = now;
    }
}
