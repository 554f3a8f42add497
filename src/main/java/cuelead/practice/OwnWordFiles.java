package cuelead.practice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.SongFile;
import cuelead.song.WholeSound;
import cuelead.voice.MonoSound;
import cuelead.voice.WordFileReader;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Reads recorded words with the decoders of songs. Thread-safe. */
final class OwnWordFiles implements WordFileReader {
    private final ConcurrentLinkedQueue<Problem> problems = new ConcurrentLinkedQueue<>();

    @Override
    public MonoSound read(Path file) throws Refused {
        WholeSound sound = SongFile.readAll(file);
        problems.addAll(sound.problems());
        return new MonoSound(sound.monoSamples(), sound.rate());
    }

    /** What is damaged or misnamed and could be used all the same, in the order of the names. */
    List<Problem> problems() {
        return problems.stream().sorted(Comparator.comparing(Problem::file)).toList();
    }
}
