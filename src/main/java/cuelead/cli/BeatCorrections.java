package cuelead.cli;

import cuelead.report.Refused;
import cuelead.song.Correction;
import cuelead.song.Hearing.Stretch;
import cuelead.time.BeatGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options by which beats are put right. */
final class BeatCorrections {
    @Option(names = "--later", description = "Count 1 comes a beat later.")
    private boolean later;

    @Option(names = "--earlier", description = "Count 1 comes a beat earlier.")
    private boolean earlier;

    @Option(names = "--half-beat", description = "The beats lie half a beat away, between those that were heard.")
    private boolean halfBeat;

    @Option(names = "--twice", description = "There are twice as many beats.")
    private boolean twice;

    @Option(names = "--half", description = "There are half as many beats.")
    private boolean half;

    @Option(names = "--two-for-three", description = "There are two beats where three were heard.")
    private boolean twoForThree;

    @Option(names = "--three-for-two", description = "There are three beats where two were heard.")
    private boolean threeForTwo;

    @Option(
            names = "--one-at",
            paramLabel = "TIME",
            converter = Values.SongTime.class,
            description = "The beat next to this time is count 1.")
    private Optional<Double> oneAt = Optional.empty();

    @Option(
            names = "--from",
            paramLabel = "TIME",
            converter = Values.SongTime.class,
            description = "Put right only from here on (seconds, or 1:02) ...")
    private Optional<Double> from = Optional.empty();

    @Option(
            names = "--to",
            paramLabel = "TIME",
            converter = Values.SongTime.class,
            description = "... or only up to here.")
    private Optional<Double> to = Optional.empty();

    /** Beats that were put right, and the comments that say how. */
    record Corrected(BeatGrid beats, List<String> comments) {
        /** After more was done. */
        Corrected and(BeatGrid other, List<String> more) {
            List<String> all = new ArrayList<>(comments);
            all.addAll(more);
            return new Corrected(other, all);
        }
    }

    boolean isAsked() {
        return !changes().isEmpty() || oneAt.isPresent();
    }

    /** Refuses a stretch without anything to put right in it. */
    void checkAsked() throws Refused {
        if ((from.isPresent() || to.isPresent()) && !isAsked()) {
            throw new Refused(
                    "--from and --to say where to put beats right; add what is wrong there, such as --half-beat.");
        }
    }

    /** Refuses a stretch that ends before it begins. */
    void checkStretch() throws Refused {
        if (from.isPresent() && to.isPresent() && to.get() <= from.get()) {
            throw new Refused("--to must come after --from.");
        }
    }

    Corrected apply(BeatGrid heard) throws Refused {
        BeatGrid beats = heard;
        List<String> comments = new ArrayList<>();
        for (Correction change : changes()) {
            beats = change.apply(beats, within());
            comments.add(change.comment(within()));
        }
        if (oneAt.isPresent()) {
            beats = Correction.oneAt(oneAt.get(), beats, within());
            comments.add(Correction.oneAtComment(oneAt.get(), within()));
        }
        return new Corrected(beats, comments);
    }

    /** Where; empty = everywhere. */
    Optional<Stretch> within() {
        return from.isEmpty() && to.isEmpty()
                ? Optional.empty()
                : Optional.of(new Stretch(from.orElse(0.0), to.orElse(Double.MAX_VALUE)));
    }

    private List<Correction> changes() {
        List<Correction> changes = new ArrayList<>();
        addIf(twice, Correction.TWICE, changes);
        addIf(half, Correction.HALF, changes);
        addIf(twoForThree, Correction.TWO_FOR_THREE, changes);
        addIf(threeForTwo, Correction.THREE_FOR_TWO, changes);
        addIf(halfBeat, Correction.HALF_BEAT, changes);
        addIf(later, Correction.COUNT_LATER, changes);
        addIf(earlier, Correction.COUNT_EARLIER, changes);
        return changes;
    }

    private static void addIf(boolean isAsked, Correction change, List<Correction> changes) {
        if (isAsked) {
            changes.add(change);
        }
    }
}
