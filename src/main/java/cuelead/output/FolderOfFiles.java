package cuelead.output;

import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.stream.Stream;

/**
 * Several files that belong together, put into a folder all at once. They are written into a hidden folder within
 * it and take their places when the last is whole. Closing it before that, and the end of the program, leaves the
 * folder as it was, or not there when it was not there. Other files in the folder stay.
 */
public final class FolderOfFiles implements AutoCloseable {
    private final Path folder;
    private final Path staging;
    private final boolean isNew;
    private final Thread atExit = new Thread(this::deleteLeftOvers, "cuelead-delete-unfinished");

    private FolderOfFiles(Path folder, Path staging, boolean isNew) {
        this.folder = folder;
        this.staging = staging;
        this.isNew = isNew;
    }

    /**
     * Begins to fill a folder.
     *
     * @param folder is made when it is not there; its parent must be there
     * @throws Refused when it cannot be written into
     */
    public static FolderOfFiles in(Path folder) throws Refused {
        boolean isNew = !Files.exists(folder);
        try {
            if (isNew) {
                Files.createDirectory(folder);
            }
            Path staging = folder.resolve("." + ProcessHandle.current().pid() + ".part");
            FolderOfFiles files = new FolderOfFiles(folder, staging, isNew);
            files.deleteStaging();
            Files.createDirectory(staging);
            Runtime.getRuntime().addShutdownHook(files.atExit);
            return files;
        } catch (FileAlreadyExistsException failure) {
            throw WriteFailure.refusalInFolder(folder, failure);
        } catch (IOException failure) {
            throw isNew && !Files.isDirectory(folder)
                    ? WriteFailure.refusal(folder, failure)
                    : WriteFailure.refusalInFolder(folder, failure);
        }
    }

    /**
     * Pulls a sound to its end into a file of 32-bit floats.
     *
     * @param name path within the folder, parts separated by {@code /}
     */
    public void addSound(String name, Sound sound, SampleRate rate) throws Refused, InterruptedException {
        add(name, file -> new WavFile().write(sound, rate, WavFormat.FLOAT_32, file));
    }

    /** The same for samples of one channel. */
    public void addMono(String name, float[] mono, SampleRate rate) throws Refused, InterruptedException {
        add(name, file -> new WavFile().writeMono(mono, rate, WavFormat.FLOAT_32, file));
    }

    /** The same for a text in UTF-8. */
    public void addText(String name, String text) throws Refused, InterruptedException {
        add(name, file -> TextFile.write(file, text));
    }

    @FunctionalInterface
    private interface Writing {
        void into(Path file) throws Refused, InterruptedException;
    }

    private void add(String name, Writing writing) throws Refused, InterruptedException {
        Path file = staging.resolve(name);
        try {
            Files.createDirectories(file.getParent());
            writing.into(file);
        } catch (IOException failure) {
            throw WriteFailure.refusalInFolder(folder, failure);
        } catch (Refused failure) {
            throw failure.getCause() instanceof IOException cause
                    ? WriteFailure.refusalInFolder(folder, cause)
                    : failure;
        }
    }

    /** Lets every file take its place, over older ones of the same name. */
    public void putInPlace() throws Refused {
        try (Stream<Path> staged = Files.walk(staging)) {
            List<Path> files = staged.filter(Files::isRegularFile).toList();
            for (Path file : files) {
                checkPlace(placeOf(file));
            }
            for (Path file : files) {
                Files.createDirectories(placeOf(file).getParent());
                move(file, placeOf(file));
            }
        } catch (IOException failure) {
            throw WriteFailure.refusalInFolder(folder, failure);
        }
    }

    private Path placeOf(Path staged) {
        return folder.resolve(staging.relativize(staged));
    }

    private static void checkPlace(Path place) throws IOException {
        if (Files.isDirectory(place)) {
            throw new FileSystemException(place + " is a folder");
        }
        if (Files.exists(place.getParent()) && !Files.isDirectory(place.getParent())) {
            throw new FileSystemException(place.getParent() + " is a file and not a folder");
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void close() {
        deleteLeftOvers();
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException e) {
            // the program is ending already, and the hook with it
        }
    }

    private void deleteLeftOvers() {
        try {
            deleteStaging();
            if (isNew && isEmpty(folder)) {
                Files.delete(folder);
            }
        } catch (IOException e) {
            // what cannot be deleted now is hidden, and is deleted by the next attempt
        }
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }

    private void deleteStaging() throws IOException {
        if (!Files.exists(staging)) {
            return;
        }
        Files.walkFileTree(staging, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path visited, IOException failure) throws IOException {
                Files.delete(visited);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
