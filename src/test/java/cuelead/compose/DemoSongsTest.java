package cuelead.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.song.BeatFile;
import cuelead.song.BeatFit;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.time.BeatGrid;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo songs are what their scores say, and their beat files fit them. */
class DemoSongsTest {
    private static final String LAMP = "lamp-on-the-quay";
    private static final String ROPE = "rope-walk-ramble";
    private static final String WALTZ = "slack-water-waltz";
    /** Lowest and highest of a tune: what a fiddle reaches in first position, and an octave more below for others. */
    private static final int LOWEST = 50;

    private static final int HIGHEST = 90;

    private static BeatGrid beatFile(String name) throws Exception {
        BeatFile.Reading reading = BeatFile.read(Scores.DEMO_SONGS.resolve(name + ".beats"));
        assertEquals(List.of(), reading.problems());
        return reading.beats().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {LAMP, ROPE, WALTZ})
    void rebuildingGivesTheSameBeatFile(String name) {
        Score score = Scores.demo(name);
        Arrangement arrangement = Arranger.arrange(score);
        String text = BeatSheet.text(score, arrangement, Performer.perform(score, arrangement));
        assertEquals(Scores.text(Scores.DEMO_SONGS.resolve(name + ".beats")), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {LAMP, ROPE, WALTZ})
    void theBeatsFitTheSong(String name) throws Exception {
        try (Song song = SongFile.open(Scores.DEMO_SONGS.resolve(name + ".mp3"), Optional.empty())) {
            double seconds = song.pcm().lengthSeconds();
            assertTrue(seconds >= 120 && seconds <= 180, "it lasts " + seconds + " s");
            assertEquals(List.of(), BeatFit.check(name, beatFile(name), seconds));
            Score score = Scores.demo(name);
            double performed = Performer.perform(score, Arranger.arrange(score)).seconds();
            assertEquals(performed, seconds, 0.001);
        }
    }

    @ParameterizedTest
    @CsvSource({
        LAMP + ", 16 32 32 32 32 32 32 32 32 8 1",
        ROPE + ", 16 32 32 16 32 32 32 32 32 32 1",
        WALTZ + ", 2 24 48 48 6 48 48 21 3"
    })
    void theFormIsWhatTheDancesNeed(String name, String beats) {
        List<Integer> expected =
                Stream.of(beats.split(" ")).map(Integer::valueOf).toList();
        List<Integer> found = Arranger.arrange(Scores.demo(name)).stretches().stream()
                .map(Arrangement.Stretch::beats)
                .toList();
        assertEquals(expected, found);
    }

    @Test
    void twoSongsKeepTheirTempoAndOneDriftsByAtMostThreePercent() throws Exception {
        assertEquals(0, drift(beatFile(LAMP), 104), 0.001);
        assertEquals(0, drift(beatFile(WALTZ), 90), 0.001);
        double drift = drift(beatFile(ROPE), 116);
        assertTrue(drift > 0.01 && drift <= 0.0305, "it drifts by " + drift);
    }

    /** The largest share by which a beat is faster or slower than the tempo; a beat file keeps tenths of ms. */
    private static double drift(BeatGrid grid, double beatsPerMinute) {
        double most = 0;
        for (int i = 1; i < grid.size(); i++) {
            double tempo = 60 / (grid.beatSeconds(i) - grid.beatSeconds(i - 1));
            most = Math.max(most, Math.abs(tempo / beatsPerMinute - 1));
        }
        return most;
    }

    @Test
    void theWaltzBeginsBeforeTheBarAndWithoutDrums() throws Exception {
        BeatGrid grid = beatFile(WALTZ);
        assertEquals(2, grid.firstDownbeat());
        assertEquals(2, grid.beatInBar(0));
        Arrangement arrangement = Arranger.arrange(Scores.demo(WALTZ));
        long firstDrum = arrangement.notes().stream()
                .filter(note -> note.player().instrument() == Instrument.KIT)
                .mapToLong(note -> note.start().beatIndex())
                .min()
                .orElseThrow();
        assertEquals(2 + 24, firstDrum);
    }

    @ParameterizedTest
    @ValueSource(strings = {LAMP, ROPE, WALTZ})
    void theLastChordIsTheKeysAndRings(String name) {
        Score score = Scores.demo(name);
        Passage last = score.form().get(score.form().size() - 1).passage();
        assertEquals(Passage.Kind.FINAL, last.kind());
        assertEquals(score.header().key().tonic(), last.chords().get(0).chord().root());
    }

    /**
     * Where a bar begins, and in common time on three, a tune rests on the chord: there at least nine in ten of its
     * notes belong to it, and none lies a semitone above one of its tones (common practice, no source).
     */
    @ParameterizedTest
    @ValueSource(strings = {LAMP, ROPE, WALTZ})
    void theTunesAgreeWithTheChords(String name) {
        Score score = Scores.demo(name);
        int strong = 0;
        int inChord = 0;
        for (FormLine line : score.form()) {
            for (List<TuneNote> tune : line.passage().voices().values()) {
                for (TuneNote note : tune) {
                    assertTrue(note.pitch() >= LOWEST && note.pitch() <= HIGHEST, note + " is out of reach");
                    Optional<Chord> chord = chordOnStrongBeat(score, line.passage(), note);
                    strong += chord.isPresent() ? 1 : 0;
                    inChord += chord.filter(c -> c.contains(note.pitch())).isPresent() ? 1 : 0;
                    assertFalse(
                            chord.filter(c -> grates(c, note.pitch())).isPresent(),
                            line.passage().name() + ": " + note + " over " + chord);
                }
            }
        }
        assertTrue(strong > 100, "only " + strong + " notes on strong beats");
        assertTrue(inChord >= 0.9 * strong, inChord + " of " + strong + " notes belong to their chords");
    }

    private static boolean grates(Chord chord, int pitch) {
        return !chord.contains(pitch) && chord.intervals().contains(Math.floorMod(pitch - 1 - chord.root(), 12));
    }

    private static Optional<Chord> chordOnStrongBeat(Score score, Passage passage, TuneNote note) {
        double inBar = note.start().toDecimal() % score.header().beatsPerBar();
        boolean isStrong = inBar == 0 || (score.header().beatsPerBar() == 4 && inBar == 2);
        return passage.chords().stream()
                .filter(span -> isStrong
                        && span.start().ticks() <= note.start().ticks()
                        && span.start().plus(span.length()).ticks()
                                > note.start().ticks())
                .map(ChordSpan::chord)
                .findFirst();
    }
}
