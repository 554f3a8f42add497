package cuelead.cli;

import cuelead.output.Targets;
import cuelead.output.TrackFormat;
import cuelead.output.TrackTags;
import cuelead.practice.Practice;
import cuelead.practice.Track;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.Song;
import cuelead.steer.Caution;
import cuelead.steer.TrackMaker;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a practice track is written.
 *
 * @param file  its ending names the format
 * @param stems the folder for the track's parts, if they are wanted
 */
record TrackTarget(Surroundings surroundings, Path file, Optional<Path> stems) {
    /**
     * Refuses what can be told to fail before any work is done.
     *
     * @param furtherRead files that are read besides those of the wish
     */
    void check(Wish wish, Path... furtherRead) throws Refused {
        Targets.checkTrack(file);
        if (wish.rate().isPresent()) {
            TrackFormat.of(file).checkRate(wish.rate().get());
        }
        List<Path> targets = all();
        Targets.checkDifferent(file, targets.subList(1, targets.size()));
        List<Path> read = new ArrayList<>(List.of(furtherRead));
        read.add(wish.sheet());
        wish.song().ifPresent(read::add);
        Targets.checkNotRead(targets, read);
        if (stems.isPresent()) {
            Targets.checkFolder(stems.get());
            List<Path> clips = List.of(stems.get().resolve(Stems.CLIPS));
            Targets.checkNotRead(clips, wish.voice().ownWords().map(List::of).orElse(List.of()));
        }
    }

    /** The same with what is known once the practice is ready: the song that its sheet names, and its sample rate. */
    void check(Practice practice) throws Refused {
        Targets.checkNotRead(all(), filesOf(practice));
        TrackFormat.of(file).checkRate(practice.rate());
    }

    /** Every file that is written, but the clips. */
    private List<Path> all() {
        List<Path> all = new ArrayList<>(List.of(file));
        stems.ifPresent(folder -> {
            all.add(folder.resolve(Stems.VOICE));
            all.add(folder.resolve(Stems.MUSIC));
            all.add(folder.resolve(Stems.PLAN));
            all.add(folder.resolve(Stems.SEGMENTS));
        });
        return all;
    }

    private static List<Path> filesOf(Practice practice) {
        return practice.song()
                .map(Song::file)
                .map(song -> List.of(song, BeatFile.beside(song)))
                .orElse(List.of());
    }

    /** Writes a track that can be read to its end. */
    void write(Track track, TrackTags tags) throws Refused, InterruptedException {
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            TrackMaker.write(track, tags, file, progress);
            if (stems.isPresent()) {
                new Stems(track, progress).write(stems.get());
            }
        }
    }

    void remindOfLicence(Track track) {
        if (track.hasMusic()) {
            surroundings.err().println(Caution.OF_LICENCES);
        }
    }
}
