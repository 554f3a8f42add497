package cuelead.window.song;

import cuelead.practice.Places;
import cuelead.practice.Progress;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.BeatFinding;
import cuelead.song.Ear;
import cuelead.song.KeptBeats;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A song with its beats as they were found, and all that is needed to put them right.
 *
 * @param found    its beats
 * @param kept     their file; not there as long as they are only heard and nobody has asked for it
 * @param seconds  its length
 * @param problems what is doubtful about its file and its beats
 */
record LoadedSong(Path file, BeatFinding.Found found, KeptBeats kept, double seconds, List<Problem> problems) {
    private static final String LISTENING = "Listening to the song for its beats";

    /**
     * Reads or hears the beats of a song. Beats that are heard are remembered with what else is known of songs, and are
     * written to a beat file only when they are put right.
     */
    static LoadedSong load(Path song, Places places, Ear ear, Progress progress) throws Refused {
        Path apart = places.beats().orElse(places.cache().resolve("beats"));
        Path beatFile = BeatFile.of(song, apart);
        Path read = Files.exists(beatFile) ? beatFile : heardFile(song, places);
        BeatFinding.Found found = new BeatFinding(ear, BeatFinding.Unheard.GETS_EVEN_BEATS)
                .find(song, read, BeatFinding.Known.READ, done -> progress.at(LISTENING, done));
        KeptBeats kept = new KeptBeats(beatFile, BeatFile.apart(song, apart));
        return new LoadedSong(song, found, kept, Ear.lengthSeconds(song), found.problems());
    }

    private static Path heardFile(Path song, Places places) throws Refused {
        return BeatFile.apart(song, BeatFile.folder(places.cache().resolve("heard")));
    }

    /** Whether nothing in it could be counted, so that even beats stand for those that will be tapped. */
    boolean hasNoBeat() {
        return found.comments().isEmpty() && found.problems().isEmpty() && !Files.exists(kept.file());
    }
}
