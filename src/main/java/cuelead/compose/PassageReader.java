package cuelead.compose;

import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads {@code [passage NAME]}: a {@code chords} line, or several that go on, and any number of tunes, each under
 * a name of its own; {@code pickup: N} or {@code final: N} for a passage of N beats that is not whole bars.
 */
final class PassageReader {
    private final Complaints complaints;
    private final Score.Header header;
    private final List<ChordSpan> chords = new ArrayList<>();
    private final Map<String, TuneReader> voices = new LinkedHashMap<>();
    private Passage.Kind kind = Passage.Kind.BARS;
    private int partBeats;
    private int chordBars;

    PassageReader(Complaints complaints, Score.Header header) {
        this.complaints = complaints;
        this.header = header;
    }

    Optional<Passage> read(Word name, List<ScoreReader.Entry> entries) {
        for (ScoreReader.Entry entry : entries) {
            switch (entry.key().text()) {
                case "chords" -> readChords(entry);
                case "pickup" -> readPart(entry, Passage.Kind.PICKUP);
                case "final" -> readPart(entry, Passage.Kind.FINAL);
                default -> voice(entry.key().text()).readLine(entry);
            }
        }
        int fullBeats = kind == Passage.Kind.PICKUP ? partBeats : chordBars * header.beatsPerBar();
        if (fullBeats == 0 || (kind == Passage.Kind.FINAL && chordBars != 1)) {
            complaints.at(
                    name,
                    "no_chords",
                    "The passage \"" + name.text() + "\" needs chords for its length (a final passage for one bar).",
                    "Add a line such as \"chords: G | C | D | G\".");
            return Optional.empty();
        }
        Map<String, List<TuneNote>> tunes = new LinkedHashMap<>();
        voices.forEach((voice, reader) -> {
            checkLength(name, voice, reader.length(), fullBeats);
            tunes.put(voice, reader.notes());
        });
        int beats = kind == Passage.Kind.BARS ? fullBeats : partBeats;
        return Optional.of(new Passage(name.text(), kind, beats, fullBeats, chords, tunes));
    }

    private TuneReader voice(String name) {
        int barBeats = kind == Passage.Kind.PICKUP ? partBeats : header.beatsPerBar();
        return voices.computeIfAbsent(name, any -> new TuneReader(complaints, header.key(), barBeats));
    }

    private void readPart(ScoreReader.Entry entry, Passage.Kind partKind) {
        Settings settings = new Settings(complaints, List.of(), List.of());
        partBeats = settings.whole(entry.place(), 1, header.beatsPerBar());
        kind = partKind;
    }

    private void checkLength(Word place, String voice, Beats length, int fullBeats) {
        if (!length.equals(Beats.of(fullBeats))) {
            complaints.at(
                    place,
                    "uneven_voice",
                    "The tune \"" + voice + "\" lasts " + length.toDecimal() + " beats, its passage \"" + place.text()
                            + "\" " + fullBeats + ".",
                    "Write as many bars of tune as of chords.");
        }
    }

    private void readChords(ScoreReader.Entry entry) {
        List<Word> bar = new ArrayList<>();
        for (Word word : entry.value()) {
            if (word.isBarLine()) {
                endBar(bar, word);
                bar.clear();
            } else {
                bar.add(word);
            }
        }
        if (!bar.isEmpty() || entry.value().isEmpty()) {
            endBar(bar, entry.place());
        }
    }

    private void endBar(List<Word> bar, Word place) {
        int size = bar.size();
        long barTicks = header.beatsPerBar() * Beats.TICKS_PER_BEAT;
        if (size == 0 || size > header.beatsPerBar()) {
            complaints.at(
                    place,
                    "bad_bar",
                    "A bar has " + size + " chords.",
                    "Write one to " + header.beatsPerBar() + ", and . to repeat the one before.");
            return;
        }
        Beats start = Beats.of((long) chordBars * header.beatsPerBar());
        Beats length = new Beats(barTicks / size);
        for (int i = 0; i < size; i++) {
            addChord(bar.get(i), start.plus(length.times(i)), length, i);
        }
        chordBars++;
    }

    private void addChord(Word word, Beats start, Beats length, int placeInBar) {
        ChordSpan last = chords.isEmpty() ? null : chords.get(chords.size() - 1);
        Optional<Chord> chord =
                word.text().equals(".") ? Optional.ofNullable(last).map(ChordSpan::chord) : Chord.parse(word.text());
        if (chord.isEmpty()) {
            complaints.at(
                    word,
                    "bad_chord",
                    Complaints.quoted(word) + " is not a chord here.",
                    "Write for example G, Am7, D7sus4 or C/E.");
        } else if (last != null && placeInBar > 0 && last.chord().equals(chord.get())) {
            chords.set(
                    chords.size() - 1, new ChordSpan(last.start(), last.length().plus(length), last.chord()));
        } else {
            chords.add(new ChordSpan(start, length, chord.get()));
        }
    }
}
