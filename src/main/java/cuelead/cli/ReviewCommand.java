package cuelead.cli;

import cuelead.output.RoundTripNote;
import cuelead.report.Refused;
import cuelead.studio.ReviewedDance;
import cuelead.studio.ReviewedTake;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
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
        Optional<ReviewedTake> heard = heard(dance);
        if (heard.isEmpty()) {
            surroundings.err().println("Nothing was to be called so far, so there is nothing to review.");
            return Failures.DONE;
        }
        ReviewedTake reviewed = heard.get();
        if (report.isHeard()) {
            report.hear(reviewed.review(), reviewed.replay(), surroundings);
        } else {
            report.tell(reviewed.review(), surroundings);
        }
        return Failures.DONE;
    }

    /** A rehearsal may have been broken off; any other take must go on as long as the plan, or is another plan's. */
    private Optional<ReviewedTake> heard(ReviewedDance dance) throws Refused {
        Consumer<String> doubts = surroundings.err()::println;
        double late = roundTripSeconds();
        return RoundTripNote.seconds(take).isPresent()
                ? ReviewedTake.ofRehearsal(take, dance.calls(), dance.music(), late, doubts)
                : Optional.of(ReviewedTake.of(take, dance.calls(), dance.music(), late, doubts));
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
