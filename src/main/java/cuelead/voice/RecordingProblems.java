package cuelead.voice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.nio.file.Path;
import java.util.Locale;

/** What is told about recordings that cannot be used; each time the practice goes on without them. */
final class RecordingProblems {
    static final String NO_WORDS = "no_recorded_words";

    private RecordingProblems() {}

    static Problem none(Path folder) {
        return warning(
                NO_WORDS,
                folder,
                "There are no recorded words in this folder; the built-in voice says all.",
                "Put sound files in it that are named after their word, such as \"rock.wav\".");
    }

    static Problem nameless(Path file) {
        return warning(
                "recording_without_word",
                file,
                "The name of this recording says no word.",
                "Name it after the word that it holds, such as \"rock.wav\".");
    }

    static Problem twice(Path file, String text, Path taken) {
        return warning(
                "recorded_twice",
                file,
                "There is another recording of \"" + text + "\", " + taken.getFileName() + ", and that one is taken.",
                "Delete one of the two, or rename it.");
    }

    /** @param refusal its message names the file and says what to try */
    static Problem unreadable(Path file, String text, Refused refusal) {
        String told = refusal.getMessage();
        String sentence = told.startsWith(file + " ")
                ? "This recording" + told.substring(file.toString().length())
                : told;
        return warning("recording_unreadable", file, sentence, builtIn(text));
    }

    static Problem silent(Path file, String text) {
        return warning(
                "recording_silent",
                file,
                "No word is heard in this recording.",
                "Record it again, closer to the microphone. " + builtIn(text));
    }

    static Problem doubtful(Path file, TakeVerdict.Fault fault) {
        return warning("recording_doubtful", file, fault.sentence(), "");
    }

    /** @param mark made for another recording of that name */
    static Problem markOfAnother(Path file, Mark mark) {
        return warning(
                "mark_of_another",
                file,
                String.format(
                        Locale.ROOT,
                        "Its mark was made for a recording of %.3f seconds, so it is heard anew.",
                        mark.lengthSeconds()),
                "\"cuelead record --folder\" and its folder writes the new mark down.");
    }

    static Problem tooLong(Path file, String text, double seconds, double mostSeconds) {
        return warning(
                "recording_too_long",
                file,
                String.format(
                        Locale.ROOT,
                        "The words in this recording take %.1f seconds, and a call may take %.0f.",
                        seconds,
                        mostSeconds),
                "Cut out the one call with a sound editor. " + builtIn(text));
    }

    private static String builtIn(String text) {
        return "Until then the built-in voice says \"" + text + "\".";
    }

    private static Problem warning(String kind, Path file, String sentence, String tryThis) {
        return new Problem(Problem.Severity.WARNING, kind, file.toString(), 0, 0, sentence, tryThis);
    }
}
