package cuelead.compose;

import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes out a score: the form unrolled, every player's notes, the grid of beats. */
final class Arranger {
    private static final int TUNE_VELOCITY = 92;
    private static final int HARMONY_VELOCITY = 74;
    private static final int ACCENT = 14;
    private static final int BAR_START = 5;
    private static final int OCTAVE = 12;
    /** What is left of a velocity at level 0. */
    private static final double QUIETEST = 0.4;

    private static final int FULL_LEVEL = 100;
    private static final int LOUDEST_VELOCITY = 126;
    /** The kit's notes are strokes; they end by themselves. */
    private static final Beats STROKE = new Beats(Beats.TICKS_PER_BEAT / 4);

    private final Score score;
    private final int beatsPerBar;
    private final List<ScoreNote> notes = new ArrayList<>();
    private final List<Arrangement.GridBeat> beats = new ArrayList<>();
    private final List<Arrangement.Stretch> stretches = new ArrayList<>();

    private Arranger(Score score) {
        this.score = score;
        this.beatsPerBar = score.header().beatsPerBar();
    }

    static Arrangement arrange(Score score) {
        return new Arranger(score).arrange();
    }

    private Arrangement arrange() {
        Beats length = Beats.ZERO;
        for (int i = 0; i < score.form().size(); i++) {
            FormLine line = score.form().get(i);
            Passage passage = line.passage();
            BeatPosition start = BeatPosition.atBeat(beats.size());
            stretches.add(new Arrangement.Stretch(passage.name(), start, passage.beats(), line.push()));
            addBeats(passage);
            addRoles(line, start, slots(line, i));
            addDrums(line, start);
            length = start.plus(Beats.of(passage.fullBeats())).since(BeatPosition.atBeat(0));
        }
        return new Arrangement(notes, beats, stretches, length);
    }

    private void addBeats(Passage passage) {
        int counts = score.header().countsPerSection();
        int before = passage.kind() == Passage.Kind.PICKUP ? counts - passage.beats() : 0;
        for (int beat = before; beat < before + passage.beats(); beat++) {
            beats.add(new Arrangement.GridBeat(1 + beat % beatsPerBar, 1 + beat % counts));
        }
    }

    private List<Slot> slots(FormLine line, int index) {
        List<ChordSpan> chords = line.passage().chords();
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < chords.size(); i++) {
            ChordSpan span = chords.get(i);
            Chord next = i + 1 < chords.size()
                    ? chords.get(i + 1).chord()
                    : firstChordAfter(index).orElse(span.chord());
            slots.add(new Slot(span.start(), span.length(), span.chord(), next));
        }
        return slots;
    }

    private Optional<Chord> firstChordAfter(int index) {
        return score.form().stream()
                .skip(index + 1L)
                .map(line -> line.passage().chords())
                .filter(chords -> !chords.isEmpty())
                .findFirst()
                .map(chords -> chords.get(0).chord());
    }

    private void addRoles(FormLine line, BeatPosition start, List<Slot> slots) {
        Key key = score.header().key();
        for (Role role : line.roles()) {
            // patterns are sealed but Java 17 cannot switch over them
            if (role instanceof Role.Tune tune) {
                List<TuneNote> written = line.passage().voices().get(tune.voice());
                addTune(line, start, tune.player(), written, tune.octaves(), TUNE_VELOCITY);
            } else if (role instanceof Role.Harmony harmony) {
                List<TuneNote> tune = line.passage().voices().get(harmony.voice());
                List<TuneNote> second =
                        Harmony.to(tune, harmony.side(), key, line.passage().chords());
                addTune(line, start, harmony.player(), second, 0, HARMONY_VELOCITY);
            } else if (role instanceof Role.Bass bass) {
                addStrokes(line, start, bass.player(), new BassLine(key).write(bass.style(), slots));
            } else if (role instanceof Role.Comp comp) {
                int octaves = comp.player().octaves();
                addStrokes(line, start, comp.player(), new Comping(comp.style(), octaves, beatsPerBar).write(slots));
            }
        }
    }

    private void addTune(
            FormLine line, BeatPosition start, Player player, List<TuneNote> tune, int octaves, int velocity) {
        for (TuneNote note : tune) {
            boolean onBar = note.start().ticks() % Beats.of(beatsPerBar).ticks() == 0;
            int accent = (note.accented() ? ACCENT : 0) + (onBar ? BAR_START : 0);
            int pitch = note.pitch() + OCTAVE * (octaves + player.octaves());
            add(line, start, player, new Stroke(note.start(), note.length(), pitch, velocity + accent));
        }
    }

    private void addStrokes(FormLine line, BeatPosition start, Player player, List<Stroke> strokes) {
        strokes.forEach(stroke -> add(line, start, player, stroke));
    }

    private void addDrums(FormLine line, BeatPosition start) {
        Optional<Player> kit = score.band().stream()
                .filter(player -> player.instrument() == Instrument.KIT)
                .findFirst();
        if (kit.isEmpty()) {
            return;
        }
        Beats length = Beats.of(line.passage().fullBeats());
        Beats fillStart = line.fill()
                .map(fill -> length.minus(Beats.of((long) fill.bars() * beatsPerBar)))
                .orElse(length);
        line.drums().ifPresent(pattern -> addPattern(line, start, kit.get(), pattern, Beats.ZERO, fillStart));
        line.fill().ifPresent(fill -> addPattern(line, start, kit.get(), fill, fillStart, length));
        if (line.opening() == FormLine.Opening.CRASH) {
            add(line, start, kit.get(), new Stroke(Beats.ZERO, STROKE, DrumSound.CRASH.key(), 92));
        }
    }

    private void addPattern(FormLine line, BeatPosition start, Player kit, DrumPattern pattern, Beats from, Beats to) {
        Beats patternLength = Beats.of((long) pattern.bars() * beatsPerBar);
        for (Beats lap = from; lap.compareTo(to) < 0; lap = lap.plus(patternLength)) {
            for (DrumPattern.Hit hit : pattern.hits()) {
                Beats at = lap.plus(hit.at());
                if (at.compareTo(to) < 0) {
                    add(line, start, kit, new Stroke(at, STROKE, hit.sound().key(), hit.velocity()));
                }
            }
        }
    }

    private void add(FormLine line, BeatPosition start, Player player, Stroke stroke) {
        double along = stroke.start().toDecimal() / line.passage().fullBeats();
        double level = line.levelFrom() + along * (line.levelTo() - line.levelFrom());
        double scaled = stroke.velocity() * (QUIETEST + (1 - QUIETEST) * level / FULL_LEVEL);
        int velocity = (int) Math.max(1, Math.min(LOUDEST_VELOCITY, Math.round(scaled)));
        notes.add(new ScoreNote(player, start.plus(stroke.start()), stroke.length(), stroke.pitch(), velocity));
    }
}
