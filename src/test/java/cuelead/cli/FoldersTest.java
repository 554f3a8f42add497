package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/**
 * Linux: XDG Base Directory Specification 0.8, "all paths must be absolute ... relative should be ignored"; macOS:
 * Apple's "File system programming guide"; Windows: LOCALAPPDATA, KNOWNFOLDERID documentation. From memory.
 */
class FoldersTest {
    private static final Path HOME = Path.of("home", "dancer");

    @Test
    void linuxKeepsToTheSpecification() {
        assertEquals(HOME.resolve(".cache/cuelead"), Folders.cache("Linux", Map.of(), HOME));
        assertEquals(HOME.resolve(".cache/cuelead"), Folders.cache("Linux", Map.of("XDG_CACHE_HOME", "rel"), HOME));
        assertEquals(HOME.resolve(".cache/cuelead"), Folders.cache("Linux", Map.of("XDG_CACHE_HOME", ""), HOME));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void linuxLetsTheUserChoose() {
        assertEquals(Path.of("/caches/cuelead"), Folders.cache("Linux", Map.of("XDG_CACHE_HOME", "/caches"), HOME));
    }

    @Test
    void theOthersHaveTheirOwn() {
        assertEquals(HOME.resolve("Library/Caches/Cuelead"), Folders.cache("Mac OS X", Map.of(), HOME));
        assertEquals(
                Path.of("local").resolve("Cuelead").resolve("Cache"),
                Folders.cache("Windows 11", Map.of("LOCALAPPDATA", "local"), HOME));
        assertEquals(HOME.resolve("AppData/Local/Cuelead/Cache"), Folders.cache("Windows 10", Map.of(), HOME));
    }

    @Test
    void whatTheUserMadeIsKeptApart() {
        assertEquals(HOME.resolve(".local/share/cuelead"), Folders.kept("Linux", Map.of(), HOME));
        assertEquals(Path.of("/data/cuelead"), Folders.kept("Linux", Map.of("XDG_DATA_HOME", "/data"), HOME));
        assertEquals(HOME.resolve(".local/share/cuelead"), Folders.kept("Linux", Map.of("XDG_DATA_HOME", "rel"), HOME));
        assertEquals(HOME.resolve("Library/Application Support/Cuelead"), Folders.kept("Mac OS X", Map.of(), HOME));
        assertEquals(Path.of("roaming/Cuelead"), Folders.kept("Windows 11", Map.of("APPDATA", "roaming"), HOME));
    }
}
