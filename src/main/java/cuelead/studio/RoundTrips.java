package cuelead.studio;

import cuelead.output.TextFile;
import cuelead.report.Refused;
import cuelead.report.UserText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The round trips of pairs of devices, as they were measured last: a text file with a line a pair, milliseconds, a tab, and
 * the day and both names.
 */
final class RoundTrips {
    private static final String HEAD =
            "# How late microphones are, as Cuelead measured it: milliseconds, day, microphone,"
                    + " sound device. Delete lines, or the whole file, as you like.\n";
    private static final int PARTS = 4;
    private static final double MILLIS_A_SECOND = 1_000;

    private final Path file;
    private final Map<String, Kept> kept = new LinkedHashMap<>();

    /** One of them. */
    record Kept(double seconds, String day) {}

    private RoundTrips(Path file) {
        this.file = file;
    }

    /** @throws Refused when a line of the file is not as Cuelead writes it */
    static RoundTrips read(Path file) throws Refused {
        RoundTrips all = new RoundTrips(file);
        if (Files.exists(file)) {
            int number = 0;
            for (String line :
                    UserText.read(file, "The list of round trips").lines().toList()) {
                number++;
                if (!line.isBlank() && !line.startsWith("#")) {
                    all.add(line, number);
                }
            }
        }
        return all;
    }

    private void add(String line, int number) throws Refused {
        String[] parts = line.split("\t", PARTS);
        try {
            if (parts.length == PARTS) {
                kept.put(
                        parts[2] + "\t" + parts[3], new Kept(Double.parseDouble(parts[0]) / MILLIS_A_SECOND, parts[1]));
                return;
            }
        } catch (NumberFormatException noNumber) {
            // told below, as for a line with too few parts
        }
        throw new Refused(
                file + ":" + number + ":1: this line is no round trip as Cuelead writes it; delete the line.");
    }

    Optional<Kept> of(String microphone, String speakers) {
        return Optional.ofNullable(kept.get(key(microphone, speakers)));
    }

    void keep(String microphone, String speakers, double seconds, LocalDate day) throws Refused {
        kept.put(key(microphone, speakers), new Kept(seconds, day.toString()));
        StringBuilder text = new StringBuilder(HEAD);
        kept.forEach((names, value) -> text.append(
                String.format(Locale.ROOT, "%.2f\t%s\t%s%n", MILLIS_A_SECOND * value.seconds(), value.day(), names)));
        TextFile.write(file, text.toString());
    }

    private static String key(String microphone, String speakers) {
        return microphone.replace('\t', ' ') + "\t" + speakers.replace('\t', ' ');
    }
}
