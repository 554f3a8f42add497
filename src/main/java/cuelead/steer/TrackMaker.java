package cuelead.steer;

import cuelead.lesson.Lesson;
import cuelead.lesson.Pace;
import cuelead.lesson.Pass;
import cuelead.lesson.UsualLesson;
import cuelead.output.Targets;
import cuelead.output.TrackFile;
import cuelead.output.TrackFormat;
import cuelead.output.TrackTags;
import cuelead.practice.CallsGo;
import cuelead.practice.CountedSound;
import cuelead.practice.Places;
import cuelead.practice.Practice;
import cuelead.practice.Progress;
import cuelead.practice.Track;
import cuelead.practice.Walkthrough;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.Song;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes practice tracks of one dance, each at a pace of its own. Used on one thread. */
public final class TrackMaker {
    private final Wish wish;
    private final Places places;
    private final Tempo full;
    private final Optional<Path> song;

    /** What a track holds. */
    public enum Content {
        /** The dance with its calls, over its song or over clicks. */
        DANCE,
        /** The song alone, slower or faster. */
        SONG,
        /** The usual lesson. */
        WALKTHROUGH
    }

    /**
     * Finds out how fast the dance is at full speed.
     *
     * @param wish a dance at full speed; what goes to an ear of its own live goes with the music into a file
     * @throws Refused when it cannot be practised
     */
    public TrackMaker(Wish wish, Places places, Progress progress) throws Refused {
        this.wish = wish.callsGo() == CallsGo.APART
                ? wish.again().callsGo(CallsGo.WITH_THE_MUSIC).wish()
                : wish;
        this.places = places;
        try (Practice practice = Practice.prepareToPlay(this.wish, places, progress)) {
            full = practice.timeline().grid().medianTempo();
            song = practice.song().map(Song::file);
        }
    }

    /** Pulls a track that can be read to its end into a file; it is whole or not there. */
    public static void write(Track track, TrackTags tags, Path file, Progress progress)
            throws Refused, InterruptedException {
        CountedSound mix = new CountedSound(track.mix(), track.toFrame() - track.fromFrame(), "Writing", progress);
        new TrackFile().write(mix, track.rate(), tags, file);
    }

    /**
     * Writes one.
     *
     * @param file     its ending names the format
     * @param progress told how far it is
     * @throws Refused              when it cannot be made or written, or would write over what is read for it
     * @throws InterruptedException when the thread is interrupted; no file is left
     */
    public void make(Content content, Pace pace, Path file, Progress progress) throws Refused, InterruptedException {
        Targets.checkTrack(file);
        Targets.checkNotRead(List.of(file), read());
        if (content == Content.SONG) {
            SongCopy copy = new SongCopy(
                    song.orElseThrow(() -> new Refused("The dance has no song: choose one first.")), file, speed(pace));
            copy.check();
            copy.write(places, progress);
            return;
        }
        try (Practice practice = Practice.prepare(at(pace), places, progress)) {
            TrackFormat.of(file).checkRate(practice.rate());
            practice.await(practice.toFrame(), progress);
            String title = practice.dance().header().title();
            if (content == Content.WALKTHROUGH) {
                Walkthrough walkthrough = practice.walkthrough(lesson(practice));
                write(walkthrough.track(), new TrackTags(title + ", walkthrough", walkthrough.full()), file, progress);
            } else {
                TrackTags tags = new TrackTags(title, practice.timeline().grid().medianTempo());
                write(practice, tags, file, progress);
            }
        }
    }

    private List<Path> read() {
        List<Path> read = new ArrayList<>(List.of(wish.sheet()));
        song.ifPresent(file -> {
            read.add(file);
            read.add(BeatFile.beside(file));
        });
        return read;
    }

    private Lesson lesson(Practice practice) {
        return UsualLesson.of(practice.dance(), song.isPresent() ? Pass.Over.MUSIC : Pass.Over.CLICKS);
    }

    private Wish at(Pace pace) throws Refused {
        return song.isPresent()
                ? wish.again().speed(speed(pace)).wish()
                : wish.again().tempo(Optional.of(pace.at(full))).wish();
    }

    /** A share of full speed is that of the song to the last digit, whatever its tempo. */
    private Speed speed(Pace pace) throws Refused {
        if (pace instanceof Pace.Share share) {
            return Speed.of(share.ofFull());
        }
        Tempo tempo = pace.at(full);
        double ratio = tempo.beatsPerMinute() / full.beatsPerMinute();
        if (!Speed.isSpeed(ratio)) {
            throw new Refused(
                    "The song has " + Math.round(full.beatsPerMinute()) + " beats a minute and can be played at "
                            + Math.round(Math.ceil(full.beatsPerMinute() * Speed.SLOWEST.ratio())) + " to "
                            + Math.round(Math.floor(full.beatsPerMinute() * Speed.FASTEST.ratio()))
                            + "; choose a tempo in between.");
        }
        return Speed.of(ratio);
    }
}
