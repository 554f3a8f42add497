package cuelead.steer;

import cuelead.output.Targets;
import cuelead.practice.KnownBeats;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.DanceBegin;
import cuelead.song.Hearing;
import cuelead.song.Song;
import cuelead.song.SongNote;
import cuelead.time.Speed;
import cuelead.time.TimeMap;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The beats of a slower or faster copy of a song, beside the copy: those of the song where they are heard in it.
 *
 * @param song  the song's file
 * @param copy  its copy
 * @param speed of the copy
 */
record CopiedBeats(Path song, Path copy, Speed speed) {
    private Path file() {
        return BeatFile.beside(copy);
    }

    /** Refuses to write over beats that are those of another song, or that a user has written or put right. */
    void check() throws Refused {
        if (isSame(file(), BeatFile.beside(song))) {
            throw new Refused("Cannot write " + copy + ": the song and its copy would have one beat file, " + file()
                    + "; choose another name, such as " + Targets.withoutEnding(song) + "-slow.");
        }
        if (Files.exists(file()) && !BeatFile.isOwn(BeatFile.read(file()), copy)) {
            throw new Refused("Cannot write " + copy + ": beside it is " + file()
                    + ", which was written or corrected by hand or for another song; choose another name, or move that"
                    + " file away first.");
        }
    }

    private static boolean isSame(Path one, Path other) {
        return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
    }

    /** Gives their file. */
    Path write(KnownBeats beats, Song original) throws Refused {
        TimeMap map = TimeMap.even(speed);
        double hz = original.pcm().rate().hz();
        DoubleUnaryOperator inCopy = seconds -> map.outputAt(seconds * hz) / hz;
        Hearing moved = beats.hearing().timed(inCopy);
        List<DanceBegin> begins = DanceBegin.all(beats.comments()).stream()
                .map(begin -> begin.at(inCopy.applyAsDouble(begin.seconds())))
                .toList();
        SongNote note =
                new SongNote(copy.getFileName().toString(), original.pcm().lengthSeconds() / speed.ratio());
        if (beats.source() == KnownBeats.Source.USER) {
            BeatFile.writeMoved(file(), moved, note, begins);
        } else {
            BeatFile.writeHeard(file(), moved, note, begins);
        }
        return file();
    }
}
