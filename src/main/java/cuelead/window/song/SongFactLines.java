package cuelead.window.song;

import cuelead.plan.Timeline;
import cuelead.report.Problem;
import cuelead.song.Hearing;
import cuelead.steer.BeatWords;
import cuelead.steer.FitListing;
import cuelead.steer.Told;
import cuelead.window.frame.FoundProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a teacher wants to know of a song and of the dance over it. */
final class SongFactLines {
    private SongFactLines() {}

    /** A sentence each. */
    static List<String> of(SongInHand song) {
        List<String> lines = new ArrayList<>();
        Optional<Timeline> timeline = song.timeline();
        if (song.song().hasNoBeat() && !song.canTakeBack()) {
            return List.of("No steady beat was heard in this song: press \"Tap along\", and tap it.");
        }
        timeline.ifPresent(laid -> {
            lines.add(countOne(laid, song.hearing()));
            lines.addAll(FitListing.lines(laid, "The song"));
        });
        lines.addAll(new BeatWords(song.hearing()).inFull());
        song.song().problems().stream()
                .filter(problem -> problem.severity() != Problem.Severity.NOTE)
                .map(FoundProblem::told)
                .forEach(lines::add);
        return lines;
    }

    private static String countOne(Timeline timeline, Hearing hearing) {
        long counts = timeline.countOne().beatIndex() - hearing.beats().firstDownbeat();
        String where = Told.minutes(timeline.grid().secondsAt(timeline.countOne()));
        return "Count 1 of the dance falls at " + where
                + (counts > 0 ? ", after an intro of " + Told.number(counts, "beat") : "") + ".";
    }
}
