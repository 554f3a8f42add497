package cuelead.steer;

import cuelead.output.FilesBefore;
import cuelead.output.TakeFolder;
import cuelead.output.TextFile;
import cuelead.report.Refused;
import cuelead.voice.FolderMarks;
import cuelead.voice.Mark;
import cuelead.voice.MarkFile;
import cuelead.voice.MonoSound;
import cuelead.voice.RecordingSession;
import cuelead.voice.RecordingSession.Taken;
import cuelead.voice.WordFileReader;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Keeps takes, recordings and marks in a folder, each at once, so that nothing is lost whatever comes. Changes of
 * recordings and marks can be taken back; takes stay.
 */
public final class WordKeeping {
    private final Path folder;
    private final TakeFolder takes;
    private final WordFileReader reader;
    private final Map<String, Path> recordings = new HashMap<>();
    private final Map<String, Mark> marks = new TreeMap<>();
    private final Deque<Before> history = new ArrayDeque<>();

    /** How it was before a change. */
    private record Before(
            String word, Change change, FilesBefore files, Map<String, Path> recordings, Map<String, Mark> marks) {}

    private enum Change {
        RECORDED,
        MARKED
    }

    /**
     * With nothing to take back.
     *
     * @param before what lies in the folder
     * @param reader of the recordings that are there
     */
    public WordKeeping(Path folder, TakeFolder takes, FolderMarks before, WordFileReader reader) {
        this.reader = reader;
        this.folder = folder;
        this.takes = takes;
        recordings.putAll(before.files());
        marks.putAll(before.marks());
    }

    /** Writes a take; gives its file. */
    public Path keep(String word, MonoSound take) throws Refused, InterruptedException {
        return takes.keep(word, take.samples(), take.rate());
    }

    /** Makes a kept take the recording of its word, and writes its mark down. */
    public void accept(String word, Path take, Taken taken) throws Refused, InterruptedException {
        List<Path> standing = Optional.ofNullable(recordings.get(word)).stream().toList();
        List<Path> changed = new ArrayList<>(standing);
        changed.add(folder.resolve(word + TakeFolder.ENDING));
        Before before = before(word, Change.RECORDED, changed);
        Path recording = takes.accept(take, word, standing);
        history.push(before);
        standing.forEach(old -> marks.remove(name(old)));
        marks.put(name(recording), taken.mark().orElseThrow());
        recordings.put(word, recording);
        write();
    }

    /** Shows a session the recording of its word, where there is one that is marked. */
    public boolean show(RecordingSession session) throws Refused {
        Optional<Path> file = recording(session.word());
        if (file.isPresent()) {
            session.show(reader.read(file.get()), marks.get(name(file.get())));
        }
        return file.isPresent();
    }

    /** Writes down where the recording of a word is marked now. */
    public void mark(String word, Mark mark) throws Refused {
        boolean isMovedOn = !history.isEmpty()
                && history.peek().change() == Change.MARKED
                && history.peek().word().equals(word);
        if (!isMovedOn) {
            history.push(before(word, Change.MARKED, List.of()));
        }
        marks.put(name(recording(word).orElseThrow()), mark);
        write();
    }

    /** Whether a word has a recording that can be used. */
    public boolean isRecorded(String word) {
        return recording(word).isPresent();
    }

    private Optional<Path> recording(String word) {
        return Optional.ofNullable(recordings.get(word)).filter(file -> marks.containsKey(name(file)));
    }

    public boolean canTakeBack() {
        return !history.isEmpty();
    }

    /**
     * Takes the last change back: a recording as it was, or where a word was marked.
     *
     * @return the word; empty when there is nothing to be taken back
     */
    public Optional<String> takeBack() throws Refused, InterruptedException {
        if (history.isEmpty()) {
            return Optional.empty();
        }
        Before before = history.peek();
        before.files().putBack();
        recordings.clear();
        recordings.putAll(before.recordings());
        marks.clear();
        marks.putAll(before.marks());
        history.pop();
        return Optional.of(before.word());
    }

    private Before before(String word, Change change, List<Path> changed) throws Refused {
        List<Path> files = new ArrayList<>(changed);
        files.add(folder.resolve(MarkFile.NAME));
        return new Before(word, change, FilesBefore.of(files), Map.copyOf(recordings), Map.copyOf(marks));
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    /** Writes all marks down. */
    public void write() throws Refused {
        TextFile.write(folder.resolve(MarkFile.NAME), MarkFile.print(marks));
    }
}
