package cuelead.cli;

import cuelead.output.Targets;
import cuelead.practice.SongMemory;
import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Progress;
import cuelead.rehearse.Prompts;
import cuelead.rehearse.Review;
import cuelead.report.Refused;
import cuelead.studio.PromptTimes;
import cuelead.studio.RehearsalFolder;
import cuelead.studio.RehearsalSession;
import cuelead.studio.RehearsalSound;
import cuelead.studio.ReviewedDance;
import cuelead.studio.ReviewedTake;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plays the music while its user calls, records that, and tells how the calls landed. */
@Command(
        name = "rehearse",
        header = "Rehearse your own calling, and hear how your calls land.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "The music plays in your headphones without calls, the terminal prompts you when it is time to breathe for a"
                    + " call, and you call into the microphone. Afterwards you see which calls were early, late, missed or"
                    + " other words than planned, and what to work on.",
            "The first time with a microphone, hold your headphones to it: Cuelead measures how late it is, and keeps"
                    + " that for the next time.",
            "What is recorded stays on this computer: every take is kept in the folder, a folder a dance, until you"
                    + " delete it. It goes to the disk while you call, so nothing is lost when something breaks.",
            "q ends; what was called until then is reviewed."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead rehearse my-sheet.txt my-song.mp3",
            "  cuelead rehearse my-sheet.txt my-song.mp3 --prompts wrong     only what you got wrong",
            "  cuelead rehearse my-sheet.txt my-song.mp3 --speak-hard        hard calls are whispered to you",
            "  cuelead rehearse --plan plan.csv --music my-song.mp3 --csv > calls.csv"
        })
final class RehearseCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(
            names = "--prompts",
            paramLabel = "WHICH",
            converter = Values.PromptAmount.class,
            defaultValue = "fewer",
            description = "Which calls are prompted: all; fewer from wall to wall; only what you got wrong the last"
                    + " times; or none. Usual is fewer.")
    private Prompts.Amount amount;

    @Option(
            names = "--speak-hard",
            description = "A voice in your headphones reminds you of hard calls before you make them: of those that"
                    + " you got wrong the last times; the first time, of turns.")
    private boolean speaksHard;

    @Option(names = "--measure", description = "Measure anew how late the microphone is.")
    private boolean measures;

    @Option(
            names = "--folder",
            paramLabel = "DIR",
            defaultValue = "my-rehearsals",
            description = "Where takes and progress are kept. Usual is my-rehearsals.")
    private Path folder;

    @Mixin
    private RehearsalDeviceOptions devices;

    @Mixin
    private PlanOptions plan;

    @Mixin
    private ReportOptions report;

    RehearseCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        plan.check();
        report.check();
        ReviewedDance dance = plan.dance(surroundings);
        if (dance.music().isEmpty()) {
            surroundings
                    .err()
                    .println(
                            dance.beats().isEmpty()
                                    ? "There is neither music nor a beat in the plan, so nothing is heard; name the song with --music."
                                    : "There is no music, so beats are clicked.");
        }
        RehearsalFolder kept = new RehearsalFolder(folder, Targets.withoutEnding(plan.source()));
        kept.check();
        Optional<Progress> before = progress(kept);
        Prompts prompts = new Prompts(dance.calls(), before.orElse(Progress.NONE));
        RehearsalSound sound = sound(dance, speaksHard ? prompts.hard() : List.of());
        RehearsalSession session = new RehearsalSession(
                devices.of(surroundings.devices()), kept, plan.calibratedSeconds(), measures, this::lastWords);
        Optional<RehearsalSession.Recorded> recorded = session.record(
                sound,
                dance.calls(),
                new PromptTimes(dance.calls(), prompts.of(amount)),
                () -> LinedRehearsal.of(surroundings));
        if (recorded.isPresent()) {
            review(dance, recorded.get(), kept, before);
        }
        return Failures.DONE;
    }

    private RehearsalSound sound(ReviewedDance dance, List<PlannedCall> spoken) throws Refused {
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            return RehearsalSound.of(dance, spoken, new SongMemory(surroundings.places(), progress));
        }
    }

    /** Empty where the file cannot be used; then it stays as it is. */
    private Optional<Progress> progress(RehearsalFolder kept) {
        try {
            return Optional.of(kept.progress());
        } catch (Refused broken) {
            surroundings.err().println(broken.getMessage());
            return Optional.empty();
        }
    }

    private void review(
            ReviewedDance dance, RehearsalSession.Recorded take, RehearsalFolder kept, Optional<Progress> before)
            throws Refused, InterruptedException {
        surroundings
                .err()
                .println("Your take is " + take.file() + "; delete it when you like. To see or hear it again:");
        surroundings
                .err()
                .println("  cuelead review " + PlanOptions.quoted(take.file()) + plan.asWritten() + " --hear NUMBER");
        Optional<ReviewedTake> reviewed = ReviewedTake.ofRehearsal(
                take.file(), dance.calls(), dance.music(), take.roundTripSeconds(), surroundings.err()::println);
        if (reviewed.isEmpty()) {
            surroundings.err().println("Nothing was to be called so far, so there is nothing to review.");
            return;
        }
        Review review = reviewed.get().review();
        report.tell(review, surroundings);
        Optional<Progress> now = before.isPresent()
                ? kept.keep(before.get(), review, dance.calls().size(), LocalDateTime.now(ZoneId.systemDefault()))
                : Optional.empty();
        if (now.isPresent() && !report.isCsv()) {
            ProgressListing.print(now.get(), surroundings.out());
        }
        if (report.isHeard()) {
            report.hear(review, reviewed.get().replay(), surroundings);
        }
    }

    /** A raw terminal does not go back by itself. */
    private void lastWords(String sentence) {
        surroundings.err().print("\r" + sentence + "\r\n");
        surroundings.err().flush();
    }
}
