package cuelead.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the program's file. */
final class Version implements IVersionProvider {
    private static final String WRITTEN_BY_THE_BUILD = "/META-INF/maven/cuelead/cuelead/pom.properties";

    @Override
    public String[] getVersion() throws IOException {
        Properties properties = new Properties();
        try (InputStream file = Version.class.getResourceAsStream(WRITTEN_BY_THE_BUILD)) {
            if (file != null) {
                properties.load(file);
            }
        }
        return new String[] {"Cuelead " + properties.getProperty("version", "(not built into a file)")};
    }
}
