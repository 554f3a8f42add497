package cuelead.steer;

import cuelead.output.Rounding;
import cuelead.output.Targets;
import cuelead.output.TrackFile;
import cuelead.output.TrackFormat;
import cuelead.output.TrackTags;
import cuelead.practice.CountedSound;
import cuelead.practice.KnownBeats;
import cuelead.practice.Places;
import cuelead.practice.Progress;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.sound.SlowedMusic;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import cuelead.time.TimeMap;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A slower or faster copy of a song, with its beats beside it.
 *
 * @param song  the song's file
 * @param file  its copy; the ending names the format
 * @param speed of the copy
 */
public record SongCopy(Path song, Path file, Speed speed) {
    /**
     * What was written.
     *
     * @param songSeconds  the length of the song at its own speed
     * @param problems     what is doubtful about the song and its beats
     * @param beats        the copy's beat file, where it has one
     * @param withoutBeats why it has none
     */
    public record Written(
            double songSeconds, List<Problem> problems, Optional<Path> beats, Optional<String> withoutBeats) {
        public Written {
            problems = List.copyOf(problems);
        }
    }

    /** Refuses what can be told to fail before any work is done. */
    public void check() throws Refused {
        Targets.checkTrack(file);
        Targets.checkNotRead(List.of(file), List.of(song));
        copiedBeats().check();
    }

    private CopiedBeats copiedBeats() {
        return new CopiedBeats(song, file, speed);
    }

    /**
     * Writes it; a copy is of use without beats, too.
     *
     * @throws Refused              when the song cannot be read or the copy cannot be written
     * @throws InterruptedException when the thread is interrupted; no file is left
     */
    public Written write(Places places, Progress progress) throws Refused, InterruptedException {
        try (Song open = SongFile.open(song, Optional.empty())) {
            TrackFormat.of(file).checkRate(open.pcm().rate());
            List<Problem> problems = new ArrayList<>();
            Optional<KnownBeats> beats = Optional.empty();
            Optional<String> withoutBeats = Optional.empty();
            try {
                beats = Optional.of(KnownBeats.of(open, places, progress));
                problems.addAll(beats.get().problems());
            } catch (Refused without) {
                withoutBeats = Optional.of(without.getMessage());
            }
            open.awaitLoaded();
            write(open, beats, progress);
            problems.addAll(open.problems());
            Optional<Path> beatFile =
                    beats.isPresent() ? Optional.of(copiedBeats().write(beats.get(), open)) : Optional.empty();
            return new Written(open.pcm().lengthSeconds(), problems, beatFile, withoutBeats);
        }
    }

    private void write(Song open, Optional<KnownBeats> beats, Progress progress) throws Refused, InterruptedException {
        open.onsets().all();
        SlowedMusic slowed = open.slowed(TimeMap.even(speed));
        CountedSound copy = new CountedSound(slowed.whole(), slowed.lengthFrames(), "Writing", progress);
        Rounding rounding = speed.isOriginal() ? Rounding.NEAREST : Rounding.DITHERED;
        new TrackFile().write(copy, slowed.rate(), tags(beats), rounding, file);
    }

    /** {@code my-song at 75 %}, and its tempo where that is known. */
    private TrackTags tags(Optional<KnownBeats> beats) {
        String name = Targets.withoutEnding(song);
        String title = speed.isOriginal() ? name : name + " at " + Told.decimal(100 * speed.ratio()) + " %";
        return new TrackTags(
                title,
                beats.map(known -> known.hearing().beats().medianTempo().beatsPerMinute() * speed.ratio())
                        .map(Tempo::new));
    }
}
