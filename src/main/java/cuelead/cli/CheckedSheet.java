package cuelead.cli;

import cuelead.dance.DanceCheck;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sheet.OwnFigures;
import cuelead.sheet.ReadSheet;
import cuelead.sheet.SheetFile;
import cuelead.steer.FitListing;
import java.util.ArrayList;
import java.util.List;

/** What is found in one sheet, its song and its beats. */
final class CheckedSheet {
    private final Surroundings surroundings;
    private final Wish wish;
    private final OwnFigures own;
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> refusals = new ArrayList<>();
    private final List<String> fit = new ArrayList<>();

    CheckedSheet(Surroundings surroundings, Wish wish, OwnFigures own) {
        this.surroundings = surroundings;
        this.wish = wish;
        this.own = own;
    }

    /** {@code withVoice}: whether it matters how words are said. */
    void check(boolean withVoice) throws Refused, InterruptedException {
        problems.addAll(own.problems());
        ReadSheet read = SheetFile.read(wish.sheet(), own);
        problems.addAll(read.problems());
        read.dance().ifPresent(dance -> problems.addAll(DanceCheck.check(dance, sheet())));
        if (read.dance().isPresent()) {
            practice(withVoice);
        }
    }

    private void practice(boolean withVoice) throws InterruptedException {
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (Practice practice = start.prepareQuietly()) {
            practice.await(practice.toFrame());
            start.findings(practice).stream()
                    .filter(problem -> withVoice || !PracticeStart.isOfVoice(problem))
                    .forEach(problems::add);
            practice.song().ifPresent(song -> fit.addAll(FitListing.lines(practice)));
        } catch (Refused refused) {
            boolean isListed = problems.stream().map(Problem::message).anyMatch(refused.getMessage()::startsWith);
            if (!isListed) {
                refusals.add(refused.getMessage());
            }
        }
    }

    String sheet() {
        return wish.sheet().toString();
    }

    List<Problem> problems() {
        return problems;
    }

    /** What could not be looked at, a sentence each. */
    List<String> refusals() {
        return refusals;
    }

    /** Whether the dance fits its song, in sentences. */
    List<String> fit() {
        return fit;
    }

    long errors() {
        return count(Problem.Severity.ERROR) + refusals.size();
    }

    long warnings() {
        return count(Problem.Severity.WARNING);
    }

    private long count(Problem.Severity severity) {
        return problems.stream()
                .distinct()
                .filter(problem -> problem.severity() == severity)
                .count();
    }
}
