package cuelead.studio;

import cuelead.output.TextFile;
import cuelead.rehearse.Progress;
import cuelead.rehearse.Rehearsed;
import cuelead.rehearse.Review;
import cuelead.report.Refused;
import cuelead.report.UserText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What is kept of rehearsals, in one folder: {@code round-trips.txt}, and for each dance a folder with its takes,
 * {@code 2026-11-27-1.wav}, and its {@code progress.txt}.
 *
 * @param folder of all rehearsals
 * @param dance  the dance's name as a file's
 */
public record RehearsalFolder(Path folder, String dance) {
    private static final String PROGRESS = "progress.txt";
    private static final Pattern TAKE = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})-(\\d+)\\.wav");
    /** Of the plan: what is broken off before is no rehearsal to be compared with others. */
    private static final double KEPT_PART = 0.25;

    /** Refuses a place where it can be told that nothing can be made, before any work is done. */
    public void check() throws Refused {
        Path there = dances().toAbsolutePath();
        while (there.getParent() != null && !Files.exists(there)) {
            there = there.getParent();
        }
        if (!Files.isDirectory(there) || !Files.isWritable(there)) {
            throw new Refused(cannotMake());
        }
    }

    /** Makes it where it is not there; late, so that nothing is left where nothing is recorded. */
    void make() throws Refused {
        try {
            Files.createDirectories(dances());
        } catch (IOException cannot) {
            throw new Refused(cannotMake(), cannot);
        }
    }

    private String cannotMake() {
        return "Cannot make the folder " + dances() + " for takes: choose another place.";
    }

    public Path dances() {
        return folder.resolve(dance);
    }

    Path roundTrips() {
        return folder.resolve("round-trips.txt");
    }

    /** A file that is not there yet. */
    Path nextTake(LocalDate day) {
        int number = 1;
        while (Files.exists(take(day, number))) {
            number++;
        }
        return take(day, number);
    }

    private Path take(LocalDate day, int number) {
        return dances().resolve(day + "-" + number + ".wav");
    }

    Path progressFile() {
        return dances().resolve(PROGRESS);
    }

    /**
     * The progress until now.
     *
     * @throws Refused when there is a file that cannot be read, or is not as Cuelead writes it
     */
    public Progress progress() throws Refused {
        Path file = progressFile();
        return Files.exists(file) ? Progress.of(UserText.read(file, "The progress"), file) : Progress.NONE;
    }

    /**
     * Adds a rehearsal to the progress; not where too little of it was called to be compared with others.
     *
     * @param before  the progress until then
     * @param planned how many calls the whole dance has
     * @return the progress now, where it was kept
     */
    public Optional<Progress> keep(Progress before, Review review, int planned, LocalDateTime at) throws Refused {
        boolean isWorthKeeping =
                review.planned() >= KEPT_PART * planned && !review.timed().isEmpty();
        if (!isWorthKeeping) {
            return Optional.empty();
        }
        Progress now = before.with(Rehearsed.of(review, at));
        TextFile.write(progressFile(), now.text());
        return Optional.of(now);
    }

    /** The takes that are there, the latest first. */
    public List<Path> takes() throws Refused {
        if (!Files.isDirectory(dances())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(dances())) {
            return files.filter(
                            file -> TAKE.matcher(file.getFileName().toString()).matches())
                    .sorted(Comparator.comparing(RehearsalFolder::order).reversed())
                    .toList();
        } catch (IOException unreadable) {
            throw new Refused("The folder " + dances() + " cannot be read: see whether it may be opened.", unreadable);
        }
    }

    /** By day and then by number, of which there may be ten and more. */
    private static String order(Path take) {
        Matcher name = TAKE.matcher(take.getFileName().toString());
        return name.matches() ? String.format(Locale.ROOT, "%s %6s", name.group(1), name.group(2)) : "";
    }

    /** Deletes a take; nothing else of it is kept but its line of the progress. */
    public void delete(Path take) throws Refused {
        try {
            Files.deleteIfExists(take);
        } catch (IOException cannot) {
            throw new Refused("Cannot delete " + take + ": see whether another program has it open.", cannot);
        }
    }
}
