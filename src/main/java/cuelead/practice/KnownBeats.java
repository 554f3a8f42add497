package cuelead.practice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.BeatFit;
import cuelead.song.Hearing;
import cuelead.song.Song;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The beats of a song as they are danced to: those of its beat file, else as they are heard.
 *
 * @param hearing  the beats
 * @param source   where they come from
 * @param problems what is doubtful about them
 * @param comments of their beat file; none where there is none
 */
public record KnownBeats(Hearing hearing, Source source, List<Problem> problems, List<String> comments) {
    /** Where beats come from. */
    public enum Source {
        /** Heard, now or before, and left as they were. */
        HEARD,
        /** Written or put right by a user. */
        USER
    }

    public KnownBeats {
        problems = List.copyOf(problems);
        comments = List.copyOf(comments);
    }

    /**
     * Reads or hears them; what is heard is remembered.
     *
     * @param progress told how far it is while it listens
     * @throws Refused when the beat file has errors, or no steady beat is heard
     */
    public static KnownBeats of(Song song, Places places, Progress progress) throws Refused {
        return of(song, places, new SongMemory(places, progress));
    }

    static KnownBeats of(Song song, Places places, SongMemory memory) throws Refused {
        Path beatFile = places.beatFile(song.file());
        if (!Files.exists(beatFile)) {
            Hearing heard = new Hearing(memory.heardBeats(song), List.of(), OptionalDouble.empty());
            return new KnownBeats(heard, Source.HEARD, List.of(), List.of());
        }
        BeatFile.Reading reading = BeatFile.read(beatFile);
        List<Problem> problems = new ArrayList<>(reading.problems());
        Source source = BeatFile.isUsers(reading) ? Source.USER : Source.HEARD;
        if (source == Source.USER) {
            reading.beats()
                    .ifPresent(beats -> problems.addAll(
                            BeatFit.check(beatFile.toString(), beats, song.pcm().lengthSeconds())));
        }
        Optional<Problem> error = problems.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .findFirst();
        if (error.isPresent()) {
            throw new Refused(error.get().message());
        }
        return new KnownBeats(BeatFile.hearing(reading).orElseThrow(), source, problems, reading.comments());
    }
}
