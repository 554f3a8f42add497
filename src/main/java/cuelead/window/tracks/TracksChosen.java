package cuelead.window.tracks;

import cuelead.lesson.Pace;
import cuelead.output.TrackFormat;
import cuelead.time.Tempo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which practice tracks are wanted.
 *
 * @param matter what they hold
 * @param paces  how fast, a file each
 * @param clicks full speed of clicks
 * @param format of all files
 * @param folder where they are put
 * @param name   with which their names begin, as the user wrote it
 * @param older  what becomes of files that have these names already
 */
record TracksChosen(
        Matter matter, List<Pace> paces, Tempo clicks, TrackFormat format, Path folder, String name, Older older) {
    /** Longer names are refused by some systems. */
    private static final int LONGEST_NAME = 120;

    /** What becomes of a file that is there already. */
    enum Older {
        /** It stays, and the new one gets a number. */
        STAYS,
        IS_REPLACED
    }

    TracksChosen {
        paces = List.copyOf(paces);
    }

    /** One file, and how fast it goes. */
    record PacedFile(Pace pace, Path file) {}

    /** What is to be written, none of two in one place. */
    List<PacedFile> files() {
        Map<Path, PacedFile> files = new LinkedHashMap<>();
        for (Pace pace : paces) {
            String stem = stem(pace);
            Path file = file(stem, 1);
            for (int number = 2; older == Older.STAYS && Files.exists(file); number++) {
                file = file(stem, number);
            }
            files.putIfAbsent(file, new PacedFile(pace, file));
        }
        return List.copyOf(files.values());
    }

    /** How many files have a wanted name already. */
    long alreadyThere() {
        return paces.stream()
                .map(pace -> file(stem(pace), 1))
                .distinct()
                .filter(Files::exists)
                .count();
    }

    private Path file(String stem, int number) {
        return folder.resolve(stem + (number > 1 ? " (" + number + ")" : "") + format.ending());
    }

    /** {@code Lamp on the Quay, walkthrough, steady}. */
    private String stem(Pace pace) {
        List<String> parts = new ArrayList<>(List.of(plain(name)));
        if (!matter.inName().isEmpty()) {
            parts.add(matter.inName());
        }
        boolean isTempoKnown = matter == Matter.CLICKS_AND_CALLS || pace instanceof Pace.Beats;
        parts.add(isTempoKnown ? Math.round(pace.at(clicks).beatsPerMinute()) + " beats a minute" : word(pace));
        return String.join(", ", parts);
    }

    private static String word(Pace pace) {
        return pace.equals(Pace.WALK) ? "walk" : pace.equals(Pace.STEADY) ? "steady" : "full";
    }

    /** As every system takes it in the name of a file. */
    private static String plain(String words) {
        String plain = words.replaceAll("[\\\\/:*?\"<>|\\p{Cntrl}]+", " ")
                .replaceAll("\\s+", " ")
                .replaceAll("^[. ]+|[. ]+$", "");
        String named = plain.isBlank() ? "track" : plain;
        return named.length() > LONGEST_NAME ? named.substring(0, LONGEST_NAME).strip() : named;
    }
}
