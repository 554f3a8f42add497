package cuelead.cli;

import cuelead.practice.Practice;
import cuelead.practice.Wish;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows the calls. */
@Command(
        name = "plan",
        header = "Show which call comes when.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Shows for each call the count it is for, the time of its stressed syllable in the song,"
                    + " its lead in beats, and the room: seconds from its end to the movement.",
            "Then what was left out and why, and where the dance stands when the song ends."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead plan cues/lamp-on-the-quay.txt",
            "  cuelead plan my-sheet.txt my-song.mp3 --lead 3 --calls figures",
            "  cuelead plan my-sheet.txt my-song.mp3 --csv > plan.csv"
        })
final class PlanCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private PracticeOptions options;

    @Option(
            names = "--csv",
            description = "Comma-separated values with a header line instead (the plan.csv of \"render --stems\"):"
                    + " times in seconds from the first frame of the track, which begins at --from.")
    private boolean csv;

    PlanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        Wish wish = options.wish();
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (Practice practice = start.prepare()) {
            if (csv) {
                surroundings.out().write(Stems.plan(practice).getBytes(StandardCharsets.UTF_8));
            } else {
                new PlanListing(practice, wish, surroundings.out()).print();
            }
            start.remindOfErrors(practice);
        }
        return Failures.DONE;
    }
}
