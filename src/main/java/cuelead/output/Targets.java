package cuelead.output;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Keeps what is written from writing over what the user made. */
public final class Targets {
    /** What other programs take for it. */
    private static final String STANDARD_OUTPUT = "-";

    private Targets() {}

    /** Refuses what can be told to fail before any work is done. */
    public static void checkSoundFile(Path file) throws Refused {
        checkIsFile(file);
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".wav")) {
            throw new Refused("This is written as a WAV file only; name it " + withoutEnding(file) + ".wav, not "
                    + file.getFileName() + ".");
        }
        checkParent(file);
    }

    /** The same for a picture. */
    public static void checkPicture(Path file) throws Refused {
        checkIsFile(file);
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".png")) {
            throw new Refused("The picture is written as a PNG file only; name it " + withoutEnding(file) + ".png, not "
                    + file.getFileName() + ".");
        }
        checkParent(file);
    }

    /** The same for a practice track, whose ending names its format. */
    public static void checkTrack(Path file) throws Refused {
        checkIsFile(file);
        TrackFormat.of(file);
        checkParent(file);
    }

    private static void checkIsFile(Path file) throws Refused {
        if (file.toString().equals(STANDARD_OUTPUT)) {
            throw new Refused("Sound is not written to standard output; name a file, such as mix.wav.");
        }
        if (Files.isDirectory(file)) {
            throw new Refused("Cannot write " + file + ": that is a folder; add a file name such as mix.wav.");
        }
    }

    /** The same for a folder that files are put into. */
    public static void checkFolder(Path folder) throws Refused {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new Refused(folder + " is a file and not a folder; choose another place.");
        }
        checkParent(folder);
    }

    private static void checkParent(Path path) throws Refused {
        Path folder = path.toAbsolutePath().normalize().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw new Refused(
                    "Cannot write " + path + ": there is no folder " + folder + "; make it first or choose another.");
        }
    }

    /** A file's name alone. */
    public static String withoutEnding(Path file) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    /** Refuses to write over a file or folder that is read. */
    public static void checkNotRead(List<Path> written, List<Path> read) throws Refused {
        for (Path target : written) {
            for (Path source : read) {
                if (isSame(target, source)) {
                    throw new Refused(
                            "Cannot write " + target + ": " + source + " is read for this; choose another name.");
                }
            }
        }
    }

    /** Refuses to write over a text that is there already: a user may have changed it, or it is another one. */
    public static void checkNew(Path file) throws Refused {
        if (Files.exists(file)) {
            throw new Refused("Cannot write " + file + ": it is there already, and nothing that you may have changed is"
                    + " written over; choose another name, or delete it first.");
        }
    }

    /** Refuses two files in one place. */
    public static void checkDifferent(Path mix, List<Path> others) throws Refused {
        for (Path other : others) {
            if (mix.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize())) {
                throw new Refused("Cannot write " + mix + ": it is also one of the stems; choose another name.");
            }
        }
    }

    private static boolean isSame(Path target, Path source) {
        try {
            return Files.exists(target) && Files.exists(source) && Files.isSameFile(target, source);
        } catch (IOException unreadable) {
            return false; // then it can be neither read nor written, which is told by whoever tries
        }
    }
}
