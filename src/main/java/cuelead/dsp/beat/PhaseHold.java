package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import cuelead.dsp.beat.PhaseRuns.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Keeps the beat at one place of the music through the whole song. A loud snare or guitar between the beats can pull a search
 * over to the off-beat for a whole section, in shuffles to the last third of the beat. Such places part the song into
 * {@link PhaseRuns runs}; those that lie where less of the music is, over all of the song, are moved to where the others
 * are, if what is struck there is more like the others when they are. After a pause of the band it is not.
 *
 * <p>That bass and bass drum tell the beat from the off-beat is common practice; compare Davies and Plumbley 2007,
 * "Context-dependent beat tracking of musical audio", section III, on holding the phase.
 */
final class PhaseHold {
    private static final double REACH_SECONDS = 0.045;
    /** What a beat counts for being where the search put it, over what bass onsets say (0 to 1). */
    private static final double NETWORK_WEIGHT = 0.5;

    private static final double HALF = 0.5;
    /**
     * A run is moved by half a beat where that leaves it hardly less like the others: by this, of how unlike it is now over
     * how unlike it is then. Less than 1, since the search is drawn to where most is struck. Of 23 such runs in 334 songs, 16
     * had .82 and more and were rightly moved, 7 had .76 and less and rightly stayed.
     */
    private static final double ALIKE_AT_HALF = 0.79;
    /** By other parts of a beat only where it is more alike, and with no less bass: hardly ever is that right. */
    private static final double ALIKE_ELSEWHERE = 1;

    private static final double LEAST_BACKING = 0.9;

    private final List<PathBeat> beats;
    private final float[][] loudness;
    private final Onsets bass;
    private final PhaseRuns runs;

    private PhaseHold(List<PathBeat> beats, float[][] loudness) {
        this.beats = beats;
        this.loudness = loudness;
        this.bass = Onsets.of(loudness, 0, Onsets.LOW_BANDS);
        this.runs = new PhaseRuns(beats);
    }

    /**
     * The beats, all at one place; those that were moved have no place in the bar (0).
     *
     * @param loudness of the song, by band, then frame
     */
    static List<PathBeat> hold(List<PathBeat> beats, float[][] loudness) {
        if (!PhaseRuns.canBeIn(beats)) {
            return beats;
        }
        PhaseHold hold = new PhaseHold(beats, loudness);
        List<Run> runs = hold.runs.all();
        return runs.size() == 1 ? beats : hold.atOnePlace(runs);
    }

    private List<PathBeat> atOnePlace(List<Run> all) {
        int right = likeliestPlace(all);
        List<StrokePattern> rightOnes = all.stream()
                .filter(run -> run.place() == right && isLong(run))
                .map(run -> StrokePattern.of(loudness, seconds(run, 0)))
                .toList();
        List<PathBeat> held = new ArrayList<>();
        for (Run run : all) {
            if (run.place() == right || isLong(run)) {
                double by = PhaseRuns.between(run.place(), right);
                boolean isMoved = by > 0 && !rightOnes.isEmpty() && isMoved(run, by, StrokePattern.ofAll(rightOnes));
                List<PathBeat> part = beats.subList(run.from(), run.to());
                append(held, isMoved ? moved(part, by) : part, runs.usualSeconds(run.from()));
            }
        }
        return held;
    }

    private static boolean isLong(Run run) {
        return run.beats() >= PhaseRuns.SHORTEST_RUN;
    }

    /** Times of a run's beats, all later by a part of a beat. */
    private double[] seconds(Run run, double part) {
        double[] seconds = new double[run.beats()];
        for (int i = 0; i < seconds.length; i++) {
            int beat = run.from() + i;
            double length = beat + 1 < run.to() ? gap(beats, beat) : runs.usualSeconds(beat);
            seconds[i] = beats.get(beat).seconds() + length * part;
        }
        return seconds;
    }

    private boolean isMoved(Run run, double by, StrokePattern others) {
        double here = StrokePattern.of(loudness, seconds(run, 0)).distance(others);
        double there = StrokePattern.of(loudness, seconds(run, by)).distance(others);
        if (by == HALF) {
            return here > ALIKE_AT_HALF * there;
        }
        return here > ALIKE_ELSEWHERE * there && bass(seconds(run, by)) >= LEAST_BACKING * bass(seconds(run, 0));
    }

    private double bass(double[] seconds) {
        double sum = 0;
        for (double at : seconds) {
            sum += bass.near(at, REACH_SECONDS);
        }
        return sum;
    }

    private int likeliestPlace(List<Run> all) {
        double[] weight = new double[PhaseRuns.PLACES];
        List<Integer> places = all.stream().map(Run::place).distinct().toList();
        for (Run run : all) {
            for (int i = run.from(); i < run.to() - 1; i++) {
                weight[run.place()] += NETWORK_WEIGHT;
                for (int place : places) {
                    double seconds = beats.get(i).seconds() + gap(beats, i) * PhaseRuns.between(run.place(), place);
                    weight[place] += bass.near(seconds, REACH_SECONDS);
                }
            }
        }
        return places.stream()
                .max(Comparator.comparingDouble(place -> weight[place]))
                .orElseThrow();
    }

    private static double gap(List<PathBeat> beats, int i) {
        return beats.get(i + 1).seconds() - beats.get(i).seconds();
    }

    private static List<PathBeat> moved(List<PathBeat> run, double part) {
        if (part == 0) {
            return run;
        }
        List<PathBeat> moved = new ArrayList<>();
        for (int i = 0; i + 1 < run.size(); i++) {
            PathBeat beat = run.get(i);
            // what the search heard spoke against this place: a user should listen here
            moved.add(new PathBeat(beat.seconds() + gap(run, i) * part, 0, beat.lengthSeconds(), 0));
        }
        return moved;
    }

    /** Appends a run; between it and what is there, evenly, as many beats as there is room for. */
    private static void append(List<PathBeat> held, List<PathBeat> run, double length) {
        if (run.isEmpty()) {
            return;
        }
        if (!held.isEmpty()) {
            PathBeat last = held.get(held.size() - 1);
            double room = run.get(0).seconds() - last.seconds();
            int steps = (int) Math.round(room / length);
            if (steps == 0) {
                held.remove(held.size() - 1);
            }
            for (int i = 1; i < steps; i++) {
                held.add(new PathBeat(last.seconds() + room * i / steps, 0, room / steps, 0));
            }
        }
        held.addAll(run);
    }
}
