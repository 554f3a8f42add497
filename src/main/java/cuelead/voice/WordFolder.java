package cuelead.voice;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The recordings in a folder by what they say: "Kick-Ball_Change.mp3" says "kick ball change", "1.wav" says "one". Hidden
 * files, folders, and files that are not sound by their ending are passed over.
 *
 * @param files    file of each text ({@link SpeakableText}), in the order of the texts
 * @param problems names that say nothing, and several files for one word
 */
record WordFolder(Map<String, Path> files, List<Problem> problems) {
    private static final Set<String> SOUND_ENDINGS = Set.of(
            "wav", "wave", "mp3", "ogg", "oga", "flac", "aif", "aiff", "aifc", "m4a", "mp4", "aac", "opus", "wma",
            "caf", "amr", "3gp", "webm");

    /** @throws Refused when the folder is missing, is a file, or cannot be read */
    static WordFolder read(Path folder) throws Refused {
        Map<String, Path> files = new TreeMap<>();
        List<Problem> problems = new ArrayList<>();
        for (Path file : soundFiles(folder)) {
            Optional<String> text = SpeakableText.of(stem(file));
            if (text.isEmpty()) {
                problems.add(RecordingProblems.nameless(file));
                continue;
            }
            Path earlier = files.putIfAbsent(text.get(), file);
            if (earlier != null) {
                problems.add(RecordingProblems.twice(file, text.get(), earlier));
            }
        }
        if (files.isEmpty()) {
            problems.add(RecordingProblems.none(folder));
        }
        return new WordFolder(files, problems);
    }

    private static List<Path> soundFiles(Path folder) throws Refused {
        if (Files.notExists(folder)) {
            throw new Refused("The folder of recorded words " + folder
                    + " is not there: look for a slip in its name, or give its whole path.");
        }
        if (!Files.isDirectory(folder)) {
            throw new Refused(folder + " is not a folder: name the folder that holds the recorded words.");
        }
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, WordFolder::isSound)) {
            all.forEach(files::add);
        } catch (IOException | DirectoryIteratorException unreadable) {
            String why = unreadable instanceof AccessDeniedException
                    ? " may not be read by you: change its permissions, or copy it elsewhere."
                    : " cannot be read: check the disk or the network that it lies on.";
            throw new Refused("The folder of recorded words " + folder + why, unreadable);
        }
        files.sort(Comparator.comparing(
                        (Path file) -> file.getFileName().toString().toLowerCase(Locale.ROOT))
                .thenComparing(file -> file.getFileName().toString()));
        return files;
    }

    private static boolean isSound(Path file) {
        String name = file.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && SOUND_ENDINGS.contains(ending) && !Files.isDirectory(file);
    }

    private static String stem(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.lastIndexOf('.')).replace('_', ' ').replace('-', ' ');
    }
}
