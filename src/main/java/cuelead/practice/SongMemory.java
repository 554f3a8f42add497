package cuelead.practice;

import cuelead.report.Refused;
import cuelead.song.Ear;
import cuelead.song.Hearing;
import cuelead.song.Song;
import cuelead.song.SongCache;
import cuelead.song.SongFacts;
import cuelead.song.SongHash;
import cuelead.song.SongLoudness;
import cuelead.sound.MusicPowers;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.Optional;

/** What was measured about songs: remembered from the last time, or measured now, which takes the whole song. */
public final class SongMemory {
    private static final String LOUDNESS = "Listening to the song";
    private static final String BEATS = "There is no beat file, so the beats are heard";

    private final SongCache cache;
    private final Progress progress;

    /**
     * What is remembered in those places.
     *
     * @param progress told while something is measured
     */
    public SongMemory(Places places, Progress progress) {
        this.cache = new SongCache(places.cache().resolve("songs"));
        this.progress = progress;
    }

    /** K-weighted powers of the song's blocks. */
    public MusicPowers powers(Song song) throws Refused {
        Optional<MusicPowers> known = knownPowers(song);
        return known.isPresent() ? known.get() : measuredPowers(song);
    }

    /** The same, if they are remembered. */
    Optional<MusicPowers> knownPowers(Song song) throws Refused {
        return cache.find(SongHash.of(song.file()))
                .map(facts -> facts.loudness().powers());
    }

    /** The same, measured and remembered. */
    MusicPowers measuredPowers(Song song) throws Refused {
        return remember(SongHash.of(song.file()), song, Optional.empty())
                .loudness()
                .powers();
    }

    /** The beats of a song that has no beat file. */
    BeatGrid heardBeats(Song song) throws Refused {
        SongHash hash = SongHash.of(song.file());
        Optional<SongFacts> known = cache.find(hash);
        Optional<BeatGrid> remembered = known.flatMap(SongFacts::beats);
        if (remembered.isPresent()) {
            return remembered.get();
        }
        BeatGrid heard = listen(song.file());
        if (known.isPresent()) {
            cache.remember(hash, known.get().withBeats(heard));
        } else {
            remember(hash, song, Optional.of(heard));
        }
        return heard;
    }

    private BeatGrid listen(Path song) throws Refused {
        return new Ear()
                .listen(song, done -> progress.at(BEATS, done))
                .map(Hearing::beats)
                .orElseThrow(() -> new Refused("No steady beat is heard in " + song + ", and it has no beat file; write"
                        + " one (a line a beat: seconds, a tab, beat in the bar), or practise without music at a tempo"
                        + " (--tempo 104)."));
    }

    private SongFacts remember(SongHash hash, Song song, Optional<BeatGrid> beats) throws Refused {
        SongLoudness loudness = measure(song);
        SongFacts facts = new SongFacts(song.pcm().rate(), song.pcm().lengthFrames(), loudness, beats);
        cache.remember(hash, facts);
        return facts;
    }

    private SongLoudness measure(Song song) throws Refused {
        try {
            Optional<SongLoudness> measured = SongLoudness.measure(song.pcm(), done -> progress.at(LOUDNESS, done));
            song.checkLoading();
            return measured.orElseThrow(() -> new Refused(
                    "The song " + song.file() + " is silent from beginning to end; try another copy of it."));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refused("Listening to " + song.file() + " was broken off.", e);
        }
    }
}
