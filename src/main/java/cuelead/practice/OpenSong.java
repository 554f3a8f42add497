package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.BeatFit;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.time.BeatGrid;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A song with its beats, still loading.
 *
 * @param problems what is doubtful about its beats
 */
record OpenSong(Song song, BeatGrid grid, List<Problem> problems) {
    /** The song that the user or the sheet names; empty when it is to be practised without music. */
    static Optional<OpenSong> of(Wish wish, Dance dance, Places places, Progress progress) throws Refused {
        if (wish.tempo().isPresent()) {
            if (wish.song().isPresent()) {
                throw new Refused("A tempo is for practice without music: leave out the song "
                        + wish.song().get() + ", or the tempo.");
            }
            return Optional.empty();
        }
        String named = dance.header().song();
        if (wish.song().isEmpty() && named.isEmpty()) {
            return Optional.empty();
        }
        Path file = wish.song().isPresent() ? wish.song().get() : SongPlace.find(named, wish.sheet(), places.working());
        return Optional.of(open(file, wish, new SongMemory(places, progress)));
    }

    private static OpenSong open(Path file, Wish wish, SongMemory memory) throws Refused {
        Song song = SongFile.open(file, wish.rate());
        try {
            return withBeats(song, memory);
        } catch (Refused | RuntimeException | Error e) {
            song.close();
            throw e;
        }
    }

    private static OpenSong withBeats(Song song, SongMemory memory) throws Refused {
        Path beatFile = BeatFile.beside(song.file());
        if (!Files.exists(beatFile)) {
            return new OpenSong(song, memory.heardBeats(song), List.of());
        }
        BeatFile.Reading reading = BeatFile.read(beatFile);
        List<Problem> problems = new ArrayList<>(reading.problems());
        if (BeatFile.isUsers(reading)) {
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
        return new OpenSong(song, reading.beats().orElseThrow(), problems);
    }
}
