package cuelead.practice;

import cuelead.report.Refused;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the song that a sheet names lies: in the sheet's folder, its parent, or the working folder. */
public final class SongPlace {
    private SongPlace() {}

    /**
     * The file that a sheet means.
     *
     * @param named   the path as the sheet has it
     * @param working the working folder
     * @throws Refused when it is in none of them
     */
    public static Path find(String named, Path sheet, Path working) throws Refused {
        List<Path> tried = new ArrayList<>();
        for (Path folder : folders(sheet, working)) {
            Optional<Path> file = in(folder, named, sheet);
            if (file.isPresent() && Files.exists(file.get())) {
                return file.get();
            }
            tried.add(folder);
        }
        throw new Refused("The song \"" + named + "\" that " + sheet + " names is not in "
                + String.join(", ", tried.stream().map(Path::toString).toList())
                + "; give the song's file after the sheet, or a tempo (--tempo 104) to practise without music.");
    }

    private static List<Path> folders(Path sheet, Path working) {
        Path folder = sheet.toAbsolutePath().normalize().getParent();
        List<Path> folders = new ArrayList<>();
        folders.add(folder);
        if (folder.getParent() != null) {
            folders.add(folder.getParent());
        }
        folders.add(working.toAbsolutePath().normalize());
        return folders.stream().distinct().toList();
    }

    private static Optional<Path> in(Path folder, String named, Path sheet) throws Refused {
        try {
            return Optional.of(folder.resolve(named.replace('\\', '/')));
        } catch (InvalidPathException e) {
            throw new Refused(sheet + " names a song \"" + named + "\" that cannot be a file's name.", e);
        }
    }
}
