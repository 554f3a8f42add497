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
        Path folder = Custom.CACHE.folder(systemName, environment, home);
        return isWindows(systemName) ? folder.resolve("Cache") : folder;
    }

    /**
     * The user's folder for what he has made with the program: {@code %APPDATA%} on Windows,
     * {@code ~/Library/Application Support} on macOS, elsewhere that for data of the same specification.
     *
     * @param systemName the system, as Java calls it
     * @param home       the user's own folder
     */
    static Path kept(String systemName, Map<String, String> environment, Path home) {
        return Custom.DATA.folder(systemName, environment, home);
    }

    /**
     * Where systems have one kind of folder.
     *
     * @param windowsVariable names it on Windows
     * @param windowsFolder   where that is not set, within {@code AppData}
     * @param macFolder       within {@code Library}
     * @param xdgVariable     names it elsewhere
     * @param xdgFolder       where that is not set, within the user's own folder
     */
    private record Custom(
            String windowsVariable, String windowsFolder, String macFolder, String xdgVariable, String xdgFolder) {
        static final Custom CACHE = new Custom("LOCALAPPDATA", "Local", "Caches", "XDG_CACHE_HOME", ".cache");
        static final Custom DATA =
                new Custom("APPDATA", "Roaming", "Application Support", "XDG_DATA_HOME", ".local/share");

        Path folder(String systemName, Map<String, String> environment, Path home) {
            if (isWindows(systemName)) {
                return named(environment, windowsVariable)
                        .orElse(home.resolve("AppData").resolve(windowsFolder))
                        .resolve("Cuelead");
            }
            if (systemName.toLowerCase(Locale.ROOT).startsWith("mac")) {
                return home.resolve("Library").resolve(macFolder).resolve("Cuelead");
            }
            return named(environment, xdgVariable)
                    .filter(Path::isAbsolute)
                    .orElse(home.resolve(xdgFolder))
                    .resolve("cuelead");
        }
    }

    private static boolean isWindows(String systemName) {
        return systemName.toLowerCase(Locale.ROOT).startsWith("windows");
    }

    private static Optional<Path> named(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name))
                .filter(folder -> !folder.isBlank())
                .map(Path::of);
    }
}
