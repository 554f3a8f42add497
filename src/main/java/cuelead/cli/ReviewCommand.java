package cuelead.cli;

import cuelead.output.RoundTripNote;
import cuelead.report.Refused;
import cuelead.studio.ReviewedDance;
import cuelead.studio.ReviewedTake;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells how the calls of a take landed. */
@Command(
        name = "review",
        header = "Tell how your own calls landed.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Listens to a recording of your calling that began with the music, and tells which calls were early, late,"
                    + " missed or other words than planned, and what to work on.",
            "Nothing leaves this computer, and nothing is kept but what you ask to be written."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead review my-take.wav my-sheet.txt my-song.mp3",
            "  cuelead review my-take.wav my-sheet.txt my-song.mp3 --calibration clicks.wav --picture calls.png",
            "  cuelead review my-take.wav --plan plan.csv --music my-song.mp3 --csv > calls.csv",
            "  cuelead review my-take.wav my-sheet.txt my-song.mp3 --hear 12"
        })
final class ReviewCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "TAKE", description = "What the microphone gave, from where the music began.")
    private Path take;

    @Mixin
    private PlanOptions plan;

    @Mixin
    private ReportOptions report;

    ReviewCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        plan.check();
        report.check();
        ReviewedDance dance = plan.dance(surroundings);
        ReviewedTake reviewed =
                ReviewedTake.of(take, dance.calls(), dance.music(), roundTripSeconds(), surroundings.err()::println);
        if (report.isHeard()) {
            report.hear(reviewed.review(), reviewed.replay(), surroundings);
        } else {
            report.tell(reviewed.review(), surroundings);
        }
        return Failures.DONE;
    }

    /** From the clicks; else a take of a rehearsal says it itself. */
    private double roundTripSeconds() throws Refused {
        OptionalDouble calibrated = plan.calibratedSeconds();
        if (calibrated.isPresent()) {
            return calibrated.getAsDouble();
        }
        OptionalDouble noted = RoundTripNote.seconds(take);
        if (noted.isEmpty()) {
            surroundings
                    .err()
                    .println(
                            "Without --calibration the microphone counts as never late, so all calls seem a little late.");
        }
        return noted.orElse(0);
    }
}
