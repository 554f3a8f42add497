package cuelead.song;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The one sentence that each unusable sound file gets: what, where, and what to try. */
final class Refusals {
    private static final String CHOOSE = "choose an MP3, WAV, AIFF, OGG, FLAC or M4A file.";

    private Refusals() {}

    static Refused missing(Path file) {
        return new Refused(file + " is not there: look for a slip in its name, or give its whole path.");
    }

    static Refused folder(Path file) {
        return new Refused(file + " is a folder: name one of the sound files in it.");
    }

    static Refused unreadable(Path file, IOException cause) {
        if (cause instanceof NoSuchFileException) {
            return missing(file);
        }
        return cause instanceof AccessDeniedException
                ? new Refused(file + " may not be read by you: change its permissions, or copy it elsewhere.", cause)
                : new Refused(file + " cannot be read: check the disk or the network that it lies on.", cause);
    }

    static Refused empty(Path file) {
        return new Refused(file + " is empty (0 bytes): copy or download it again.");
    }

    static Refused notSound(Path file, Content content) {
        return new Refused(file + " is not a sound file, it looks like " + content.says() + ": " + CHOOSE);
    }

    static Refused noFrames(Path file, Content content) {
        return new Refused(file + " looks like " + content.says()
                + " but holds nothing that can be played: copy or download it again, or " + CHOOSE);
    }

    static Refused freeBitRate(Path file) {
        return new Refused(file + " is MP3 sound of a free bit rate, which few programs can read: "
                + "convert it to an MP3 of a usual bit rate, or to FLAC or WAV.");
    }

    static Refused tooLong(Path file, String length, int mostSeconds) {
        return new Refused(file + " is " + length + " long, and the most is " + Clock.minutesSeconds(mostSeconds)
                + ": cut the wanted piece out of the recording with a sound editor and open that.");
    }

    static Refused tooBig(Path file, long neededBytes, long freeBytes) {
        return new Refused(file + " needs " + megabytes(neededBytes) + " of memory and only " + megabytes(freeBytes)
                + " are free: give Java more (java -Xmx1g), or cut the song out of the recording.");
    }

    static Refused noNativeCode(Path file, LinkageError cause) {
        return new Refused(
                file + " is OGG Vorbis sound, and the code that reads it does not run on this machine: "
                        + "convert the file to MP3, FLAC or WAV.",
                cause);
    }

    private static String megabytes(long bytes) {
        return bytes / 1_000_000 + " MB";
    }
}
