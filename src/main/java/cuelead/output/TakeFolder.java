package cuelead.output;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;

/**
 * A folder of recorded words, with every take in the folder {@code takes} of it: {@code takes/rock-1.wav},
 * {@code takes/rock-2.wav}, and the accepted one again as {@code rock.wav}. Nothing is ever written over that is not kept
 * in {@code takes} as well; files are whole or not there.
 */
public final class TakeFolder {
    private static final String TAKES = "takes";
    /** How the names of takes end. */
    public static final String ENDING = ".wav";

    private final Path folder;
    private final OpensChannel opens;

    /**
     * Makes the folder where it is not there.
     *
     * @throws Refused when it cannot be made
     */
    public TakeFolder(Path folder) throws Refused {
        this(folder, OpensChannel.ON_DISK);
    }

    /** @param opens how a new file is opened */
    TakeFolder(Path folder, OpensChannel opens) throws Refused {
        this.folder = folder;
        this.opens = opens;
        try {
            Files.createDirectories(folder);
        } catch (IOException cannot) {
            throw WriteFailure.refusalInFolder(folder, cannot);
        }
    }

    /**
     * Keeps a take under the next number.
     *
     * @param stem the word as a file name, without ending
     * @return its file
     * @throws Refused when it cannot be written (a full disk); earlier takes are as they were
     */
    public Path keep(String stem, float[] mono, SampleRate rate) throws Refused, InterruptedException {
        Path take = next(stem, ENDING);
        new WavFile(opens).writeMono(mono, rate, WavFormat.PCM_16_ROUNDED, take);
        return take;
    }

    /**
     * Makes a take the recording of its word. What stood there before goes to the takes, unless it is one of them.
     *
     * @param standing files that say the same word now
     * @return the recording
     * @throws Refused when it cannot be written; what stood there stands there still
     */
    public Path accept(Path take, String stem, List<Path> standing) throws Refused, InterruptedException {
        Path target = folder.resolve(stem + ENDING);
        for (Path old : standing) {
            setAside(old, stem);
        }
        new WholeWriting(opens).write(target, channel -> {
            try (FileChannel from = FileChannel.open(take, StandardOpenOption.READ)) {
                for (long at = 0; at < from.size(); ) {
                    at += from.transferTo(at, from.size() - at, channel);
                }
            }
        });
        return target;
    }

    /** A copy first, so that the word is never without a recording. */
    private void setAside(Path old, String stem) throws Refused {
        try {
            if (!isKept(old, stem)) {
                String name = old.getFileName().toString();
                Path kept = next(stem, name.substring(name.lastIndexOf('.')));
                Files.copy(old, kept, StandardCopyOption.COPY_ATTRIBUTES);
            }
            if (!old.getFileName().toString().equals(stem + ENDING)) {
                Files.delete(old);
            }
        } catch (IOException cannot) {
            throw WriteFailure.refusalInFolder(folder, cannot);
        }
    }

    private boolean isKept(Path old, String stem) throws IOException {
        for (int number = 1; number < number(stem); number++) {
            Path take = takes().resolve(stem + "-" + number + ENDING);
            if (Files.exists(take) && Files.mismatch(take, old) < 0) {
                return true;
            }
        }
        return false;
    }

    private Path takes() {
        return folder.resolve(TAKES);
    }

    private Path next(String stem, String ending) throws Refused {
        try {
            Files.createDirectories(takes());
            return takes().resolve(stem + "-" + number(stem) + ending);
        } catch (IOException cannot) {
            throw WriteFailure.refusalInFolder(folder, cannot);
        }
    }

    /** The first number that no take of the word has. */
    private int number(String stem) throws IOException {
        int highest = 0;
        if (!Files.isDirectory(takes())) {
            return 1;
        }
        try (var all = Files.newDirectoryStream(takes(), file -> isTake(file, stem))) {
            for (Path take : all) {
                String name = take.getFileName().toString();
                highest = Math.max(highest, Integer.parseInt(name.substring(stem.length() + 1, name.lastIndexOf('.'))));
            }
        }
        return highest + 1;
    }

    private static boolean isTake(Path file, String stem) {
        String name = file.getFileName().toString();
        return name.startsWith(stem + "-") && name.substring(stem.length()).matches("-\\d{1,6}\\.\\w+");
    }
}
