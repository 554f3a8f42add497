package cuelead.song;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The places of one sound file at which sound is missing, told in one sentence. Thread-safe. */
final class Damage {
    /** So many places are named, the others counted. */
    private static final int MOST_NAMED = 5;

    private record Hole(double fromSeconds, double seconds) {}

    private final List<Hole> holes = new ArrayList<>();

    /** Sound is missing; {@code fromFrame} may lie in front of the song. */
    synchronized void add(SampleRate rate, long fromFrame, long frames) {
        holes.add(new Hole(rate.secondsAt(Math.max(0, fromFrame)), rate.secondsAt(frames)));
        holes.sort(Comparator.comparingDouble(Hole::fromSeconds));
    }

    /** Empty when nothing is missing. */
    synchronized Optional<Problem> problem(String file) {
        if (holes.isEmpty()) {
            return Optional.empty();
        }
        double seconds = holes.stream().mapToDouble(Hole::seconds).sum();
        return Optional.of(new Problem(
                Severity.WARNING,
                "damaged",
                file,
                0,
                0,
                "The file is damaged at " + places() + ": " + Clock.length(seconds)
                        + " of sound are missing and play as silence.",
                "Copy or download it again."));
    }

    private String places() {
        List<String> places = holes.stream()
                .map(hole -> Clock.minutesSeconds(hole.fromSeconds()))
                .distinct()
                .toList();
        boolean areAllNamed = places.size() <= MOST_NAMED + 1;
        int named = areAllNamed ? places.size() - 1 : MOST_NAMED;
        String last = areAllNamed ? places.get(named) : (places.size() - named) + " more places";
        return named == 0 ? last : places.stream().limit(named).collect(Collectors.joining(", ")) + " and " + last;
    }
}
