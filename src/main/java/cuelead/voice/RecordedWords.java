package cuelead.voice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;

/**
 * The user's own voice: a folder of sound files that are named after their words. A phrase is taken from its own file;
 * where there is none, it is joined from files of its parts ("rock recover" from "rock.wav" and "recover.wav"), the
 * fewest that make it up; where a part is missing, this voice does not say it. All files are read at once, so that all
 * that is wrong with them is known. Thread-safe.
 *
 * <p>A recording's perceptual centre is that of its {@link MarkFile}; where that has none it is heard ({@link WordInTake}).
 */
public final class RecordedWords implements Voice {
    /** Longer is not a call but something else in the wrong folder. */
    private static final double LONGEST_SECONDS = 5;

    private final RecordedClips clips;
    private final WordFileReader reader;
    private final Map<String, Clip> recorded = new ConcurrentHashMap<>();
    private final Map<String, Optional<Clip>> said = new ConcurrentHashMap<>();
    private final List<Problem> problems;
    private final Map<String, Mark> marks;

    /**
     * Reads all recordings.
     *
     * @param reader decodes a file; is called from several threads
     * @param rate   of the clips
     * @throws Refused when the folder is missing or cannot be read; a bad file in it is a problem instead
     */
    public RecordedWords(Path folder, WordFileReader reader, SampleRate rate) throws Refused {
        this.clips = new RecordedClips(rate);
        this.reader = reader;
        WordFolder words = WordFolder.read(folder);
        MarkFile.Read marked = MarkFile.read(folder);
        marks = marked.marks();
        ConcurrentLinkedQueue<Problem> found = new ConcurrentLinkedQueue<>(words.problems());
        found.addAll(marked.problems());
        words.files().entrySet().parallelStream().forEach(word -> found.addAll(record(word.getKey(), word.getValue())));
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparing(Problem::file));
        this.problems = List.copyOf(sorted);
    }

    /** What is wrong with the recordings, in the order of their names; the words concerned are not said. */
    public List<Problem> problems() {
        return problems;
    }

    @Override
    public Optional<Clip> say(String words) {
        return said.computeIfAbsent(words, this::find);
    }

    /** All files have been read. */
    @Override
    public boolean isAtHand(String words) {
        return true;
    }

    private List<Problem> record(String text, Path file) {
        MonoSound sound;
        try {
            sound = reader.read(file);
        } catch (Refused refusal) {
            return List.of(RecordingProblems.unreadable(file, text, refusal));
        }
        MonoSound clean = Rumble.removed(sound);
        Optional<AudibleSpan> span = SpokenPart.of(clean);
        if (span.isEmpty()) {
            return List.of(RecordingProblems.silent(file, text));
        }
        double seconds =
                clean.rate().secondsAt(span.get().endFrame() - span.get().startFrame());
        if (seconds > LONGEST_SECONDS) {
            return List.of(RecordingProblems.tooLong(file, text, seconds, LONGEST_SECONDS));
        }
        WordInTake word = WordInTake.of(clean, text).orElseThrow();
        Optional<Mark> mark = Optional.ofNullable(marks.get(file.getFileName().toString()));
        Optional<Mark> fitting = mark.filter(known -> known.fits(sound.lengthSeconds()));
        double centre = fitting.map(Mark::centreSeconds).orElseGet(() -> word.centreSeconds(clean));
        recorded.put(text, clips.cut(text, clean, word.span(), centre));
        return mark.isPresent() && fitting.isEmpty()
                ? List.of(RecordingProblems.markOfAnother(file, mark.get()))
                : List.of();
    }

    private Optional<Clip> find(String words) {
        return SpeakableText.of(words)
                .flatMap(text -> parts(List.of(text.split(" "))))
                .map(parts -> clips.joined(words, parts));
    }

    /** The fewest recordings that say the words in their order; of equally few, the longer first. */
    private Optional<List<Clip>> parts(List<String> words) {
        Optional<List<Clip>> fewest = Optional.empty();
        for (int length = words.size(); length > 0; length--) {
            Clip head = recorded.get(String.join(" ", words.subList(0, length)));
            if (head == null) {
                continue;
            }
            List<String> rest = words.subList(length, words.size());
            Optional<List<Clip>> tail = rest.isEmpty() ? Optional.of(List.of()) : parts(rest);
            if (tail.isPresent()
                    && (fewest.isEmpty() || tail.get().size() + 1 < fewest.get().size())) {
                List<Clip> all = new ArrayList<>(List.of(head));
                all.addAll(tail.get());
                fewest = Optional.of(all);
            }
        }
        return fewest;
    }
}
