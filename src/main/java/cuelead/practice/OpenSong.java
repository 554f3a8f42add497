package cuelead.practice;

import cuelead.dance.Dance;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.BeatFit;
import cuelead.song.Song;
import cuelead.song.SongCache;
import cuelead.song.SongFacts;
import cuelead.song.SongFile;
import cuelead.song.SongHash;
import cuelead.song.SongLoudness;
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
    private static final String LISTENING = "Listening to the song";

    /** The song that the user or the sheet names; empty when it is to be practised without music. */
    static Optional<OpenSong> of(Wish wish, Dance dance, Places places) throws Refused {
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
        return Optional.of(open(file, wish));
    }

    private static OpenSong open(Path file, Wish wish) throws Refused {
        Song song = SongFile.open(file, wish.rate());
        try {
            return withBeats(song);
        } catch (Refused | RuntimeException | Error e) {
            song.close();
            throw e;
        }
    }

    private static OpenSong withBeats(Song song) throws Refused {
        Path beatFile = BeatFile.beside(song.file());
        if (!Files.exists(beatFile)) {
            throw new Refused("There is no beat file " + beatFile + " for the song " + song.file()
                    + "; write one (a line a beat: seconds, a tab, beat in the bar), or practise without music at a"
                    + " tempo (--tempo 104).");
        }
        BeatFile.Reading reading = BeatFile.read(beatFile);
        List<Problem> problems = new ArrayList<>(reading.problems());
        reading.beats()
                .ifPresent(beats -> problems.addAll(
                        BeatFit.check(beatFile.toString(), beats, song.pcm().lengthSeconds())));
        Optional<Problem> error = problems.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .findFirst();
        if (error.isPresent()) {
            throw new Refused(error.get().message());
        }
        return new OpenSong(song, reading.beats().orElseThrow(), problems);
    }

    /** K-weighted powers of the song's blocks: remembered, or measured now, which takes the whole song. */
    float[] musicPowers(Places places, Progress progress) throws Refused {
        SongCache cache = new SongCache(places.cache().resolve("songs"));
        SongHash hash = SongHash.of(song.file());
        Optional<SongFacts> known = cache.find(hash);
        if (known.isPresent()) {
            return known.get().loudness().blockPowers();
        }
        SongLoudness loudness = measure(progress);
        cache.remember(hash, new SongFacts(song.pcm().rate(), song.pcm().lengthFrames(), loudness, Optional.empty()));
        return loudness.blockPowers();
    }

    private SongLoudness measure(Progress progress) throws Refused {
        try {
            Optional<SongLoudness> measured = SongLoudness.measure(song.pcm(), done -> progress.at(LISTENING, done));
            LoadEnd.check(song);
            return measured.orElseThrow(() -> new Refused(
                    "The song " + song.file() + " is silent from beginning to" + " end; try another copy of it."));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refused("Listening to " + song.file() + " was broken off.", e);
        }
    }
}
