package cuelead.cli;

import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The songs that are meant where songs and folders are named. */
final class SongFolder {
    private static final List<String> SOUNDS =
            List.of(".mp3", ".wav", ".aif", ".aiff", ".ogg", ".flac", ".m4a", ".aac");

    private SongFolder() {}

    /** Each song once; of a folder every sound file in it, by name. */
    static List<Path> songs(List<Path> named) throws Refused {
        List<Path> songs = new ArrayList<>();
        for (Path path : named) {
            if (Files.isDirectory(path)) {
                songs.addAll(inFolder(path));
            } else {
                songs.add(path);
            }
        }
        return songs.stream().distinct().toList();
    }

    private static List<Path> inFolder(Path folder) throws Refused {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> songs = files.filter(SongFolder::isSound)
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
            if (songs.isEmpty()) {
                throw new Refused("There is no song in the folder " + folder + ": name another one.");
            }
            return songs;
        } catch (IOException broken) {
            throw new Refused("The folder " + folder + " cannot be read: check the disk that it lies on.", broken);
        }
    }

    private static boolean isSound(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return SOUNDS.stream().anyMatch(name::endsWith);
    }
}
