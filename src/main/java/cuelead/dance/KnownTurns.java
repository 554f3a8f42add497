package cuelead.dance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Sums of turns, as far as they are known: a line that could not be read may turn by any amount, but a clock mark
 * behind it settles how far.
 */
final class KnownTurns {
    private static final Counts END = Counts.of(Integer.MAX_VALUE);

    private final Claims claims;

    KnownTurns(Dance dance) {
        claims = dance.claims();
    }

    /** The sum of all turns of the part. */
    Optional<Turn> net(Part part) {
        return through(part, END);
    }

    /** The sum of the turns of the steps that begin before this place; empty where a line in doubt leaves it open. */
    Optional<Turn> through(Part part, Counts until) {
        Turn written = WallWalk.turnThrough(part, until);
        Optional<Counts> doubtful = claims.doubts().stream()
                .filter(doubt -> isAboutTurns(doubt, part))
                .map(Doubt::from)
                .filter(from -> from.compareTo(until) < 0)
                .max(Comparator.naturalOrder());
        if (doubtful.isEmpty()) {
            return Optional.of(written);
        }
        return marks(part).stream()
                .filter(mark -> mark.afterCounts().compareTo(doubtful.get()) > 0)
                .filter(mark -> mark.afterCounts().compareTo(until) <= 0)
                .max(Comparator.comparing(ClockMark::afterCounts))
                .map(mark -> written.plus(new Turn(mark.stated().degrees()))
                        .plus(WallWalk.turnThrough(part, mark.afterCounts()).mirrored()));
    }

    /** Whether a line in doubt lies between two places of the part. */
    boolean isDoubtful(Part part, Counts after, Counts until) {
        return claims.doubts().stream()
                .filter(doubt -> isAboutTurns(doubt, part))
                .anyMatch(doubt ->
                        doubt.from().compareTo(after) >= 0 && doubt.from().compareTo(until) < 0);
    }

    private static boolean isAboutTurns(Doubt doubt, Part part) {
        return doubt.part().equals(part.name()) && doubt.about() == Doubt.About.WEIGHT_AND_TURNS;
    }

    private List<ClockMark> marks(Part part) {
        return claims.clockMarks().stream()
                .filter(mark -> mark.part().equals(part.name()))
                .toList();
    }
}
