package cuelead.song;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** What is found wrong with one sound file, while it is opened and while it is decoded. Thread-safe. */
final class Findings {
    /** Beyond so many, further damage is not told one by one. */
    private static final int MOST = 8;

    private final String file;
    private final List<Problem> problems = new CopyOnWriteArrayList<>();

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

    /** Sound is missing in the middle. */
    void hole(SampleRate rate, long fromFrame, long frames) {
        warn(
                "damaged",
                "The file is damaged at " + Clock.minutesSeconds(rate.secondsAt(fromFrame)) + ": "
                        + Clock.length(rate.secondsAt(frames)) + " of sound are missing and play as silence.",
                "Copy or download it again.");
    }

    void error(String kind, String sentence, String tryThis) {
        problems.add(new Problem(Severity.ERROR, kind, file, 0, 0, sentence, tryThis));
    }

    List<Problem> list() {
        return List.copyOf(problems);
    }

    private void add(Severity severity, String kind, String sentence, String tryThis) {
        int known = problems.size();
        if (known < MOST) {
            problems.add(new Problem(severity, kind, file, 0, 0, sentence, tryThis));
        } else if (known == MOST) {
            problems.add(new Problem(severity, kind, file, 0, 0, "There is more damage after that.", ""));
        }
    }
}
