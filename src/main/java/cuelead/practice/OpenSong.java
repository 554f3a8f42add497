package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A song with its beats, still loading.
 *
 * @param comments of its beat file
 * @param problems what is doubtful about its beats
 */
record OpenSong(Song song, BeatGrid grid, List<String> comments, List<Problem> problems) {
    /** A dance, beginning where its user has set that by ear for this song. */
    Dance begun(Dance dance) {
        return SongDance.begun(dance, comments);
    }

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
        return Optional.of(open(file, wish, places, progress));
    }

    private static OpenSong open(Path file, Wish wish, Places places, Progress progress) throws Refused {
        Song song = SongFile.open(file, wish.rate());
        try {
            KnownBeats beats = KnownBeats.of(song, places, progress);
            return new OpenSong(song, beats.hearing().beats(), beats.comments(), beats.problems());
        } catch (Refused | RuntimeException | Error e) {
            song.close();
            throw e;
        }
    }
}
