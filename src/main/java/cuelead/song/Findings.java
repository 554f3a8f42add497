package cuelead.song;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** What is found wrong with one sound file, while it is opened and while it is decoded. Thread-safe. */
final class Findings {
    private final String file;
    private final List<Problem> problems = new CopyOnWriteArrayList<>();
    private final Damage damage = new Damage();

    Findings(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }

    void warn(String kind, String sentence, String tryThis) {
        add(Severity.WARNING, kind, sentence, tryThis);
    }

    /** The file ends before its header says so. */
    void endsEarly(SampleRate rate, long framesThere, long framesPromised) {
        warn(
                "truncated",
                "The file ends early, at " + Clock.minutesSeconds(rate.secondsAt(framesThere)) + " of "
                        + Clock.minutesSeconds(rate.secondsAt(framesPromised)) + "; the rest is silent.",
                "Copy or download it again.");
    }

    /** The file ends where no file should, and does not say how long it was. */
    void mayHaveBeenLonger(SampleRate rate, long framesThere) {
        warn(
                "truncated",
                "The file is cut short at " + Clock.minutesSeconds(rate.secondsAt(framesThere))
                        + "; it may have been longer.",
                "Copy or download it again.");
    }

    /** Sound is missing in the middle; {@code fromFrame} may lie in front of the song. */
    void hole(SampleRate rate, long fromFrame, long frames) {
        damage.add(rate, fromFrame, frames);
    }

    void error(String kind, String sentence, String tryThis) {
        add(Severity.ERROR, kind, sentence, tryThis);
    }

    List<Problem> list() {
        List<Problem> all = new ArrayList<>(problems);
        damage.problem(file).ifPresent(all::add);
        return List.copyOf(all);
    }

    private void add(Severity severity, String kind, String sentence, String tryThis) {
        problems.add(new Problem(severity, kind, file, 0, 0, sentence, tryThis));
    }
}
