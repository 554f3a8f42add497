package cuelead.cli;

import cuelead.plan.SongCheck;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.practice.WordDoubts;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.steer.Told;
import java.util.ArrayList;
import java.util.List;

/** Makes a practice ready while the user is told how far it is and what is doubtful. */
final class PracticeStart {
    private final Surroundings surroundings;
    private final Wish wish;
    private final ProblemPrinter problems;

    PracticeStart(Surroundings surroundings, Wish wish) {
        this.surroundings = surroundings;
        this.wish = wish;
        problems = new ProblemPrinter(surroundings.err());
    }

    /** The practice; its problems are told in short. */
    Practice prepare() throws Refused {
        return told(prepareQuietly());
    }

    /** The same for what is only played live. */
    Practice prepareToPlay() throws Refused {
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            return told(Practice.prepareToPlay(wish, surroundings.places(), progress));
        }
    }

    private Practice told(Practice practice) throws Refused {
        try {
            checkNotEmpty(practice);
        } catch (Refused e) {
            practice.close();
            throw e;
        }
        tellProblems(practice);
        tellTempo(practice);
        return practice;
    }

    /** Where neither a song nor a tempo was asked for, what is heard instead. */
    private void tellTempo(Practice practice) {
        if (practice.song().isEmpty() && wish.tempo().isEmpty()) {
            double tempo = practice.timeline().grid().medianTempo().beatsPerMinute();
            surroundings
                    .err()
                    .println("No song: clicks at " + Told.decimal(Math.round(10 * tempo) / 10.0)
                            + " beats a minute; --tempo changes it.");
        }
    }

    /** After all else, so that it is not scrolled away: that the sheet has errors, if it has. */
    void remindOfErrors(Practice practice) {
        String sheet = wish.sheet().toString();
        long errors = findings(practice).stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .filter(problem -> problem.file().equals(sheet))
                .distinct()
                .count();
        if (errors > 0) {
            surroundings
                    .err()
                    .println("The sheet has " + Told.number(errors, "error")
                            + ", so calls may be wrong: cuelead check " + sheet + " shows "
                            + (errors == 1 ? "it." : "them."));
        }
    }

    /** The practice; whoever asked tells its problems. */
    Practice prepareQuietly() throws Refused {
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            return Practice.prepare(wish, surroundings.places(), progress);
        }
    }

    /** Waits until all of it can be read, while the user is told how far the listening to the song is. */
    void awaitWhole(Practice practice) throws Refused, InterruptedException {
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            practice.await(practice.toFrame(), progress);
        }
    }

    /** Tells what has been found since the last time: a song that still loads may bring more. */
    void tellProblems(Practice practice) {
        List<Problem> findings = findings(practice);
        problems.tellInShort(findings);
        problems.tellNotes(findings.stream().filter(PracticeStart::isOfVoice).toList());
    }

    /** A note on how the voice says words: of use to those who are going to hear it. */
    static boolean isOfVoice(Problem problem) {
        return problem.kind().equals(WordDoubts.HARD_WORD);
    }

    /** The problems of sheet, song and beats, and the words that the voice cannot say. */
    List<Problem> findings(Practice practice) {
        List<Problem> all = new ArrayList<>(practice.problems());
        practice.song()
                .ifPresent(song -> all.addAll(
                        SongCheck.check(practice.timeline(), wish.sheet().toString())));
        for (String words : practice.plan().unspeakable()) {
            all.add(new Problem(
                    Problem.Severity.WARNING,
                    "not_speakable",
                    wish.sheet().toString(),
                    0,
                    0,
                    "The voice cannot say \"" + words + "\".",
                    "Record it (--words DIR), or write another word in quotes behind its count line."));
        }
        return all;
    }

    private void checkNotEmpty(Practice practice) throws Refused {
        if (practice.toFrame() > practice.fromFrame()) {
            return;
        }
        throw new Refused("Nothing sounds from " + Told.minutes(wish.fromSeconds()) + " on: the track ends at "
                + Told.minutes(practice.rate().secondsAt(practice.toFrame())) + "; begin earlier with --from.");
    }
}
