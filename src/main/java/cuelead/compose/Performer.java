package cuelead.compose;

import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Plays an arrangement: the tempo curve, the swing, and the small unevenness of people. The beats of the grid stay
 * where the tempo curve puts them; only notes stray.
 */
final class Performer {
    /** Before the first beat, so that slow attacks can begin early. */
    static final double LEAD_IN_SECONDS = 0.25;
    /** After the last note is let go, for strings and room to die away. */
    private static final double TAIL_SECONDS = 2.5;

    /** A note is let go this much of its length after its start. */
    private static final double HELD = 0.94;
    /** The least time between the end of a note and the next one on the same string or key. */
    private static final double GAP_SECONDS = 0.012;

    private static final double SHORTEST_SECONDS = 0.03;
    private static final int VELOCITY_SPREAD = 4;
    private static final double KIT_SHARE = 0.35;
    private static final double BASS_SHARE = 0.5;
    private static final int BASS_BELOW = 46;

    private final Score.Header header;
    private final TempoCurve curve;
    private final Map<String, Random> hands = new HashMap<>();

    private Performer(Score.Header header, TempoCurve curve) {
        this.header = header;
        this.curve = curve;
    }

    static Performance perform(Score score, Arrangement arrangement) {
        TempoCurve curve = TempoCurve.of(score.header(), arrangement);
        return new Performer(score.header(), curve).perform(arrangement);
    }

    private Performance perform(Arrangement arrangement) {
        List<Double> beats = new ArrayList<>();
        for (int i = 0; i < arrangement.beats().size(); i++) {
            beats.add(LEAD_IN_SECONDS + curve.secondsOfBeat(i));
        }
        List<Performance.SoundedNote> notes = new ArrayList<>();
        arrangement.notes().forEach(note -> notes.add(play(note)));
        notes.sort(Comparator.comparingDouble(Performance.SoundedNote::startSeconds));
        double end = seconds(BeatPosition.atBeat(0).plus(arrangement.length()));
        return new Performance(beats, withoutOverlaps(notes), end + TAIL_SECONDS);
    }

    private Performance.SoundedNote play(ScoreNote note) {
        Random hand =
                hands.computeIfAbsent(note.player().name(), name -> new Random(header.seed() * 31 + name.hashCode()));
        double stray = header.humanSeconds() * share(note) * (hand.nextDouble() + hand.nextDouble() - 1);
        int spread = (int) Math.round(VELOCITY_SPREAD * (2 * hand.nextDouble() - 1));
        double start = seconds(note.start()) + stray;
        double end = seconds(note.start().plus(note.length()));
        double held = Math.max(SHORTEST_SECONDS, HELD * (end - start));
        int velocity = Math.max(1, Math.min(127, note.velocity() + spread));
        return new Performance.SoundedNote(note.player(), start, start + held, note.pitch(), velocity);
    }

    /** Drummers and bass players keep closer time than the rest. */
    private static double share(ScoreNote note) {
        if (note.player().instrument() == Instrument.KIT) {
            return KIT_SHARE;
        }
        return note.pitch() < BASS_BELOW ? BASS_SHARE : 1;
    }

    private double seconds(BeatPosition position) {
        return LEAD_IN_SECONDS + curve.secondsAt(swung(position));
    }

    /** Moves the middle of the beat to where the swing has it, and all between in proportion. */
    private BeatPosition swung(BeatPosition position) {
        BeatPosition beat = BeatPosition.atBeat(position.beatIndex());
        double within = position.since(beat).toDecimal();
        double swing = header.swing();
        double moved = within < 0.5 ? within * 2 * swing : swing + (within - 0.5) * 2 * (1 - swing);
        return beat.plus(Beats.ofDecimal(moved));
    }

    /** Ends a note before the same player strikes the same key again. */
    private static List<Performance.SoundedNote> withoutOverlaps(List<Performance.SoundedNote> notes) {
        Map<String, Integer> lastOnKey = new HashMap<>();
        List<Performance.SoundedNote> cut = new ArrayList<>(notes);
        for (int i = 0; i < notes.size(); i++) {
            Performance.SoundedNote note = notes.get(i);
            Integer before = lastOnKey.put(note.player().name() + ' ' + note.pitch(), i);
            if (before != null) {
                cut.set(before, endingBefore(cut.get(before), note.startSeconds() - GAP_SECONDS));
            }
        }
        return cut;
    }

    private static Performance.SoundedNote endingBefore(Performance.SoundedNote note, double latest) {
        double end = Math.max(note.startSeconds() + GAP_SECONDS / 2, Math.min(note.endSeconds(), latest));
        return new Performance.SoundedNote(note.player(), note.startSeconds(), end, note.pitch(), note.velocity());
    }
}
