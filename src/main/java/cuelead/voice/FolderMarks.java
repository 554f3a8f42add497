package cuelead.voice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** The recordings in a folder and their marks: those of its {@link MarkFile}, and for all others the heard ones. */
public final class FolderMarks {
    private final Map<String, Path> files;
    private final Map<String, Mark> marks;
    private final List<Problem> problems = new ArrayList<>();

    private FolderMarks(Map<String, Path> files, Map<String, Mark> marks) {
        this.files = files;
        this.marks = marks;
    }

    /**
     * Reads a folder and marks what is not marked yet, or was marked when it was another recording.
     *
     * @throws Refused when the folder or its marks cannot be read
     */
    public static FolderMarks of(Path folder, WordFileReader reader) throws Refused {
        WordFolder words = WordFolder.read(folder);
        MarkFile.Read known = MarkFile.read(folder);
        Map<String, Mark> marks = new ConcurrentHashMap<>();
        List<Problem> unusable = words.files().entrySet().parallelStream()
                .flatMap(word -> mark(word.getKey(), word.getValue(), reader, known, marks).stream())
                .toList();
        FolderMarks all = new FolderMarks(words.files(), marks);
        all.problems.addAll(known.problems());
        words.problems().stream()
                .filter(problem -> !problem.kind().equals(RecordingProblems.NO_WORDS))
                .forEach(all.problems::add);
        all.problems.addAll(unusable);
        return all;
    }

    private static Optional<Problem> mark(
            String text, Path file, WordFileReader reader, MarkFile.Read known, Map<String, Mark> marks) {
        String name = file.getFileName().toString();
        try {
            MonoSound sound = reader.read(file);
            Optional<Mark> before =
                    Optional.ofNullable(known.marks().get(name)).filter(mark -> mark.fits(sound.lengthSeconds()));
            TakeVerdict verdict = TakeVerdict.of(sound, text);
            before.or(verdict::mark).ifPresent(mark -> marks.put(name, mark));
            return problem(file, text, verdict.fault());
        } catch (Refused unreadable) {
            return Optional.of(RecordingProblems.unreadable(file, text, unreadable));
        }
    }

    /** A file needs no clicks and no microphone, so what a take is told about them is not told of it. */
    private static Optional<Problem> problem(Path file, String text, TakeVerdict.Fault fault) {
        return switch (fault) {
            case NONE, CUT_OFF -> Optional.empty();
            case DEAD, SILENT -> Optional.of(RecordingProblems.silent(file, text));
            case CLIPPED, TOO_QUIET, NOISY -> Optional.of(RecordingProblems.doubtful(file, fault));
        };
    }

    /** The file that says it, for each word. */
    public Map<String, Path> files() {
        return Map.copyOf(files);
    }

    /** What is recorded and can be used, in the order of the alphabet. */
    public List<String> words() {
        return files.entrySet().stream()
                .filter(word -> marks.containsKey(word.getValue().getFileName().toString()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The mark of each file by its name. */
    public Map<String, Mark> marks() {
        return new TreeMap<>(marks);
    }

    /** What is wrong or doubtful. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }
}
