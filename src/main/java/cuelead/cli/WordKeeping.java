package cuelead.cli;

import cuelead.output.TakeFolder;
import cuelead.output.TextFile;
import cuelead.report.Refused;
import cuelead.voice.FolderMarks;
import cuelead.voice.Mark;
import cuelead.voice.MarkFile;
import cuelead.voice.MonoSound;
import cuelead.voice.RecordingSession.Taken;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** Keeps takes, recordings and marks in a folder, each at once, so that nothing is lost whatever comes. */
final class WordKeeping {
    private final Path folder;
    private final TakeFolder takes;
    private final FolderMarks before;
    private final Map<String, Mark> marks;

    WordKeeping(Path folder, TakeFolder takes, FolderMarks before) {
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
        write();
    }

    void write() throws Refused {
        TextFile.write(folder.resolve(MarkFile.NAME), MarkFile.print(marks));
    }
}
