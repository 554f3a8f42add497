package cuelead.window.rehearse;

import cuelead.output.Targets;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.Practice;
import cuelead.practice.Progress;
import cuelead.practice.SongMemory;
import cuelead.practice.Wish;
import cuelead.rehearse.Prompts;
import cuelead.report.Refused;
import cuelead.studio.RehearsalFolder;
import cuelead.studio.RehearsalSound;
import cuelead.studio.ReviewedDance;
import cuelead.window.frame.Choices;
import cuelead.window.frame.InHand;
import cuelead.window.frame.Means;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A dance that is ready to be rehearsed.
 *
 * @param before how its rehearsals went until now; empty where its file cannot be used, and stays as it is
 * @param sound  what is heard meanwhile
 */
record PreparedDance(
        ReviewedDance dance,
        RehearsalFolder kept,
        Optional<cuelead.rehearse.Progress> before,
        Prompts prompts,
        RehearsalSound sound) {
    /** The folder of the rehearsals of a sheet. */
    static RehearsalFolder folder(Path sheet, Means means) {
        return new RehearsalFolder(means.kept().resolve("rehearsals"), Targets.withoutEnding(sheet));
    }

    /** What is called and heard: every word at the song's own speed, unless less is called. */
    static Wish wish(Path sheet, InHand inHand) {
        Choices choices = inHand.choices();
        return Wish.of(sheet)
                .song(inHand.song())
                .tempo(inHand.hasSong() ? Optional.empty() : Optional.of(choices.clicks()))
                .leadBeats(choices.leadBeats())
                .calls(
                        choices.level() == CallLevel.NONE ? CallLevel.WORDS : choices.level(),
                        CallSettings.Fading.STEADY)
                .way(choices.way())
                .wish();
    }

    /** The calls of a dance. */
    static ReviewedDance dance(Wish wish, Means means, Progress progress) throws Refused {
        try (Practice practice = Practice.prepare(wish, means.places(), progress)) {
            return ReviewedDance.of(practice, wish.sheet(), Optional.empty());
        }
    }

    /** Whether a voice reminds of hard calls. */
    enum HardCalls {
        SPOKEN,
        SILENT
    }

    /**
     * Makes it ready.
     *
     * @param told is told what is doubtful
     */
    static PreparedDance of(Wish wish, Means means, HardCalls hard, Progress progress, Consumer<String> told)
            throws Refused {
        RehearsalFolder kept = folder(wish.sheet(), means);
        kept.check();
        ReviewedDance dance = dance(wish, means, progress);
        Optional<cuelead.rehearse.Progress> before = before(kept, told);
        Prompts prompts = new Prompts(dance.calls(), before.orElse(cuelead.rehearse.Progress.NONE));
        RehearsalSound sound = RehearsalSound.of(
                dance, hard == HardCalls.SPOKEN ? prompts.hard() : List.of(), new SongMemory(means.places(), progress));
        return new PreparedDance(dance, kept, before, prompts, sound);
    }

    private static Optional<cuelead.rehearse.Progress> before(RehearsalFolder kept, Consumer<String> told) {
        try {
            return Optional.of(kept.progress());
        } catch (Refused broken) {
            told.accept(broken.getMessage());
            return Optional.empty();
        }
    }
}
