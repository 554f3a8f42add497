package cuelead.cli;

import cuelead.practice.Places;
import cuelead.steer.OpenAlDevices;
import cuelead.steer.SoundDevices;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Map;
import java.util.Optional;

/**
 * All that a command meets outside of itself.
 *
 * @param in          read only where the terminal says so
 * @param out         for what was asked for
 * @param err         for everything else
 * @param terminal    where these lead
 * @param environment the environment's variables
 * @param places      folders for the practice
 * @param kept        the folder for what the user has made in the window; may not exist yet
 * @param temporary   the system's temporary folder
 * @param program     the file or folder that the program was started from, where that is known
 * @param devices     what sound can come from
 */
record Surroundings(
        InputStream in,
        PrintStream out,
        PrintStream err,
        Terminal terminal,
        Map<String, String> environment,
        Places places,
        Path kept,
        Path temporary,
        Optional<Path> program,
        SoundDevices devices) {
    static Surroundings ofThisProcess() {
        Map<String, String> environment = System.getenv();
        Path home = Path.of(System.getProperty("user.home"));
        Path cache = Folders.cache(System.getProperty("os.name"), environment, home);
        Path kept = Folders.kept(System.getProperty("os.name"), environment, home);
        return new Surroundings(
                System.in,
                System.out,
                System.err,
                Terminal.ofThisProcess(),
                environment,
                new Places(cache, Path.of("").toAbsolutePath(), Optional.of(kept)),
                kept,
                Path.of(System.getProperty("java.io.tmpdir")),
                programFile(),
                new OpenAlDevices());
    }

    private static Optional<Path> programFile() {
        CodeSource source = Main.class.getProtectionDomain().getCodeSource();
        try {
            return source == null
                    ? Optional.empty()
                    : Optional.of(Path.of(source.getLocation().toURI()));
        } catch (URISyntaxException | IllegalArgumentException notAFile) {
            return Optional.empty();
        }
    }
}
