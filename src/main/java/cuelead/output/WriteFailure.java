package cuelead.output;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/** Why a file could not be written, as the one sentence that a user reads. */
final class WriteFailure {
    private static final long NO_SPACE_BYTES = 1 << 16;

    private WriteFailure() {}

    static Refused refusal(Path target, IOException failure) {
        return new Refused("Cannot write " + target + ": " + reason(target, failure), failure);
    }

    /** The same for one of several files in a folder that the user named. */
    static Refused refusalInFolder(Path folder, IOException failure) {
        return new Refused("Cannot write into the folder " + folder + ": " + reasonInFolder(folder, failure), failure);
    }

    private static String reason(Path target, IOException failure) {
        Path folder = target.toAbsolutePath().getParent();
        if (Files.isDirectory(target)) {
            return "that is a folder; add a file name such as mix.wav.";
        }
        if (folder == null || !Files.exists(folder)) {
            return "there is no folder " + folder + "; make it first or choose another.";
        }
        return reasonInFolder(folder, failure);
    }

    private static String reasonInFolder(Path folder, IOException failure) {
        if (!Files.exists(folder) && !isDiskFull(folder, failure)) {
            return "that folder is not there and cannot be made; choose another place.";
        }
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            return folder + " is a file and not a folder; choose another place.";
        }
        if (failure instanceof SampleWriter.TooLongForWav) {
            return "it would be longer than a WAV file can be; write a shorter part with --from and --to.";
        }
        if (isDiskFull(folder, failure)) {
            return "the disk is full; make room or choose another folder.";
        }
        if (failure instanceof AccessDeniedException
                || failure instanceof NoSuchFileException
                || !Files.isWritable(folder)) {
            return "you may not write into that folder; choose another one.";
        }
        return failure.getMessage() + "; choose another place.";
    }

    private static boolean isDiskFull(Path folder, IOException failure) {
        String message = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
        return message.contains("no space left")
                || message.contains("not enough space")
                || message.contains("quota exceeded")
                || (!(failure instanceof FileSystemException) && usableBytes(folder) < NO_SPACE_BYTES);
    }

    private static long usableBytes(Path folder) {
        try {
            return Files.getFileStore(folder).getUsableSpace();
        } catch (IOException e) {
            return Long.MAX_VALUE; // unknown: then the failure's own words must do
        }
    }
}
