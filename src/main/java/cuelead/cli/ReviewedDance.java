package cuelead.cli;

import cuelead.plan.Call;
import cuelead.practice.Practice;
import cuelead.practice.SpokenCall;
import cuelead.practice.Wish;
import cuelead.rehearse.PlanFile;
import cuelead.rehearse.PlannedCall;
import cuelead.report.Refused;
import cuelead.song.Song;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a take is compared with.
 *
 * @param calls in order of time; at least one
 * @param music the sound file that was heard while calling, where it is known
 */
record ReviewedDance(List<PlannedCall> calls, Optional<Path> music) {
    /** From a call plan in a file. */
    static ReviewedDance ofPlan(Path plan, Optional<Path> music) throws Refused {
        return new ReviewedDance(PlanFile.read(plan), music);
    }

    /** From a sheet and a song, as {@code play} would call them. */
    static ReviewedDance of(Surroundings surroundings, Wish wish, Optional<Path> music) throws Refused {
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (Practice practice = start.prepare()) {
            List<PlannedCall> calls = practice.spokenCalls().stream()
                    .map(SpokenCall::call)
                    .map(ReviewedDance::planned)
                    .sorted(Comparator.comparingDouble(PlannedCall::seconds))
                    .toList();
            if (calls.isEmpty()) {
                throw new Refused(
                        "Nothing is called in " + wish.sheet() + ", so there is nothing to compare the take with.");
            }
            return new ReviewedDance(calls, music.or(() -> practice.song().map(Song::file)));
        }
    }

    private static PlannedCall planned(Call call) {
        return PlannedCall.of(
                call.words(),
                call.centreSeconds(),
                call.beatSeconds(),
                call.lead().toDecimal(),
                call.wall(),
                call.section());
    }
}
