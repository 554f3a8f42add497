package cuelead.dsp.beat;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Keeps the beat at one place of the music through the whole song. A loud snare or guitar between the beats can pull a search
 * over to the off-beat for a whole section, in shuffles to the last third of the beat: it gets there and back within a few
 * beats that are too long or too short by that much together. Such places part the song into runs; the runs that lie where
 * less of the music is, over all of the song, are moved.
 *
 * <p>That bass and bass drum tell the beat from the off-beat is common practice; compare Davies and Plumbley 2007,
 * "Context-dependent beat tracking of musical audio", section III, on holding the phase.
 */
final class PhaseHold {
    /** Beats on either side that tell how long a beat is hereabouts. */
    private static final int AROUND_BEATS = 16;
    /** A beat that is off by more than this part is on its way to the other side. */
    private static final double UNEVEN = 0.07;
    /** A way over is no longer than this. */
    private static final int LONGEST_WAY = 12;

    private static final int EVEN_BEATS = 3;
    private static final double LEAST_UNEVENNESS = 0.2;
    /** Sums of the way's deviations, as parts of a beat, that lead to another place. */
    private static final double LEAST_SHIFT = 0.25;
    /** The way over is joined by so many beats that are hardly uneven. */
    private static final int MARGIN_BEATS = 4;
    /** So many beats before and after tell how long a beat is there, while the band slows down or speeds up. */
    private static final int NEAR_BEATS = 8;

    /** Places are told apart to a sixth of a beat: halves and thirds both are sixths. */
    private static final int PLACES = 6;
    /** So uneven a way that leads back to the same place is a stumble, and even beats take its place. */
    private static final double STUMBLE = 0.8;

    /** Fewer beats at the wrong place are a stumble: even beats take their place. */
    private static final int SHORTEST_RUN = 8;

    private static final double REACH_SECONDS = 0.045;
    /** What a beat counts for being where the search put it, over what bass onsets say (0 to 1). */
    private static final double NETWORK_WEIGHT = 0.5;
    /** A run is moved where the bass is at least so strong there, as a part of what it is where the run lies. */
    private static final double LEAST_BACKING = 0.9;

    private static final double HALF = 0.5;
    /** A run without drums has so little of the cymbals of the others. */
    private static final double FEW_CYMBALS = 0.6;

    private final List<PathBeat> beats;
    private final Onsets bass;
    private final Onsets cymbals;
    private final double[] usual;

    /**
     * A run of beats at one place; beats {@code from} up to, and without, {@code to}.
     *
     * @param place in sixths of a beat after the first run's
     */
    private record Run(int from, int to, int place) {}

    private PhaseHold(List<PathBeat> beats, Onsets bass, Onsets cymbals) {
        this.beats = beats;
        this.bass = bass;
        this.cymbals = cymbals;
        this.usual = usualLengths(beats);
    }

    /** The beats, all at one place; those that were moved have no place in the bar (0). */
    static List<PathBeat> hold(List<PathBeat> beats, Onsets bass, Onsets cymbals) {
        if (beats.size() < 2 * LONGEST_WAY) {
            return beats;
        }
        PhaseHold hold = new PhaseHold(beats, bass, cymbals);
        List<Run> runs = hold.runs();
        return runs.size() == 1 ? beats : hold.atOnePlace(runs);
    }

    private static double[] usualLengths(List<PathBeat> beats) {
        double[] usual = new double[beats.size()];
        for (int i = 0; i < usual.length; i++) {
            int first = Math.max(0, i - AROUND_BEATS);
            int last = Math.min(beats.size() - 1, i + AROUND_BEATS);
            double[] lengths = new double[last - first];
            for (int j = first; j < last; j++) {
                lengths[j - first] = gap(beats, j);
            }
            Arrays.sort(lengths);
            usual[i] = lengths[lengths.length / 2];
        }
        return usual;
    }

    private static double gap(List<PathBeat> beats, int i) {
        return beats.get(i + 1).seconds() - beats.get(i).seconds();
    }

    /** How much too long the beat is, as a part of a beat. */
    private double excess(int i) {
        return gap(beats, i) / usual[i] - 1;
    }

