package cuelead.window.sheet;

import cuelead.practice.SongPlace;
import cuelead.report.Refused;
import cuelead.window.frame.Host;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The song that a sheet names, for a copy that lies in another folder than the sheet did: it is looked for beside the
 * sheet, and taken in hand. Used on the thread of events.
 */
final class NamedSong {
    private final Host host;
    /** The name by which the song in hand was found; empty where it was not found by a name. */
    private String taken = "";

    NamedSong(Host host) {
        this.host = host;
    }

    /** Another sheet lies here. */
    void begin() {
        taken = "";
    }

    /**
     * The sheet names a song, perhaps another one than before; a song that the user has chosen stays.
     *
     * @param named may be empty, or the beginning of what is being typed
     * @param sheet the file that was chosen
     * @param copy  the file that holds the sheet now
     */
    void follow(String named, Path sheet, Path copy) {
        Optional<Path> song = host.inHand().song();
        if (named.isEmpty()) {
            return;
        }
        if (song.filter(file -> isNamed(file, named)).isPresent()) {
            taken = named;
            return;
        }
        boolean isMissing = song.isEmpty() && !copy.equals(sheet);
        boolean isAnother = song.filter(file -> isNamed(file, taken)).isPresent();
        if (isMissing || isAnother) {
            find(named, song.orElse(sheet)).ifPresent(file -> {
                taken = named;
                host.inHand().takeSong(file);
            });
        }
    }

    private static boolean isNamed(Path file, String named) {
        String name = named.substring(Math.max(named.lastIndexOf('/'), named.lastIndexOf('\\')) + 1);
        return String.valueOf(file.getFileName()).equals(name);
    }

    private Optional<Path> find(String named, Path beside) {
        try {
            return Optional.of(
                    SongPlace.find(named, beside, host.means().places().working()));
        } catch (Refused notThere) {
            return Optional.empty();
        }
    }
}
