package cuelead.cli;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalProvider;

/** How wide the terminal of standard output is. */
final class TerminalWidth {
    static final int USUAL_COLUMNS = 80;

    /** Ways to ask the system, the quickest first. */
    private static final List<String> PROVIDERS = List.of("jni", "exec");

    private TerminalWidth() {}

    /** Asks the system, then the environment, then takes the usual. */
    static int ofOutput(Map<String, String> environment) {
        for (String provider : PROVIDERS) {
            try {
                int columns = TerminalProvider.load(provider).systemStreamWidth(SystemStream.Output);
                if (columns > 1) {
                    return columns;
                }
            } catch (IOException | RuntimeException | LinkageError notOnThisSystem) {
                // the next one may know
            }
        }
        return named(environment.getOrDefault("COLUMNS", ""));
    }

    private static int named(String columns) {
        return columns.matches("[1-9]\\d{1,3}") ? Integer.parseInt(columns) : USUAL_COLUMNS;
    }
}
