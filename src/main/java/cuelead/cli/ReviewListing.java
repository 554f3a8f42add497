package cuelead.cli;

import cuelead.rehearse.Advice;
import cuelead.rehearse.CallKind;
import cuelead.rehearse.Finding;
import cuelead.rehearse.HeardWord;
import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Review;
import cuelead.rehearse.ReviewedCall;
import cuelead.steer.Told;
import cuelead.studio.Landed;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** A review to be read: the whole in a few lines, what was not on time wall by wall, and what to work on. */
final class ReviewListing {
    private static final int MOST_ADVICE = 3;
    private static final int WORD_LETTERS = 18;

    private final Review review;
    private final PrintStream out;
    private final int wordLetters;

    ReviewListing(Review review, PrintStream out) {
        this.review = review;
        this.out = out;
        wordLetters = review.calls().stream()
                .filter(call -> call.kind() != CallKind.OK)
                .mapToInt(call -> word(call).length())
                .reduce(WORD_LETTERS, Math::max);
    }

    void print() {
        printWhole();
        if (review.timed().isEmpty()) {
            out.println("No planned word was heard: see whether take and plan belong together.");
            return;
        }
        int wall = -1;
        for (int i = 0; i < review.calls().size(); i++) {
            ReviewedCall call = review.calls().get(i);
            if (call.kind() == CallKind.OK) {
                continue;
            }
            // before the dance, and besides, there is no wall of its own
            int now = Math.max(
                    Math.max(0, wall), call.planned().map(PlannedCall::wall).orElse(0));
            if (now != wall) {
                out.println();
                out.println(now > 0 ? "Wall " + now : "Not on time");
                wall = now;
            }
            out.println(line(i + 1, call));
        }
        printAdvice();
    }

    private void printWhole() {
        out.println(Told.number(review.planned(), "planned call") + ": " + review.count(CallKind.OK) + " on time, "
                + review.count(CallKind.EARLY) + " early, " + review.count(CallKind.LATE) + " late, "
                + review.count(CallKind.MISSED) + " missed, " + Told.number(review.count(CallKind.WRONG), "other word")
                + "; " + review.count(CallKind.EXTRA) + " said besides.");
        out.println("On time is within " + Math.round(CallKind.ON_TIME_MS) + " ms; finer is not honest.");
        OptionalDouble usual = review.usualErrorMs();
        if (usual.isPresent()) {
            out.println("In the middle you are " + Landed.leaning(usual.getAsDouble(), review.beatSeconds())
                    + ", and half of your calls lie within "
                    + Math.round(review.unsteadinessMs().orElse(0)) + " ms of that.");
        }
    }

    /** The number is the one for {@code --hear}. */
    private String line(int number, ReviewedCall call) {
        String section = call.planned().map(PlannedCall::section).orElse("");
        return String.format(Locale.ROOT, "%5d  %8s  %-4s  ", number, Told.minutes(call.seconds()), section)
                + word(call)
                + " ".repeat(Math.max(0, wordLetters - word(call).length()) + 1)
                + Landed.of(call);
    }

    private static String word(ReviewedCall call) {
        return call.planned()
                .map(PlannedCall::word)
                .orElseGet(() -> call.heard().map(HeardWord::word).orElse(""));
    }

    private void printAdvice() {
        List<Finding> findings = Advice.on(review);
        out.println();
        if (findings.isEmpty()) {
            out.println("Nothing goes wrong twice in the same way. Well called.");
            return;
        }
        out.println("To work on");
        for (int i = 0; i < Math.min(MOST_ADVICE, findings.size()); i++) {
            out.println("  " + (i + 1) + ". " + findings.get(i).sentence());
        }
    }
}
