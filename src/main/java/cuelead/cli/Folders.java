package cuelead.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The folders of each system's own custom for what a program may keep. */
final class Folders {
    private Folders() {}

    /**
     * The user's folder for what can be made again: {@code %LOCALAPPDATA%} on Windows, {@code ~/Library/Caches} on
     * macOS, elsewhere as the XDG Base Directory Specification 0.8 says (relative paths in it are ignored).
     *
     * @param systemName the system, as Java calls it
     * @param home       the user's own folder
     */
    static Path cache(String systemName, Map<String, String> environment, Path home) {
        String system = systemName.toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return named(environment, "LOCALAPPDATA")
                    .orElse(home.resolve("AppData").resolve("Local"))
                    .resolve("Cuelead")
                    .resolve("Cache");
        }
        if (system.startsWith("mac")) {
            return home.resolve("Library").resolve("Caches").resolve("Cuelead");
        }
        return named(environment, "XDG_CACHE_HOME")
                .filter(Path::isAbsolute)
                .orElse(home.resolve(".cache"))
                .resolve("cuelead");
    }

    /**
     * The user's folder for what he has made with the program: {@code %APPDATA%} on Windows,
     * {@code ~/Library/Application Support} on macOS, elsewhere that for data of the same specification.
     *
     * @param systemName the system, as Java calls it
     * @param home       the user's own folder
     */
    static Path kept(String systemName, Map<String, String> environment, Path home) {
        String system = systemName.toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return named(environment, "APPDATA")
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve("Cuelead");
        }
        if (system.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Cuelead");
        }
        return named(environment, "XDG_DATA_HOME")
                .filter(Path::isAbsolute)
                .orElse(home.resolve(".local").resolve("share"))
                .resolve("cuelead");
    }

    private static Optional<Path> named(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name))
                .filter(folder -> !folder.isBlank())
                .map(Path::of);
    }
}
