package cuelead.studio;

import cuelead.dance.Count;
import cuelead.plan.Call;
import cuelead.practice.Practice;
import cuelead.practice.SpokenCall;
import cuelead.rehearse.BeatLengths;
import cuelead.rehearse.PlanFile;
import cuelead.rehearse.PlannedCall;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a take is compared with.
 *
 * @param calls in order of time; at least one
 * @param beats where clicks stand for music that is missing: seconds, and whether a bar begins there
 * @param music the sound file that was heard while calling, where it is known
 */
public record ReviewedDance(List<PlannedCall> calls, Optional<Path> music, List<Beat> beats) {
    /** A beat to be clicked. */
    public record Beat(double seconds, boolean isAccented) {}

    /** From a call plan in a file. */
    public static ReviewedDance ofPlan(Path plan, Optional<Path> music) throws Refused {
        List<PlannedCall> calls = PlanFile.read(plan);
        List<Beat> beats = calls.stream()
                .flatMapToDouble(call -> call.beatSeconds().stream())
                .distinct()
                .sorted()
                .mapToObj(seconds -> new Beat(seconds, false))
                .toList();
        return new ReviewedDance(calls, music, beats);
    }

    /**
     * As {@code play} would call it.
     *
     * @param music empty = the practice's own
     * @throws Refused when nothing is called
     */
    public static ReviewedDance of(Practice practice, Path sheet, Optional<Path> music) throws Refused {
        List<PlannedCall> calls = practice.spokenCalls().stream()
                .map(SpokenCall::call)
                .map(ReviewedDance::planned)
                .sorted(Comparator.comparingDouble(PlannedCall::seconds))
                .toList();
        if (calls.isEmpty()) {
            throw new Refused("Nothing is called in " + sheet + ", so there is nothing to compare the take with.");
        }
        return new ReviewedDance(
                BeatLengths.filled(calls),
                music.or(() -> practice.song().map(Song::file)),
                beats(practice.timeline().grid()));
    }

    private static List<Beat> beats(BeatGrid grid) {
        return IntStream.range(0, grid.size())
                .mapToObj(beat -> new Beat(grid.beatSeconds(beat), grid.beatInBar(beat) == 1))
                .toList();
    }

    private static PlannedCall planned(Call call) {
        return PlannedCall.of(
                        call.words(),
                        call.centreSeconds(),
                        call.beatSeconds(),
                        call.lead().toDecimal(),
                        call.wall(),
                        call.section())
                .withCount(call.count().map(Count::label).orElse(""));
    }
}
