package cuelead.cli;

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
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Keeps takes, recordings and marks in a folder, each at once, so that nothing is lost whatever comes. */
final class WordKeeping {
    private final Path folder;
    private final TakeFolder takes;
    private final FolderMarks before;
    private final WordFileReader reader;
    private final Map<String, Mark> marks;
    /** The recordings that were made now, by their words. */
    private final Map<String, Path> made = new HashMap<>();

    /** @param reader of the recordings that are there */
    WordKeeping(Path folder, TakeFolder takes, FolderMarks before, WordFileReader reader) {
        this.reader = reader;
        this.folder = folder;
        this.takes = takes;
        this.before = before;
        marks = new TreeMap<>(before.marks());
    }

    /** Writes a take; gives its file. */
    Path keep(String word, MonoSound take) throws Refused, InterruptedException {
        return takes.keep(word, take.samples(), take.rate());
    }

    /** Makes a kept take the recording of its word, and writes its mark down. */
    void accept(String word, Path take, Taken taken) throws Refused, InterruptedException {
        Path recording = takes.accept(take, word, before.filesOf(word));
        before.filesOf(word).forEach(old -> marks.remove(old.getFileName().toString()));
        marks.put(recording.getFileName().toString(), taken.mark().orElseThrow());
        made.put(word, recording);
        write();
    }

    /** Shows a session the recording of its word, where there is one that is marked. */
    boolean show(RecordingSession session) throws Refused {
        Optional<Path> file = recording(session.word());
        Optional<Mark> mark = file.map(named -> marks.get(named.getFileName().toString()));
        if (mark.isPresent()) {
            session.show(reader.read(file.get()), mark.get());
        }
        return mark.isPresent();
    }

    /** Writes down where the recording of a word is marked now. */
    void mark(String word, Mark mark) throws Refused {
        marks.put(recording(word).orElseThrow().getFileName().toString(), mark);
        write();
    }

    private Optional<Path> recording(String word) {
        return Optional.ofNullable(made.get(word))
                .or(() -> before.filesOf(word).stream().findFirst());
    }

    void write() throws Refused {
        TextFile.write(folder.resolve(MarkFile.NAME), MarkFile.print(marks));
    }
}
