package cuelead.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the demo's sheet lies: under the working folder, or under the folder above that of the program's file. */
final class DemoFiles {
    static final Path SHEET = Path.of("cues", "lamp-on-the-quay.txt");

    private DemoFiles() {}

    /** The folders in which it is looked for. */
    static List<Path> folders(Surroundings surroundings) {
        List<Path> folders = new ArrayList<>(List.of(surroundings.places().working()));
        surroundings
                .program()
                .flatMap(file -> Optional.ofNullable(file.toAbsolutePath().getParent()))
                .flatMap(folder -> Optional.ofNullable(folder.getParent()))
                .ifPresent(folders::add);
        return folders.stream().distinct().toList();
    }

    static Optional<Path> sheet(Surroundings surroundings) {
        return folders(surroundings).stream()
                .map(folder -> folder.resolve(SHEET))
                .filter(Files::isRegularFile)
                .findFirst();
    }
}