    private List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        int from = 0;
        int place = 0;
        int i = 0;
        while (i < beats.size() - 1) {
            if (Math.abs(excess(i)) < UNEVEN) {
                i++;
                continue;
            }
            int end = endOfWay(i);
            double shift = shift(i, end);
            double unevenness = 0;
            for (int j = i; j < end; j++) {
                unevenness += Math.abs(excess(j));
            }
            boolean isInside = i >= SHORTEST_RUN && end <= beats.size() - SHORTEST_RUN;
            if (isInside && unevenness > LEAST_UNEVENNESS && end - i <= LONGEST_WAY) {
                boolean isOver = Math.abs(shift - Math.rint(shift)) > LEAST_SHIFT;
                if (isOver || unevenness > STUMBLE) {
                    runs.add(new Run(from, i + 1, place));
                    from = end;
                    place = isOver ? Math.floorMod(place + Math.round(PLACES * shift), PLACES) : place;
                }
            }
            i = end;
        }
        if (from < beats.size()) {
            runs.add(new Run(from, beats.size(), place));
        }
        return runs;
    }

    /** By how much the beats after a way lie later in the music than those before it, as a part of a beat. */
    private double shift(int from, int to) {
        int first = Math.max(0, from - MARGIN_BEATS);
        int last = Math.min(beats.size() - 1, to + MARGIN_BEATS);
        double before = middleLength(Math.max(0, first - NEAR_BEATS), first, usual[from]);
        double after = middleLength(last, Math.min(beats.size() - 1, last + NEAR_BEATS), usual[from]);
        double seconds = beats.get(last).seconds() - beats.get(first).seconds();
        return 2 * seconds / (before + after) - (last - first);
    }

    private double middleLength(int from, int to, double otherwise) {
        double[] lengths = new double[to - from];
        for (int i = from; i < to; i++) {
            lengths[i - from] = gap(beats, i);
        }
        Arrays.sort(lengths);
        return lengths.length < NEAR_BEATS / 2 ? otherwise : lengths[lengths.length / 2];
    }

    /** The first beat from which on several are even. */
    private int endOfWay(int start) {
        int even = 0;
        int i = start;
        while (i < beats.size() - 1 && even < EVEN_BEATS) {
            even = Math.abs(excess(i)) < UNEVEN ? even + 1 : 0;
            i++;
        }
        return i - even;
    }

    private List<PathBeat> atOnePlace(List<Run> runs) {
        int right = likeliestPlace(runs);
        List<PathBeat> held = new ArrayList<>();
        for (Run run : runs) {
            List<PathBeat> part = beats.subList(run.from(), run.to());
            if (run.place() == right || part.size() >= SHORTEST_RUN) {
                double by = between(run.place(), right);
                boolean isMoved = isBacked(run, by) || (by == HALF && isWithoutDrums(run, runs, right));
                append(held, isMoved ? moved(part, by) : part, usual[run.from()]);
            }
        }
        return held;
    }

    /**
     * Whether a run half a beat away is a section without drums in which all play between the beats: what bass there is
     * then lies there, too.
     */
    private boolean isWithoutDrums(Run run, List<Run> runs, int right) {
        double cymbalsThere = 0;
        int beatsThere = 0;
        for (Run other : runs) {
            if (other.place() == right) {
                cymbalsThere += cymbals(other);
                beatsThere += other.to() - other.from();
            }
        }
        int beatsHere = run.to() - run.from();
        return beatsThere > beatsHere && cymbals(run) / beatsHere < FEW_CYMBALS * cymbalsThere / beatsThere;
    }

    private double cymbals(Run run) {
        double sum = 0;
        for (int i = run.from(); i < run.to(); i++) {
            sum += cymbals.near(beats.get(i).seconds(), REACH_SECONDS);
        }
        return sum;
    }

    /** Whether the bass does not speak against moving a run; a way may only look as if it led elsewhere. */
    private boolean isBacked(Run run, double part) {
        double here = 0;
        double there = 0;
        for (int i = run.from(); i < run.to() - 1; i++) {
            here += bass.near(beats.get(i).seconds(), REACH_SECONDS);
            there += bass.near(beats.get(i).seconds() + gap(beats, i) * part, REACH_SECONDS);
        }
        return there >= LEAST_BACKING * here;
    }

    private int likeliestPlace(List<Run> runs) {
        double[] weight = new double[PLACES];
        List<Integer> places = runs.stream().map(Run::place).distinct().toList();
        for (Run run : runs) {
            for (int i = run.from(); i < run.to() - 1; i++) {
                weight[run.place()] += NETWORK_WEIGHT;
                for (int place : places) {
                    double seconds = beats.get(i).seconds() + gap(beats, i) * between(run.place(), place);
                    weight[place] += bass.near(seconds, REACH_SECONDS);
                }
            }
        }
        return places.stream()
                .max(Comparator.comparingDouble(place -> weight[place]))
                .orElseThrow();
    }

    /** From one place to the next such place, as a part of a beat. */
    private static double between(int from, int to) {
        return (double) Math.floorMod(to - from, PLACES) / PLACES;
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
