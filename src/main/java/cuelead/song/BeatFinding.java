package cuelead.song;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;

/** Finds the beats of songs: in their beat files, or by listening, which then makes the beat file. Thread-safe. */
public final class BeatFinding {
    /** A tempo to begin tapping with. */
    private static final Tempo USUAL = new Tempo(110);

    private final Ear ear;
    private final Unheard unheard;

    /** What is done with a song that has no steady beat. */
    public enum Unheard {
        IS_REFUSED,
        /** Even beats stand for those that the user will tap. */
        GETS_EVEN_BEATS
    }

    /** What is done with a beat file that is there. */
    public enum Known {
        /** It is read. */
        READ,
        /** It is made anew, where it is Cuelead's own. */
        LISTEN_AGAIN
    }

    /**
     * What came of one song.
     *
     * @param hearing  the beats
     * @param comments of the beat file, as they stand in it
     * @param problems what is doubtful about the beat file
     */
    public record Found(Hearing hearing, List<String> comments, List<Problem> problems) {}

    /** Finds by listening with an ear, which may be shared. */
    public BeatFinding(Ear ear, Unheard unheard) {
        this.ear = ear;
        this.unheard = unheard;
    }

    /**
     * The beats of one song.
     *
     * @param beatFile where they are or shall be
     * @param progress told the share that is done while it listens
     * @throws Refused when it has none, a user's would be written over, or a file cannot be read or written
     */
    public Found find(Path song, Path beatFile, Known known, DoubleConsumer progress) throws Refused {
        if (!Files.exists(beatFile)) {
            return listen(song, beatFile, progress);
        }
        BeatFile.Reading reading = BeatFile.read(beatFile);
        checkOwner(song, beatFile, reading);
        if (known == Known.READ) {
            return read(song, beatFile, reading);
        }
        if (BeatFile.isUsers(reading)) {
            throw new Refused(beatFile + " was written or corrected by hand, and listening again would lose that: move"
                    + " it away first, or name another file with -o.");
        }
        return listen(song, beatFile, progress);
    }

    private static void checkOwner(Path song, Path beatFile, BeatFile.Reading reading) throws Refused {
        Optional<SongNote> owner = SongNote.in(reading.comments());
        if (owner.isPresent()) {
            SongNote asked = note(song);
            if (!owner.get().canBe(asked)) {
                throw new Refused(beatFile + " holds the beats of another song (" + owner.get() + "), not those of "
                        + asked + ": name another file with -o, or take this one away.");
            }
        }
    }

    private static SongNote note(Path song) throws Refused {
        return new SongNote(song.getFileName().toString(), Ear.lengthSeconds(song));
    }

    private Found listen(Path song, Path beatFile, DoubleConsumer progress) throws Refused {
        Optional<Hearing> heard = ear.listen(song, progress);
        if (heard.isEmpty() && unheard == Unheard.GETS_EVEN_BEATS) {
            return new Found(evenBeats(song), List.of(), List.of());
        }
        Hearing hearing =
                heard.orElseThrow(() -> new Refused(song + " has no steady beat here: nothing in it can be counted."
                        + " Tap its beats (cuelead beats --tap), or practise at a tempo (--tempo 104)."));
        BeatFile.writeHeard(beatFile, hearing, note(song));
        return new Found(hearing, BeatFile.read(beatFile).comments(), List.of());
    }

    private static Hearing evenBeats(Path song) throws Refused {
        int beats = (int) Math.max(2, Ear.lengthSeconds(song) / USUAL.secondsPerBeat());
        return new Hearing(BeatGrid.steady(USUAL, 0, beats, 4), List.of(), OptionalDouble.empty());
    }

    private static Found read(Path song, Path beatFile, BeatFile.Reading reading) throws Refused {
        List<Problem> problems = new ArrayList<>(reading.problems());
        Optional<Hearing> hearing = BeatFile.hearing(reading);
        if (hearing.isPresent() && BeatFile.isUsers(reading)) {
            problems.addAll(BeatFit.check(beatFile.toString(), hearing.get().beats(), Ear.lengthSeconds(song)));
        }
        Optional<Problem> error = problems.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .findFirst();
        if (error.isPresent()) {
            throw new Refused(error.get().message());
        }
        return new Found(hearing.orElseThrow(), reading.comments(), problems);
    }
}
