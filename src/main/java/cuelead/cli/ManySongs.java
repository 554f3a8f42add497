package cuelead.cli;

import cuelead.report.Refused;
import cuelead.song.BeatFinding;
import cuelead.song.Ear;
import cuelead.steer.BeatWords;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/** Listens to many songs side by side; one that fails does not stop the others. */
final class ManySongs {
    /** Memory that one song may need while it is listened to. */
    private static final long BYTES_A_SONG = 100_000_000;

    private final Surroundings surroundings;
    private final BeatFinding.Known known;
    private final BeatFinding finding = new BeatFinding(new Ear(), BeatFinding.Unheard.IS_REFUSED);
    private final AtomicInteger done = new AtomicInteger();

    ManySongs(Surroundings surroundings, BeatFinding.Known known) {
        this.surroundings = surroundings;
        this.known = known;
    }

    /** Tells of each song in a line, in the order of the list; the exit status is that of the worst. */
    int listen(List<Path> songs) throws InterruptedException {
        ExecutorService workers = Executors.newFixedThreadPool(workers(songs.size()));
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            List<Future<String>> lines = new ArrayList<>();
            for (Path song : songs) {
                lines.add(workers.submit(() -> line(song, songs.size(), progress)));
            }
            int exitCode = Failures.DONE;
            for (int i = 0; i < songs.size(); i++) {
                exitCode = Math.max(exitCode, tell(songs.get(i), lines.get(i), progress));
            }
            return exitCode;
        } finally {
            workers.shutdownNow();
        }
    }

    private static int workers(int songs) {
        Runtime runtime = Runtime.getRuntime();
        int byMemory = (int) Math.max(1, runtime.maxMemory() / BYTES_A_SONG);
        return Math.max(1, Math.min(songs, Math.min(runtime.availableProcessors(), byMemory)));
    }

    private String line(Path song, int count, ProgressLine progress) throws Refused {
        Path beatFile = surroundings.places().beatFile(song);
        boolean isKnown = Files.exists(beatFile) && known == BeatFinding.Known.READ;
        try {
            BeatFinding.Found found = finding.find(song, beatFile, known, part -> {});
            String words = new BeatWords(found.hearing()).inShort();
            return song.getFileName() + ": " + words + (isKnown ? " (known)" : "");
        } finally {
            progress.at("Listening to " + count + " songs", (double) done.incrementAndGet() / count);
        }
    }

    private int tell(Path song, Future<String> line, ProgressLine progress) throws InterruptedException {
        try {
            String words = line.get();
            progress.close();
            surroundings.out().println(words);
            return Failures.DONE;
        } catch (ExecutionException failed) {
            progress.close();
            if (failed.getCause() instanceof Refused refused) {
                surroundings.err().println(refused.getMessage());
                return Failures.REFUSED;
            }
            throw new IllegalStateException("listening to " + song, failed.getCause());
        }
    }
}
